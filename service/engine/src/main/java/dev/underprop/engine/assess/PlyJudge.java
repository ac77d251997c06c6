package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.irc2021.GirderNail;
import dev.underprop.engine.clause.irc2021.SectionR502_6;
import dev.underprop.engine.plan.Assembly.Joint;
import dev.underprop.engine.plan.Assembly.JointsAt;
import dev.underprop.engine.plan.Assembly.Nails;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * Whether the plies of a shore beam act as one: nailed by the table of built-up girders, every joist lying on every ply, and
 * every joint of a ply over a head plate with both pieces bearing on it. The beam is solved as if every ply ran through, so
 * where some do not, those that run through must carry all of it: a share of the load in equilibrium that asks nothing of
 * the others.
 */
final class PlyJudge {

    /** Ends and faces that miss by less than this fit (m). */
    private static final double FIT = 1e-4;

    private PlyJudge() {}

    /** As {@link #judge(Shore, List, List, Working)}, without a record. */
    static Finding judge(Shore shore, List<Joist> joists, List<Judged> asOne) {
        return judge(shore, joists, asOne, Working.OFF);
    }

    /**
     * @param joists of the floor
     * @param asOne what the beam's own checks compare, all plies counted
     */
    static Finding judge(Shore shore, List<Joist> joists, List<Judged> asOne, Working working) {
        int plies = shore.beam().plies();
        int pieced = pieced(shore);
        if (plies == 1 && pieced == 0) {
            return new CheckResult.NotApplicable("the beam is one piece: there are no plies to fasten");
        }
        if (pieced >= plies) {
            return fails(
                    "no ply of the beam runs through from end to end, and it is solved as if they all did; describe"
                            + " its parts as shores of their own");
        }
        Working fresh = working.branch();
        Finding worst = Worse.of(nailing(shore), Worse.of(reach(shore, joists), joints(shore)));
        for (int i = 0; pieced > 0 && i < asOne.size(); i++) {
            Working branch = fresh.branch();
            Finding carried = carried(asOne.get(i), plies, plies - pieced, branch);
            worst = Worse.of(worst, carried);
            if (worst == carried) {
                working.adopt(branch);
            }
        }
        return worst;
    }

    private static int pieced(Shore shore) {
        return shore.assembly().joints() instanceof JointsAt at ? at.pieced() : 0;
    }

    /** Plies nailed to each other. */
    static Finding nailing(Shore shore) {
        if (!(shore.assembly().nailing() instanceof Nails nails)) {
            return new CheckResult.NotChecked(
                    "how the plies are fastened to each other is not declared (declare: assembly)");
        }
        if (!GirderNail.layers(shore.beam().ply().breadth())) {
            return new CheckResult.NotChecked(
                    "the nailing table speaks of plies of nominal 2 in only; have the fastening designed");
        }
        Optional<GirderNail> row = GirderNail.of(nails.diameter(), nails.length());
        if (row.isEmpty()) {
            return fails("the nails are thinner than 0.128 in or shorter than 3 in");
        }
        Optional<String> amiss = amiss(nails, row.get());
        return amiss.isPresent()
                ? fails(amiss.get())
                : new CheckResult.Condition(
                        true, Measure.DEFLECTION, 0, "the plies are nailed as the table of built-up girders wants");
    }

    private static Optional<String> amiss(Nails nails, GirderNail row) {
        if (!nails.everyPly()) {
            return Optional.of("not every ply is nailed to the next");
        }
        if (nails.rows() < GirderNail.ROWS) {
            return Optional.of("the nails stand in one row, not at top and bottom");
        }
        if (!row.allows(nails.spacing())) {
            return Optional.of("the nails stand further apart than the table allows for their size");
        }
        if (!nails.staggered()) {
            return Optional.of("the nails are not staggered");
        }
        if (row.oppositeSides() && !nails.bothFaces()) {
            return Optional.of("nails of this size are to be driven from both faces");
        }
        return nails.atEnds() < row.atEnds().value()
                ? Optional.of("there are too few nails at the ends of the plies")
                : Optional.empty();
    }

    /** What lies on some plies only loads those alone, and what the nails then carry is not worked out. */
    private static Finding reach(Shore shore, List<Joist> joists) {
        double half = shore.beam().breadth() / 2;
        return joists.stream()
                .filter(shore::under)
                .filter(j -> j.start() > shore.y() - half + FIT || j.end() < shore.y() + half - FIT)
                .findFirst()
                .<Finding>map(j -> new CheckResult.NotChecked("joist " + j.name()
                        + " does not lie on every ply; what the nails carry from ply to ply is not worked out"))
                .orElseGet(() -> holds("every joist lies on every ply"));
    }

    private static Finding joints(Shore shore) {
        if (!(shore.assembly().joints() instanceof JointsAt at)) {
            return new CheckResult.NotChecked(
                    "whether plies are pieced, and where, is not declared (declare: assembly)");
        }
        Finding worst = holds("every ply runs through");
        for (Joint joint : at.all()) {
            worst = Worse.of(worst, joint(shore, joint));
        }
        return worst;
    }

    private static Finding joint(Shore shore, Joint joint) {
        Post nearest = shore.posts().get(0);
        for (Post post : shore.posts()) {
            if (Math.abs(post.x() - joint.x()) < Math.abs(nearest.x() - joint.x())) {
                nearest = post;
            }
        }
        if (!(nearest.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("a ply is pieced, and the head plate of " + nearest.name()
                    + " under the joint is not known: no post type is named (declare: type)");
        }
        double least =
                SectionR502_6.leastBearing(SectionR502_6.Seat.WOOD_OR_METAL).value();
        double bears = type.head().along() / 2 - Math.abs(nearest.x() - joint.x());
        return bears >= least - FIT
                ? holds("each joint is over a post")
                : fails("ply " + joint.ply()
                        + " is pieced where its two pieces do not both bear on a head plate by 1 1/2 in");
    }

    /** What the plies that run through carry when the others carry nothing. */
    private static Finding carried(Judged asOne, int plies, int through, Working working) {
        Dimension kind = asOne.measure().dimension();
        double own = working.analysis("D", "demand of the beam's own check, all plies counted", kind, asOne.demand());
        working.analysis("C", "what that check allows", kind, asOne.capacity());
        working.plan("n", "number of plies", Dimension.NUMBER, plies);
        working.plan("nt", "plies that run through", Dimension.NUMBER, through);
        double more = working.step("Dt", "demand on those that run through", kind, own * plies / through, "D × n / nt");
        return working.compared("Dt", "C", new Judged(asOne.measure(), more, asOne.capacity()));
    }

    private static Finding holds(String reason) {
        return new CheckResult.Condition(true, Measure.DEFLECTION, 0, reason);
    }

    private static Finding fails(String reason) {
        return new CheckResult.Condition(false, Measure.DEFLECTION, 0, reason);
    }
}
