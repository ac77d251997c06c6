package dev.underprop.engine.assess;

import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.nds2018.BeamLoading;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section15_3;
import dev.underprop.engine.clause.nds2018.Section15_4;
import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.clause.nds2018.Section3_7;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Outcome;
import java.util.stream.Stream;

/** Strength of a timber post pinned at both ends. Plies whose fastening misses a requirement are columns of their own. */
final class TimberColumn {

    /** Halvings of the range of the load; what is left of it is rounding. */
    private static final int HALVINGS = 60;

    /** Sections are the same on all four sides, so that no direction beyond it is another one (degrees). */
    private static final int QUARTER_TURN = 90;

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

    private double star() {
        return timber.compressionStar(LoadDuration.PERMANENT);
    }

    private double critical(Outcome slenderness) {
        return Section3_7.criticalStress(
                        timber.modulusMin(),
                        ((Outcome.Value) slenderness).cited().value())
                .value();
    }

    /** F'c (Pa): the lesser of both ways to buckle. */
    double allowed() {
        double thickness = critical(overThickness);
        double byThickness = kf > 0 && kf < 1
                ? Section15_3.stability(kf, thickness, star()).value()
                : Section3_7.stability(thickness, star()).value();
        return star()
                * Math.min(
                        byThickness,
                        Section3_7.stability(critical(overDepth), star()).value());
    }

    private double area() {
        return member.breadth() * member.depth();
    }

    /** Load that it bears between its ends (N); the load off the middle in the worst of all directions, degree by degree. */
    double capacity() {
        double e = post.eccentricity();
        if (e == 0) {
            return allowed() * area();
        }
        double least = Double.POSITIVE_INFINITY;
        for (int degree = 0; degree <= QUARTER_TURN; degree++) {
            double angle = StrictMath.toRadians(degree);
            least = Math.min(least, greatest(e * StrictMath.cos(angle), e * StrictMath.sin(angle)));
        }
        return least;
    }

    /** Searched for from below: what is found is never more than what the rule gives. */
    private double greatest(double overDepthBy, double overThicknessBy) {
        double allowed = allowed();
        double edgeBending = timber.bending(LoadDuration.PERMANENT, height);
        double flatBending = timber.bending(LoadDuration.PERMANENT, 0);
        if (!(edgeBending > 0)) {
            return 0;
        }
        Section15_4.Way edge = new Section15_4.Way(overDepthBy, member.depth(), critical(overDepth), edgeBending);
        Section15_4.Way flat =
                new Section15_4.Way(overThicknessBy, member.breadth(), critical(overThickness), flatBending);
        double buckling = edgeBuckling();
        double holds = 0;
        double fails = allowed;
        for (int i = 0; i < HALVINGS; i++) {
            double stress = (holds + fails) / 2;
            double used = Section15_4.interaction(stress, allowed, edge, flat, buckling)
                    .value();
            if (used <= 1) {
                holds = stress;
            } else {
                fails = stress;
            }
        }
        return holds * area();
    }

    /** FbE under equal moments at both ends (Pa). */
    private double edgeBuckling() {
        double le = Section3_3.effectiveLength(BeamLoading.END_MOMENTS, height, member.depth())
                .value();
        double ratio = Math.sqrt(le * member.depth()) / member.breadth();
        return Section3_3.criticalStress(timber.modulusMin(), ratio).value();
    }

    /**
     * What its end grain bears (N).
     *
     * @param along what presses on it along the beam (m), positive
     * @param across what presses on it across the beam (m), positive
     * @param steel whether a steel plate lies between
     */
    double endGrain(double along, double across, boolean steel) {
        double pressed = Math.min(along, member.breadth()) * Math.min(across, member.depth());
        return Section3_10.endGrain(star(), steel).value() * pressed;
    }
}
