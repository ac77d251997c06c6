package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section3_4;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.EndNotch;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
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

    /** As {@link #judge(Joist, Intake.Reply, double, Working)}, without a record. */
    static Finding judge(Joist joist, Intake.Reply decay, double load) {
        return judge(joist, decay, load, Working.OFF);
    }

    /**
     * @param decay what the intake says of decay and notches
     * @param load greatest that the end of the joist brings (N), not negative
     */
    static Finding judge(Joist joist, Intake.Reply decay, double load, Working working) {
        if (!(joist.notch() instanceof EndNotch.Cut cut)) {
            return decay == Intake.Reply.NO
                    ? new CheckResult.NotApplicable("the intake says that nothing is notched")
                    : new CheckResult.NotChecked(
                            "whether the joist is notched at its ends is not known (declare: endNotch)");
        }
        return cut.depth() == 0
                ? new CheckResult.NotApplicable("stated not notched at its ends")
                : judge(joist.member(), cut.depth(), load, working);
    }

    private static Finding judge(Member member, double cut, double load, Working working) {
        if (cut >= member.depth()) {
            return new CheckResult.Refused(Measure.FORCE, load, "the notch is as deep as the joist");
        }
        TimberCapacity.section(member, working);
        working.plan("c", "depth of the notch", Dimension.LENGTH, cut);
        double left = working.step("dn", "depth left", Dimension.LENGTH, member.depth() - cut, "d - c");
        double allowed = new TimberCapacity(member, 1).shear(LoadDuration.PERMANENT, working);
        Outcome shear = Section3_4.notchedShear(allowed, member.breadth(), member.depth(), left);
        working.rule(
                "V'r",
                shear,
                "shear that what is left carries",
                Dimension.FORCE,
                "2 / 3 × F'v × n × b × dn × ( dn / d )^2");
        working.analysis("R", "greatest load of this end", Dimension.FORCE, load);
        return working.compared(
                "R",
                "V'r",
                shear instanceof Outcome.Value value
                        ? new CheckResult.Judged(
                                Measure.FORCE, load, value.cited().value())
                        : new CheckResult.Refused(Measure.FORCE, load, ((Outcome.Refused) shear).reason()));
    }
}
