package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 3.10: design for bearing. */
public final class Section3_10 {

    private static final Citation STRESS = Citation.remembered("NDS", "2018", "3.10.2");
    private static final Citation END_GRAIN = Citation.remembered("NDS", "2018", "3.10.1");
    private static final Citation AREA_FACTOR = Citation.read("NDS", "2018", "3.10.4");

    private Section3_10() {}

    /**
     * Stress perpendicular to grain fc⊥ (Pa), over the net bearing area.
     *
     * @param force pressing (N), not negative
     * @param length lb along the grain (m), positive
     * @param width across the grain (m), positive
     */
    public static Cited bearingStress(double force, double length, double width) {
        double area = Admissible.positive(length, "lb") * Admissible.positive(width, "bearing width");
        return new Cited(Admissible.notNegative(force, "bearing force") / area, "fc⊥", STRESS);
    }

    /**
     * Bearing area factor Cb = (lb + 0.375 in)/lb for a bearing shorter than 6 in and not nearer than 3 in to the
     * member's end; 1 otherwise.
     *
     * @param length lb along the grain (m), positive; of a round bearing the diameter
     * @param toEnd from the bearing's nearer edge to the member's end (m), negative where the plate reaches beyond it
     */
    public static Cited areaFactor(double length, double toEnd) {
        Admissible.positive(length, "lb");
        Admissible.finite(toEnd, "distance to the end");
        boolean increases = length < 6 * Units.INCH && Units.atLeast(toEnd, 3 * Units.INCH);
        return new Cited(increases ? (length + 0.375 * Units.INCH) / length : 1, "Cb", AREA_FACTOR);
    }

    /**
     * What end grain bears (Pa): Fc* on a steel plate or strap, 0.75 Fc* where there is none (3.10.1.3).
     *
     * @param compressionStar Fc* (Pa), positive
     * @param onSteel whether a rigid steel plate lies on the end grain
     */
    public static Cited endGrain(double compressionStar, boolean onSteel) {
        double star = Admissible.positive(compressionStar, "Fc*");
        return new Cited(onSteel ? star : 0.75 * star, "fc", END_GRAIN);
    }
}
