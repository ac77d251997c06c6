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
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.Map;

/**
 * Adjusted design values of one timber member, NDS 2018 Table 4.3.1 for allowable stress design: temperature up to 100 F,
 * on edge. A member whose moisture is not stated is taken as dry here, one not stated incised as not incised; that it was
 * not stated is reported by a check of its own.
 */
public final class TimberCapacity {

    private static final Citation HELD = Citation.remembered("NDS", "2018", "3.3.3.3");

    private static final String RATIO = "root( le × d / b^2 )";

    private static final Map<LoadDuration, String> DURATIONS = Map.of(
            LoadDuration.PERMANENT, "load duration factor, permanent load",
            LoadDuration.TEN_YEARS, "load duration factor, ten years",
            LoadDuration.TWO_MONTHS, "load duration factor, two months",
            LoadDuration.SEVEN_DAYS, "load duration factor, seven days",
            LoadDuration.TEN_MINUTES, "load duration factor, ten minutes",
            LoadDuration.IMPACT, "load duration factor, impact");

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
        return moist(member, DesignValue.MODULUS, Working.OFF) * member.ply().inertia() * member.plies();
    }

    /** Tells rigidity as {@link #rigidity} has it: E', I and their product. */
    public static void rigidity(Member member, Working working) {
        section(member, working);
        moist(member, DesignValue.MODULUS, working);
        double inertia = member.ply().inertia() * member.plies();
        working.step("I", "second moment of area, all plies", Dimension.SECOND_MOMENT, inertia, "n × b × d^3 / 12");
        working.step("EI", "rigidity, E as tabulated holds shear", Dimension.RIGIDITY, rigidity(member), "E' × I");
    }

    /** Tells breadth, depth and number of plies. */
    public static void section(Member member, Working working) {
        working.plan(
                "b",
                "breadth of one ply, " + member.label(),
                Dimension.LENGTH,
                member.ply().breadth());
        working.plan("d", "depth", Dimension.LENGTH, member.depth());
        working.plan("n", "number of plies", Dimension.NUMBER, member.plies());
    }

    /** Reference value times CM and Ci, of a design value without a size factor. */
    private static double moist(Member member, DesignValue value, Working working) {
        TimberWords words = TimberWords.of(value);
        double reference = working.rule(
                words.reference(),
                words.meaning(),
                Dimension.STRESS,
                value.of(member.grade()),
                member.grade().citation(),
                "");
        Cited cm = Supplement4.wetService(value, member.grade(), moisture(member));
        double wet = working.rule(words.wet(), cm, "wet service factor", Dimension.NUMBER, "");
        double adjusted = reference * wet * incising(member, value, words, working);
        return working.rule(
                words.adjusted(),
                words.adjustedMeaning(),
                Dimension.STRESS,
                adjusted,
                Section4_3.TABLE_4_3_1,
                words.product());
    }

    private static double incising(Member member, DesignValue value, TimberWords words, Working working) {
        boolean incised = member.details().treatment() == Member.Treated.INCISED;
        Outcome factor = Section4_3.incising(value, incised ? Treatment.INCISED : Treatment.NONE);
        if (factor instanceof Outcome.Value known) {
            return working.rule(words.incised(), known.cited(), "incising factor", Dimension.NUMBER, "");
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

    /** As {@link #bending(LoadDuration, double, Working)}, without a record. */
    public double bending(LoadDuration duration, double unbraced) {
        return bending(duration, unbraced, Working.OFF);
    }

    /**
     * Adjusted bending design value F'b (Pa), 0 where the slenderness limit of 3.3.3.7 refuses the member.
     *
     * @param duration load duration
     * @param unbraced laterally unsupported length of the compression edge (m), 0 where it is held all along
     * @throws IllegalStateException when the tables give no bending value; see {@link #hasBending}
     */
    public double bending(LoadDuration duration, double unbraced, Working working) {
        double star = bendingStar(duration, working);
        working.plan("lu", "longest unheld part of the pressed edge", Dimension.LENGTH, unbraced);
        double stability = unbraced <= 0
                ? working.rule("CL", "stability factor, edge held all along", Dimension.NUMBER, 1, HELD, "")
                : stability(unbraced, star, working);
        if (stability == 0) {
            return 0;
        }
        return working.rule(
                "F'b",
                "adjusted bending value",
                Dimension.STRESS,
                star * stability,
                Section4_3.TABLE_4_3_1,
                "Fb* × CL");
    }

    /** CL, 0 where the slenderness is refused. */
    private double stability(double unbraced, double star, Working working) {
        // Plies are judged singly: nothing in the plan says that they are fastened to each other.
        double breadth = member.ply().breadth();
        section(member, working);
        BeamLoading row = BeamLoading.NOT_LISTED;
        Cited length = Section3_3.effectiveLength(row, unbraced, member.depth());
        String told = row.formula(unbraced, member.depth());
        double le = working.rule(length, "effective length, loading not listed", Dimension.LENGTH, told);
        Outcome slenderness = Section3_3.slenderness(le, breadth, member.depth());
        double modulus = moist(member, DesignValue.MODULUS_MIN, working);
        if (!(slenderness instanceof Outcome.Value ratio)) {
            double got = Math.sqrt(le * member.depth() / (breadth * breadth));
            working.step("RB", "slenderness, plies singly, above 50", Dimension.NUMBER, got, RATIO);
            return 0;
        }
        working.rule(ratio.cited(), "slenderness, plies singly, at most 50", Dimension.NUMBER, RATIO);
        Cited critical = Section3_3.criticalStress(modulus, ratio.cited().value());
        working.rule(critical, "critical buckling value", Dimension.STRESS, "1.2 × E'min / RB^2");
        Cited factor = Section3_3.stability(critical.value(), star);
        working.step("F", "their ratio", Dimension.NUMBER, critical.value() / star, "FbE / Fb*");
        return working.rule(
                factor,
                "beam stability factor",
                Dimension.NUMBER,
                "( 1 + F ) / 1.9 - root( ( ( 1 + F ) / 1.9 )^2 - F / 0.95 )");
    }

    /** Fb*: the bending value with all factors but those of stability (Pa). */
    double bendingStar(LoadDuration duration, Working working) {
        if (!(size instanceof Outcome.Value sized)) {
            throw new IllegalStateException("the tables give no bending value for " + member.label());
        }
        return star(DesignValue.BENDING, sized.cited(), duration, repetitive, working);
    }

    /** A value with a size factor, times all factors but those of stability (Pa). */
    private double star(DesignValue value, Cited cf, LoadDuration duration, double cr, Working working) {
        TimberWords words = TimberWords.of(value);
        Cited cm = Supplement4.wetService(value, member.grade(), cf, moisture(member));
        boolean bending = value == DesignValue.BENDING;
        double reference = working.rule(
                words.reference(),
                words.meaning(),
                Dimension.STRESS,
                value.of(member.grade()),
                member.grade().citation(),
                "");
        double product = reference
                * working.rule(words.size(), cf, "size factor", Dimension.NUMBER, "")
                * working.rule(words.wet(), cm, "wet service factor", Dimension.NUMBER, "")
                * incising(member, value, words, working);
        if (bending) {
            product *= working.rule("Cr", "repetitive member factor", Dimension.NUMBER, cr, Section4_3.REPETITIVE, "");
        }
        product *= lasting(duration, working);
        return working.rule(
                words.adjusted(),
                words.adjustedMeaning(),
                Dimension.STRESS,
                product,
                Section4_3.TABLE_4_3_1,
                words.product());
    }

    private static double lasting(LoadDuration duration, Working working) {
        return working.rule(Section2_3.loadDuration(duration), DURATIONS.get(duration), Dimension.NUMBER, "");
    }

    /** As {@link #shear(LoadDuration, Working)}, without a record. */
    public double shear(LoadDuration duration) {
        return shear(duration, Working.OFF);
    }

    /** Adjusted shear design value F'v (Pa). */
    public double shear(LoadDuration duration, Working working) {
        double lasts = lasting(duration, working);
        return working.rule(
                "F'v",
                "adjusted shear value",
                Dimension.STRESS,
                moist(member, DesignValue.SHEAR, working) * lasts,
                Section4_3.TABLE_4_3_1,
                "Fv* × CD");
    }

    /** As {@link #bearing(Working)}, without a record. */
    public double bearing() {
        return bearing(Working.OFF);
    }

    /** Adjusted compression perpendicular to grain (Pa), without the bearing area factor; no load duration factor. */
    public double bearing(Working working) {
        return moist(member, DesignValue.BEARING, working);
    }

    /** Whether the tables give compression parallel to grain for this section. */
    public boolean hasCompression() {
        return Supplement4.size(DesignValue.COMPRESSION, member.grade(), member.graded()) instanceof Outcome.Value;
    }

    /** As {@link #compressionStar(LoadDuration, Working)}, without a record. */
    public double compressionStar(LoadDuration duration) {
        return compressionStar(duration, Working.OFF);
    }

    /**
     * Fc*: compression parallel to grain with all factors but that of stability (Pa).
     *
     * @throws IllegalStateException when the tables give no value; see {@link #hasCompression}
     */
    public double compressionStar(LoadDuration duration, Working working) {
        Outcome sized = Supplement4.size(DesignValue.COMPRESSION, member.grade(), member.graded());
        if (!(sized instanceof Outcome.Value value)) {
            throw new IllegalStateException("the tables give no compression value for " + member.label());
        }
        return star(DesignValue.COMPRESSION, value.cited(), duration, 1, working);
    }

    /** As {@link #modulusMin(Working)}, without a record. */
    public double modulusMin() {
        return modulusMin(Working.OFF);
    }

    /** E'min, for stability (Pa). */
    public double modulusMin(Working working) {
        return moist(member, DesignValue.MODULUS_MIN, working);
    }
}
