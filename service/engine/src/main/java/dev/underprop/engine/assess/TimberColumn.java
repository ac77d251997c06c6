package dev.underprop.engine.assess;

import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.BeamLoading;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section15_3;
import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.clause.nds2018.Section3_7;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.stream.Stream;

/** Strength of a timber post pinned at both ends. Plies whose fastening misses a requirement are columns of their own. */
final class TimberColumn {

    private static final double SAME = 1e-4;

    private final TimberPost post;
    private final Member member;
    private final double height;
    private final TimberCapacity timber;
    private final double kf;
    private final Outcome overThickness;
    private final Outcome overDepth;

    /** @param height between the pins (m), positive */
    TimberColumn(TimberPost post, double height) {
        this.post = post;
        this.member = post.member();
        this.height = height;
        this.timber = new TimberCapacity(member, 1);
        this.kf = together();
        double acting = kf > 0 ? member.breadth() : member.ply().breadth();
        this.overThickness = Section3_7.slenderness(height, acting, post.construction());
        this.overDepth = Section3_7.slenderness(height, member.depth(), post.construction());
    }

    /** Kf where the plies act as one, 1 for a single one; 0 where each is a column of its own. */
    private double together() {
        if (member.plies() == 1) {
            return 1;
        }
        if (!(post.joined() instanceof TimberPost.Fasteners f)) {
            return 0;
        }
        Section15_3.By by = f.bolts() ? Section15_3.By.BOLTS : Section15_3.By.NAILS;
        Section15_3.Pattern pattern = new Section15_3.Pattern(
                by, f.diameter(), f.length(), f.end(), f.spacing(), f.rows(), f.between(), f.edge(), f.detailed());
        Outcome factor = Section15_3.factor(member.plies(), member.ply().breadth(), member.depth(), pattern);
        return factor instanceof Outcome.Value value ? value.cited().value() : 0;
    }

    /** What the tables do not give, empty where they give all. */
    String gap() {
        if (member.ply().breadth() > member.depth() + SAME) {
            return "the breadth of a post's ply is its lesser size, and is stated as the greater one";
        }
        if (!timber.hasCompression()) {
            return "the tables give no compression value along the grain for " + member.label();
        }
        if (post.eccentricity() > 0 && (!timber.hasBending() || !flatKnown())) {
            return "the tables give no bending value for " + member.label() + " in both directions";
        }
        return "";
    }

    /** Boards bent flat hold at least their value on edge (Cfu of Tables 4A and 4B is not below 1); oblong timbers may not. */
    private boolean flatKnown() {
        return switch (member.grade().sizes()) {
            case WESTERN_DIMENSION, WESTERN_STUD, SOUTHERN_PINE -> true;
            case TIMBER_4D -> Math.abs(member.breadth() - member.depth()) < SAME;
        };
    }

    /** Why a clause refuses it, empty where none does. */
    String refusal() {
        return Stream.of(overThickness, overDepth)
                .filter(Outcome.Refused.class::isInstance)
                .map(outcome -> ((Outcome.Refused) outcome).reason())
                .findFirst()
                .orElse("");
    }

    private double star(Working working) {
        return timber.compressionStar(LoadDuration.PERMANENT, working);
    }

    /** FcE (Pa) of one way to buckle. @param mark that its symbols bear */
    private double critical(String mark, String ratio, Outcome slenderness, Working working) {
        double modulus = timber.modulusMin(working);
        double slender = ((Outcome.Value) slenderness).cited().value();
        working.rule("λ" + mark, slenderness, "slenderness", Dimension.NUMBER, ratio);
        return working.rule(
                "FcE" + mark,
                Section3_7.criticalStress(modulus, slender),
                "critical buckling value",
                Dimension.STRESS,
                "0.822 × E'min / λ" + mark + "^2");
    }

    private double overThickness(Working working) {
        boolean together = kf > 0;
        double acting = together ? member.breadth() : member.ply().breadth();
        String formula = together ? "n × b" : "b";
        working.step("bs", "thickness that buckles as one", Dimension.LENGTH, acting, formula);
        return critical("1", "h / bs", overThickness, working);
    }

    private double overDepth(Working working) {
        return critical("2", "h / d", overDepth, working);
    }

