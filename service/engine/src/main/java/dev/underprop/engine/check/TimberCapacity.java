package dev.underprop.engine.check;

import dev.underprop.engine.clause.nds2018.Section2;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.clause.nds2018.Supplement4;
import dev.underprop.engine.plan.Member;

/**
 * Adjusted design values of one timber member, NDS 2018 Table 4.3.1 for allowable stress design: temperature up to 100 F,
 * not incised, on edge. A member whose moisture is not stated is taken as dry here; that it was not stated is reported by
 * a check of its own.
 */
public final class TimberCapacity {

    private final Member member;
    private final double repetitive;

    /**
     * @param member section and timber
     * @param repetitive repetitive member factor Cr
     */
    public TimberCapacity(Member member, double repetitive) {
        this.member = member;
        this.repetitive = repetitive;
    }

    /** Flexural rigidity E'·I over all plies (N·m²). E is an apparent modulus: it contains shear deformation. */
    public static double rigidity(Member member) {
        return member.grade().modulus()
                * wet(member, Supplement4.wetModulus().value())
                * member.ply().inertia()
                * member.plies();
    }

    private static double wet(Member member, double factor) {
        return member.moisture() == Member.Moisture.WET ? factor : 1;
    }

    /** Whether the tables give bending values for this section; where not, bending is not checked. */
    public boolean hasBending() {
        return Supplement4.hasSizeFactor(
                member.grade(), member.ply().breadth(), member.ply().depth());
    }

    /**
     * Adjusted bending design value F'b (Pa), 0 where the slenderness limit of 3.3.3.7 refuses the member.
     *
     * @param duration load duration
     * @param unbraced laterally unsupported length of the compression edge (m), 0 where it is held all along
     */
    public double bending(Section2.Duration duration, double unbraced) {
        double star = bendingStar(duration);
        if (unbraced <= 0) {
            return star;
        }
        // Plies are judged singly: nothing in the plan says that they are fastened to each other.
        double breadth = member.ply().breadth();
        double le = Section3_3.effectiveLength(unbraced, member.depth()).value();
        double rb = Section3_3.slenderness(le, breadth, member.depth()).value();
        if (rb > Section3_3.SLENDERNESS_LIMIT) {
            return 0;
        }
        double modulusMin = member.grade().modulusMin()
                * wet(member, Supplement4.wetModulus().value());
        double critical = Section3_3.criticalStress(modulusMin, rb).value();
        return star * Section3_3.stability(critical, star).value();
    }

    /** Fb*: the bending value with all factors but those of stability (Pa). */
    double bendingStar(Section2.Duration duration) {
        double size = Supplement4.sizeBending(
                        member.grade(), member.ply().breadth(), member.ply().depth())
                .value();
        double sized = member.grade().bending() * size;
        double moisture = wet(member, Supplement4.wetBending(sized).value());
        return sized * moisture * repetitive * Section2.loadDuration(duration).value();
    }

    /** Adjusted shear design value F'v (Pa). */
    public double shear(Section2.Duration duration) {
        return member.grade().shear()
                * wet(member, Supplement4.wetShear().value())
                * Section2.loadDuration(duration).value();
    }

    /** Adjusted compression perpendicular to grain (Pa), without the bearing area factor; no load duration factor. */
    public double bearing() {
        return member.grade().bearing() * wet(member, Supplement4.wetBearing().value());
    }
}
