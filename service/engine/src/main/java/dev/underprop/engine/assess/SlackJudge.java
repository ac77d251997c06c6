package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Post;

/**
 * A post that carries nothing in some case: it stays where it is only if it is fastened at head and foot. One that is known to
 * be held by nothing but its load fails; where that is not known, neither is whether it stays.
 */
final class SlackJudge {

    private static final String SLACK = "the post goes slack: in some case it carries nothing, and ";

    private SlackJudge() {}

    /**
     * @param slack whether it carries nothing in some case
     * @param least load otherwise (N)
     */
    static Finding judge(Post.Ends ends, boolean slack, double least) {
        if (!slack) {
            return new CheckResult.Condition(true, Measure.FORCE, least, "the post carries load in every case");
        }
        if (ends.fastened()) {
            return new CheckResult.Condition(
                    true, Measure.FORCE, 0, "the post goes slack in some case, and is fastened at head and foot");
        }
        boolean loose = ends.head() instanceof Post.Unfastened || ends.foot() instanceof Post.Unfastened;
        return loose
                ? new CheckResult.Condition(false, Measure.FORCE, 0, SLACK + "it is not fastened at head and foot")
                : new CheckResult.NotChecked(SLACK + "what holds its " + undeclared(ends) + " then is not declared");
    }

    private static String undeclared(Post.Ends ends) {
        boolean head = ends.head() instanceof Post.Undeclared;
        boolean foot = ends.foot() instanceof Post.Undeclared;
        return head && foot
                ? "head (declare: head) and its foot (declare: foot)"
                : head ? "head (declare: head)" : "foot (declare: foot)";
    }
}