    /** F'c (Pa): the lesser of both ways to buckle. */
    double allowed(Working working) {
        TimberCapacity.section(member, working);
        double star = star(working);
        boolean joined = kf > 0 && kf < 1;
        double thickness = overThickness(working);
        Cited one = joined ? Section15_3.stability(kf, thickness, star) : Section3_7.stability(thickness, star);
        working.step("F1", "their ratio", Dimension.NUMBER, thickness / star, "FcE1 / Fc*");
        if (joined) {
            working.rule("Kf", "built-up column, boards joined", Dimension.NUMBER, kf, one.citation(), "");
        }
        String factor = "( 1 + F1 ) / 1.6 - root( ( ( 1 + F1 ) / 1.6 )^2 - F1 / 0.8 )";
        String told = joined ? "Kf × ( " + factor + " )" : factor;
        working.rule("CP1", one, "column factor over the thickness", Dimension.NUMBER, told);
        double depth = overDepth(working);
        working.step("F2", "their ratio", Dimension.NUMBER, depth / star, "FcE2 / Fc*");
        Cited two = Section3_7.stability(depth, star);
        working.rule("CP2", two, "column factor over the depth", Dimension.NUMBER, factor.replace("F1", "F2"));
        return working.rule(
                "F'c",
                "adjusted value along the grain",
                Dimension.STRESS,
                star * Math.min(one.value(), two.value()),
                Section4_3.TABLE_4_3_1,
                "Fc* × min( CP1 , CP2 )");
    }

    private double area(Working working) {
        return working.step("A", "area", Dimension.AREA, member.breadth() * member.depth(), "n × b × d");
    }

    /** Load that it bears between its ends (N). */
    double capacity(Working working) {
        double allowed = allowed(working);
        double e = post.eccentricity();
        if (e == 0) {
            return working.step("Pb", "load as a column", Dimension.FORCE, allowed * area(working), "F'c × A");
        }
        OffMiddle off = new OffMiddle(
                e,
                member,
                allowed,
                overDepth(Working.OFF),
                overThickness(Working.OFF),
                timber.bending(LoadDuration.PERMANENT, height, working),
                timber.bending(LoadDuration.PERMANENT, 0),
                edgeBuckling(working));
        return working.step("Pb", "load as a column", Dimension.FORCE, off.stress(working) * area(working), "fc × A");
    }

    /** FbE under equal moments at both ends (Pa). */
    private double edgeBuckling(Working working) {
        Cited length = Section3_3.effectiveLength(BeamLoading.END_MOMENTS, height, member.depth());
        double le = working.rule("leM", length, "effective length, moments at the ends", Dimension.LENGTH, "1.84 × h");
        double ratio = working.step(
                "RBM",
                "slenderness with it",
                Dimension.NUMBER,
                Math.sqrt(le * member.depth()) / member.breadth(),
                "root( leM × d ) / ( n × b )");
        return working.rule(
                "FbEM",
                Section3_3.criticalStress(timber.modulusMin(), ratio),
                "critical buckling value with it",
                Dimension.STRESS,
                "1.2 × E'min / RBM^2");
    }

    /**
     * What presses on an end.
     *
     * @param along the beam (m), positive
     * @param across the beam (m), positive
     * @param steel whether a steel plate lies between
     */
    record Pressed(double along, double across, boolean steel) {}

    /** What its end grain bears (N). @param mark h for the head, f for the foot */
    double endGrain(String mark, Pressed pressed, Working working) {
        String what = mark.equals("h") ? "head" : "foot";
        double area = Math.min(pressed.along, member.breadth()) * Math.min(pressed.across, member.depth());
        working.plan("a" + mark, "plate at the " + what + ", along the beam", Dimension.LENGTH, pressed.along);
        working.plan("w" + mark, "what presses there, across the beam", Dimension.LENGTH, pressed.across);
        String formula = "min( a" + mark + " , n × b ) × min( w" + mark + " , d )";
        working.step("A" + mark, "end grain pressed at the " + what, Dimension.AREA, area, formula);
        Cited grain = Section3_10.endGrain(star(Working.OFF), pressed.steel);
        String how = pressed.steel ? "end grain under steel" : "end grain without a steel plate";
        working.rule("Fe" + mark, grain, how, Dimension.STRESS, pressed.steel ? "Fc*" : "0.75 × Fc*");
        return working.step(
                "P" + mark,
                "load on the end grain at the " + what,
                Dimension.FORCE,
                grain.value() * area,
                "Fe" + mark + " × A" + mark);
    }
}
