package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

/** A post of timber: what is declared of it decides whether it can be judged, {@link TimberColumn} works it out. */
final class TimberPostJudge {

    static final Citation RULE = Citation.remembered(
            "NDS",
            "2018",
            "3.7, 3.10.1, 15.3 and 15.4, pinned ends, load duration of dead load throughout, which is the safe side");

    /** Sizes that miss by less than this are the same (m). */
    private static final double FIT = 1e-4;

    private TimberPostJudge() {}

    /** As {@link #judge(PostType, TimberPost, double, double, double, Working)}, without a record. */
    static Finding judge(PostType type, TimberPost post, double height, double load, double beam) {
        return judge(type, post, height, load, beam, Working.OFF);
    }

    /**
     * @param height between the pins (m), positive
     * @param load (N), not negative
     * @param beam breadth of the beam on its head (m), positive
     */
    static Finding judge(PostType type, TimberPost post, double height, double load, double beam, Working working) {
        Member member = post.member();
        if (member.moisture() == Member.Moisture.UNSTATED) {
            return new CheckResult.NotChecked("the moisture of the timber post is not stated (declare: moisture)");
        }
        if (TreatmentJudge.judge(member.details().treatment()) instanceof CheckResult.NotChecked unknown) {
            return new CheckResult.NotChecked("the timber post: " + unknown.reason());
        }
        if (post.eccentricity() > 0 && member.plies() > 1) {
            return new CheckResult.NotChecked("a built-up timber post with its load off the middle is not worked out");
        }
        TimberColumn column = new TimberColumn(post, height);
        String gap = column.gap();
        if (!gap.isEmpty()) {
            return new CheckResult.NotChecked(gap);
        }
        String refusal = column.refusal();
        working.plan("h", "height between the pins", Dimension.LENGTH, height);
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        if (!refusal.isEmpty()) {
            return working.compared("P", "", new CheckResult.Refused(Measure.FORCE, load, refusal));
        }
        double between = column.capacity(working);
        double allowed = working.step(
                "Pa",
                "allowed, the least of them",
                Dimension.FORCE,
                Math.min(between, ends(type, column, beam, working)),
                "min( Pb , Ph , Pf )");
        return working.compared("P", "Pa", new CheckResult.Judged(Measure.FORCE, load, allowed));
    }

    /** At the head the beam presses over its own breadth: nothing shows that a plate spreads it over more. */
    private static double ends(PostType type, TimberColumn column, double beam, Working working) {
        double head = end("h", type.head(), Math.min(type.head().across(), beam), column, working);
        return Math.min(head, end("f", type.base(), type.base().across(), column, working));
    }

    /** A plate counts as steel when its thickness and yield stress are stated. */
    private static double end(String mark, Plate plate, double across, TimberColumn column, Working working) {
        boolean steel = !Double.isNaN(plate.thickness()) && !Double.isNaN(plate.yield());
        return column.endGrain(mark, new TimberColumn.Pressed(plate.along(), across, steel), working);
    }

    /** Whether a plate does not reach beyond the timber, so that nothing bends it. */
    static boolean covers(TimberPost post, Plate plate) {
        return plate.along() <= post.member().breadth() + FIT
                && plate.across() <= post.member().depth() + FIT;
    }
}
