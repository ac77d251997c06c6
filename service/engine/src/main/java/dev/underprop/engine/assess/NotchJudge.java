package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section3_4;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.EndNotch;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * A joist cut from below where it ends on a bearing, against the shear that what is left of it carries. The whole of the
 * greatest reaction counts as shear, with the load duration of permanent load whatever brings it.
 */
final class NotchJudge {

    static final Citation RULE = Citation.remembered("NDS", "2018", "3.4.3.2(a), 4.4.3 with 3.2.3");

    /** Ends that miss by less than this fit (m). */
    private static final double FIT = 1e-4;

    private NotchJudge() {}

    /** Whether a joist ends on a bearing. */
    static boolean endsOn(Bearing bearing, Joist joist) {
        return joist.start() >= bearing.y() - bearing.length() / 2 - FIT
                || joist.end() <= bearing.y() + bearing.length() / 2 + FIT;
    }

    /**
     * @param decay what the intake says of decay and notches
     * @param load greatest that the end of the joist brings (N), not negative
     */
    static Finding judge(Joist joist, Intake.Reply decay, double load) {
        if (!(joist.notch() instanceof EndNotch.Cut cut)) {
            return decay == Intake.Reply.NO
                    ? new CheckResult.NotApplicable("the intake says that nothing is notched")
                    : new CheckResult.NotChecked(
                            "whether the joist is notched at its ends is not known (declare: endNotch)");
        }
        return cut.depth() == 0
                ? new CheckResult.NotApplicable("stated not notched at its ends")
                : judge(joist.member(), cut.depth(), load);
    }

    private static Finding judge(Member member, double cut, double load) {
        if (cut >= member.depth()) {
            return new CheckResult.Refused(Measure.FORCE, load, "the notch is as deep as the joist");
        }
        double allowed = new TimberCapacity(member, 1).shear(LoadDuration.PERMANENT);
        Outcome left = Section3_4.notchedShear(allowed, member.breadth(), member.depth(), member.depth() - cut);
        return left instanceof Outcome.Value value
                ? new CheckResult.Judged(Measure.FORCE, load, value.cited().value())
                : new CheckResult.Refused(Measure.FORCE, load, ((Outcome.Refused) left).reason());
    }
}
