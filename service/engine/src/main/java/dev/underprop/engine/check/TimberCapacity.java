package dev.underprop.engine.check;

import dev.underprop.engine.clause.nds2018.BeamLoading;
import dev.underprop.engine.clause.nds2018.DesignValue;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.clause.nds2018.Supplement4;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.material.Treatment;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;

/**
 * Adjusted design values of one timber member, NDS 2018 Table 4.3.1 for allowable stress design: temperature up to 100 F,
 * on edge. A member whose moisture is not stated is taken as dry here, one not stated incised as not incised; that it was
 * not stated is reported by a check of its own.
 */
public final class TimberCapacity {

    private final Member member;
    private final double repetitive;
    private final Outcome size;

    /**
     * @param member section and timber
     * @param repetitive repetitive member factor Cr
     */
    public TimberCapacity(Member member, double repetitive) {
        this.member = member;
        this.repetitive = repetitive;
        this.size = Supplement4.size(DesignValue.BENDING, member.grade(), member.graded());
    }

    /** Flexural rigidity E'·I over all plies (N·m²). E is an apparent modulus: it contains shear deformation. */
    public static double rigidity(Member member) {
        return moist(member, DesignValue.MODULUS) * member.ply().inertia() * member.plies();
    }

    /** Reference value times CM and Ci, of a design value without a size factor. */
    private static double moist(Member member, DesignValue value) {
        return value.of(member.grade())
                * Supplement4.wetService(value, member.grade(), moisture(member))
                        .value()
                * incising(member, value);
    }

    private static double incising(Member member, DesignValue value) {
        boolean incised = member.details().treatment() == Member.Treated.INCISED;
        Outcome factor = Section4_3.incising(value, incised ? Treatment.INCISED : Treatment.NONE);
        if (factor instanceof Outcome.Value known) {
            return known.cited().value();
        }
        throw new IllegalStateException("no incising factor for " + member.label());
    }

    private static Moisture moisture(Member member) {
        return member.moisture() == Member.Moisture.WET ? Moisture.WET : Moisture.DRY;
    }

    /** Whether the tables give bending values for this section; where not, bending is not checked. */
    public boolean hasBending() {
        return size instanceof Outcome.Value;
    }

    /**
     * Adjusted bending design value F'b (Pa), 0 where the slenderness limit of 3.3.3.7 refuses the member.
     *
     * @param duration load duration
     * @param unbraced laterally unsupported length of the compression edge (m), 0 where it is held all along
     * @throws IllegalStateException when the tables give no bending value; see {@link #hasBending}
     */
    public double bending(LoadDuration duration, double unbraced) {
        double star = bendingStar(duration);
        if (unbraced <= 0) {
            return star;
        }
        // Plies are judged singly: nothing in the plan says that they are fastened to each other.
        double breadth = member.ply().breadth();
        double le = Section3_3.effectiveLength(BeamLoading.NOT_LISTED, unbraced, member.depth())
                .value();
        Outcome stability =
                Section3_3.stability(le, breadth, member.depth(), moist(member, DesignValue.MODULUS_MIN), star);
        return stability instanceof Outcome.Value value ? star * value.cited().value() : 0;
    }

    /** Fb*: the bending value with all factors but those of stability (Pa). */
    double bendingStar(LoadDuration duration) {
        if (!(size instanceof Outcome.Value sized)) {
            throw new IllegalStateException("the tables give no bending value for " + member.label());
        }
        Cited cf = sized.cited();
        Cited cm = Supplement4.wetService(DesignValue.BENDING, member.grade(), cf, moisture(member));
        return member.grade().bending()
                * cf.value()
                * cm.value()
                * incising(member, DesignValue.BENDING)
                * repetitive
                * Section2_3.loadDuration(duration).value();
    }

    /** Adjusted shear design value F'v (Pa). */
    public double shear(LoadDuration duration) {
        return moist(member, DesignValue.SHEAR)
                * Section2_3.loadDuration(duration).value();
    }

    /** Adjusted compression perpendicular to grain (Pa), without the bearing area factor; no load duration factor. */
    public double bearing() {
        return moist(member, DesignValue.BEARING);
    }

    /** Whether the tables give compression parallel to grain for this section. */
    public boolean hasCompression() {
        return Supplement4.size(DesignValue.COMPRESSION, member.grade(), member.graded()) instanceof Outcome.Value;
    }

    /**
     * Fc*: compression parallel to grain with all factors but that of stability (Pa).
     *
     * @throws IllegalStateException when the tables give no value; see {@link #hasCompression}
     */
    public double compressionStar(LoadDuration duration) {
        Outcome sized = Supplement4.size(DesignValue.COMPRESSION, member.grade(), member.graded());
        if (!(sized instanceof Outcome.Value value)) {
            throw new IllegalStateException("the tables give no compression value for " + member.label());
        }
        Cited cf = value.cited();
        Cited cm = Supplement4.wetService(DesignValue.COMPRESSION, member.grade(), cf, moisture(member));
        return member.grade().compression()
                * cf.value()
                * cm.value()
                * incising(member, DesignValue.COMPRESSION)
                * Section2_3.loadDuration(duration).value();
    }

    /** E'min, for stability (Pa). */
    public double modulusMin() {
        return moist(member, DesignValue.MODULUS_MIN);
    }
}
