package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;

/** Tells how the checks of a member come about in the case that governs, as its limits have it. */
final class MemberSteps {

    private final SituationRun run;
    private final boolean wanted;

    MemberSteps(SituationRun run, boolean wanted) {
        this.run = run;
        this.wanted = wanted;
    }

    /** A record to be written where one is wanted. */
    Working working() {
        return Working.when(wanted);
    }

    /** The record of bending, shear or deflection; {@link Working#OFF} where none is wanted or nothing was met. */
    Working of(int m, int check, Finding finding) {
        MemberRun member = run.members().get(m);
        Peaks checks = member.checks();
        boolean compared = finding instanceof CheckResult.Judged || finding instanceof CheckResult.Refused;
        if (!wanted || !compared || !checks.met(check)) {
            return Working.OFF;
        }
        Working working = working();
        MemberLimits limits = member.limits();
        int combination = run.occurrences().caseOf(checks.caseOf(check)).combination();
        double demand = checks.demand(check);
        switch (check) {
            case MemberRun.BENDING_CHECK -> {
                limits.tellBending(demand, hogging(member, combination), combination, working);
                working.compared("fb", "F'b", finding);
            }
            case MemberRun.SHEAR_CHECK -> {
                limits.tellShear(demand, combination, working);
                working.compared("fv", "F'v", finding);
            }
            default -> tellDeflection(member, check, finding, working);
        }
        return working;
    }

    /** Which edge is pressed in the case that governs bending: told by what was allowed, else by where it was met. */
    private static boolean hogging(MemberRun member, int combination) {
        double allowed = member.checks().capacity(MemberRun.BENDING_CHECK);
        boolean sags = allowed == member.limits().sagging(combination);
        boolean hogs = allowed == member.limits().hogging(combination);
        if (sags != hogs) {
            return hogs;
        }
        Peaks extremes = member.extremes();
        double at = member.checks().at(MemberRun.BENDING_CHECK);
        return extremes.met(MemberRun.HOGGING)
                && extremes.at(MemberRun.HOGGING) == at
                && !(extremes.met(MemberRun.SAGGING) && extremes.at(MemberRun.SAGGING) == at);
    }

    private static void tellDeflection(MemberRun member, int check, Finding finding, Working working) {
        boolean live = check == MemberRun.LIVE_CHECK;
        TimberCapacity.rigidity(member.limits().member(), working);
        allowed(member, check, working);
        String what = live ? "deflection from loads that come and go" : "deflection under all load";
        working.analysis("Δ", what, Dimension.LENGTH, member.checks().demand(check));
        working.compared("Δ", "Δa", finding);
    }

    /** Tells what deflection is allowed. */
    static void allowed(MemberRun member, int check, Working working) {
        Cited divisor = check == MemberRun.LIVE_CHECK ? MemberLimits.live() : MemberLimits.total();
        double allowed = member.checks().capacity(check);
        working.analysis(
                "L", "span it lies in; twice a part that stands out", Dimension.LENGTH, allowed * divisor.value());
        working.rule("k", divisor, "part of the span allowed, 1 in", Dimension.NUMBER, "");
        working.rule("Δa", "allowed deflection", Dimension.LENGTH, allowed, divisor.citation(), "L / k");
    }
}
