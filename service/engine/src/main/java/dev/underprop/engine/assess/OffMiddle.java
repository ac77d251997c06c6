package dev.underprop.engine.assess;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.Section15_4;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;

/**
 * A timber post with its load off the middle, in the worst of all directions, degree by degree.
 *
 * @param eccentricity of the load (m), positive
 * @param member of one piece
 * @param allowed F'c (Pa)
 * @param overDepth FcE over the depth (Pa)
 * @param overThickness FcE over the thickness (Pa)
 * @param edge F'b on edge (Pa), 0 where its slenderness is refused
 * @param flat F'b flat (Pa)
 * @param edgeBuckling FbE under equal moments at both ends (Pa)
 */
record OffMiddle(
        double eccentricity,
        Member member,
        double allowed,
        double overDepth,
        double overThickness,
        double edge,
        double flat,
        double edgeBuckling) {

    /** Halvings of the range of the load; what is left of it is rounding. */
    private static final int HALVINGS = 60;

    /** Sections are the same on all four sides, so that no direction beyond it is another one (degrees). */
    private static final int QUARTER_TURN = 90;

    /** The greatest mean stress (Pa) that every direction allows. */
    double stress(Working working) {
        double least = Double.POSITIVE_INFINITY;
        int worst = 0;
        for (int degree = 0; degree <= QUARTER_TURN; degree++) {
            double greatest = greatest(degree);
            worst = greatest < least ? degree : worst;
            least = Math.min(least, greatest);
        }
        tell(worst, least, working);
        return least;
    }

    /** Searched for from below: what is found is never more than what the rule gives. */
    private double greatest(int degree) {
        if (!(edge > 0)) {
            return 0;
        }
        double holds = 0;
        double fails = allowed;
        for (int i = 0; i < HALVINGS; i++) {
            double stress = (holds + fails) / 2;
            if (used(degree, stress).value() <= 1) {
                holds = stress;
            } else {
                fails = stress;
            }
        }
        return holds;
    }

    private double edgewise(int degree) {
        return eccentricity * StrictMath.cos(StrictMath.toRadians(degree));
    }

    private double flatwise(int degree) {
        return eccentricity * StrictMath.sin(StrictMath.toRadians(degree));
    }

    private Cited used(int degree, double stress) {
        Section15_4.Way onEdge = new Section15_4.Way(edgewise(degree), member.depth(), overDepth, edge);
        Section15_4.Way onFlat = new Section15_4.Way(flatwise(degree), member.breadth(), overThickness, flat);
        return Section15_4.interaction(stress, allowed, onEdge, onFlat, edgeBuckling);
    }

    private void tell(int degree, double stress, Working working) {
        working.plan("e", "load off the middle", Dimension.LENGTH, eccentricity);
        if (!(edge > 0)) {
            working.step("fc", "none: too slender to bend on edge", Dimension.STRESS, 0, "0 × F'c");
            return;
        }
        working.analysis("θ", "worst direction, from the depth", Dimension.ANGLE, StrictMath.toRadians(degree));
        double e1 = working.step("e1", "along the depth", Dimension.LENGTH, edgewise(degree), "e × cos( θ )");
        double e2 = working.step("e2", "along the thickness", Dimension.LENGTH, flatwise(degree), "e × sin( θ )");
        working.analysis("fc", "greatest stress, searched, at which U is at most 1", Dimension.STRESS, stress);
        double fb1 = stress * 6 * e1 / member.depth();
        working.step("fb1", "bending on edge", Dimension.STRESS, fb1, "6 × fc × e1 / d");
        double fb2 = stress * 6 * e2 / member.breadth();
        working.step("fb2", "bending flat", Dimension.STRESS, fb2, "6 × fc × e2 / ( n × b )");
        working.step("q", "edge bending over its buckling", Dimension.NUMBER, fb1 / edgeBuckling, "fb1 / FbEM");
        working.rule(
                "U",
                used(degree, stress),
                "share used",
                Dimension.NUMBER,
                "( fc / F'c )^2 + fb1 × ( 1 + 0.234 × fc / FcE2 ) / ( F'b × ( 1 - fc / FcE2 ) )"
                        + " + fb2 × ( 1 + 0.234 × fc / FcE1 + 0.234 × q^2 ) / ( Fb* × ( 1 - fc / FcE1 - q^2 ) )");
    }
}
