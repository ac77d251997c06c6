package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 15.4: wood columns with side loads and eccentricity, here with an eccentric end load alone. */
public final class Section15_4 {

    private static final Citation INTERACTION = Citation.remembered("NDS", "2018", "15.4.1, Equation 15.4-2");

    private Section15_4() {}

    /**
     * One direction of bending.
     *
     * @param eccentricity e of the load at both ends (m), not negative
     * @param size d in that direction (m), positive
     * @param critical FcE for buckling in that direction (Pa), positive
     * @param bending F'b for bending in that direction (Pa), positive
     */
    public record Way(double eccentricity, double size, double critical, double bending) {
        public Way {
            Admissible.notNegative(eccentricity, "e");
            Admissible.positive(size, "d");
            Admissible.positive(critical, "FcE");
            Admissible.positive(bending, "F'b");
        }

        private double stress(double compression) {
            return compression * 6 * eccentricity / size;
        }
    }

    /**
     * Share of the strength used, at most 1 where it suffices; infinite where the column or its compression edge buckles.
     *
     * @param compression fc (Pa), not negative
     * @param allowed F'c (Pa), positive
     * @param edge bending on the greater size
     * @param flat bending on the lesser size
     * @param edgeBuckling FbE (Pa), positive
     */
    public static Cited interaction(double compression, double allowed, Way edge, Way flat, double edgeBuckling) {
        double fc = Admissible.notNegative(compression, "fc");
        double r = edge.stress(fc) / Admissible.positive(edgeBuckling, "FbE");
        double one = fc / edge.critical;
        double two = fc / flat.critical;
        if (one >= 1 || two + r * r >= 1) {
            return new Cited(Double.MAX_VALUE, "fc and fb", INTERACTION);
        }
        double direct = fc / Admissible.positive(allowed, "F'c");
        double onEdge = edge.stress(fc) * (1 + 0.234 * one) / (edge.bending * (1 - one));
        double onFlat = flat.stress(fc) * (1 + 0.234 * two + 0.234 * r * r) / (flat.bending * (1 - two - r * r));
        return new Cited(direct * direct + onEdge + onFlat, "fc and fb", INTERACTION);
    }
}
