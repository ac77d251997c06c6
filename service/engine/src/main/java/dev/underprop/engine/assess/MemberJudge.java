package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Steps;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.ibc2021.Section1604;
import dev.underprop.engine.clause.irc2021.GirderNail;
import dev.underprop.engine.clause.nds2018.Section3_4;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;

/** Judges joists and shore beams from what they met in a run. */
final class MemberJudge {

    private final SituationRun run;
    private final MemberSteps steps;
    private final List<CheckResult> results = new ArrayList<>();

    /** @param working whether calculation records are wanted */
    MemberJudge(SituationRun run, boolean working) {
        this.run = run;
        this.steps = new MemberSteps(run, working);
    }

    /** What each kind of member is judged by. */
    private record Ids(CheckId bending, CheckId shear, CheckId total, CheckId live) {
        static final Ids JOIST = new Ids(
                CheckId.JOIST_BENDING,
                CheckId.JOIST_SHEAR,
                CheckId.JOIST_DEFLECTION_TOTAL,
                CheckId.JOIST_DEFLECTION_LIVE);
        static final Ids BEAM = new Ids(
                CheckId.BEAM_BENDING, CheckId.BEAM_SHEAR, CheckId.BEAM_DEFLECTION_TOTAL, CheckId.BEAM_DEFLECTION_LIVE);
        static final Ids GIRDER = new Ids(
                CheckId.GIRDER_BENDING,
                CheckId.GIRDER_SHEAR,
                CheckId.GIRDER_DEFLECTION_TOTAL,
                CheckId.GIRDER_DEFLECTION_LIVE);
    }

    List<CheckResult> judge() {
        int joists = run.plan().floor().joists().size();
        int shores = run.plan().shores().size();
        for (int m = 0; m < run.members().size(); m++) {
            Ids ids = m < joists ? Ids.JOIST : m < joists + shores ? Ids.BEAM : Ids.GIRDER;
            Finding bending = bending(m);
            Steps record = steps.of(m, MemberRun.BENDING_CHECK, bending).steps(bending);
            add(ids.bending, m, bending, MemberRun.BENDING_CHECK, BENDING, record);
            add(ids.shear, m, MemberRun.SHEAR_CHECK, Measure.STRESS, SHEAR);
            add(ids.total, m, MemberRun.TOTAL_CHECK, Measure.DEFLECTION, TOTAL);
            add(ids.live, m, MemberRun.LIVE_CHECK, Measure.DEFLECTION, LIVE);
            addMoisture(m, member(m));
            addTreatment(m, member(m));
            if (ids == Ids.BEAM) {
                Working working = steps.working();
                Finding creep = creep(m, working);
                addPlies(m, run.plan().shores().get(m - joists), creep);
                add(
                        CheckId.BEAM_DEFLECTION_LONG_TERM,
                        m,
                        creep,
                        MemberRun.TOTAL_CHECK,
                        CreepJudge.RULE,
                        working.steps(creep));
            }
        }
        return results;
    }

    private Member member(int m) {
        int joists = run.plan().floor().joists().size();
        int shores = run.plan().shores().size();
        if (m < joists) {
            return run.plan().floor().joists().get(m).member();
        }
        return m < joists + shores
                ? run.plan().shores().get(m - joists).beam()
                : run.plan().girders().get(m - joists - shores).member();
    }

    private static final Citation TOTAL = Section1604.floorTotal().citation();
    private static final Citation LIVE = Section1604.floorLive().citation();
    private static final Citation BENDING = Section4_3.TABLE_4_3_1;
    private static final Citation SHEAR = Section3_4.shearStress(0, 1).citation();
    private static final Citation MOISTURE = Citation.read("NDS", "2018", "4.1.4 and 4.3.3");
    private static final Citation TREATMENT = Citation.remembered("NDS", "2018", "Table 4.3.8 and 2.3.4");

    private Finding bending(int m) {
        MemberRun member = run.members().get(m);
        if (!member.limits().bendingKnown()) {
            return new CheckResult.NotChecked("the tables of dimension lumber give no size factor for this section");
        }
        return judged(member.checks(), MemberRun.BENDING_CHECK, Measure.STRESS, "no moment arises");
    }

    private void add(CheckId id, int m, int check, Measure measure, Citation citation) {
        Finding finding = judged(run.members().get(m).checks(), check, measure, "no load comes and goes");
        add(id, m, finding, check, citation, steps.of(m, check, finding).steps(finding));
    }

    private void add(CheckId id, int m, Finding finding, int check, Citation citation, Steps record) {
        Peaks checks = run.members().get(m).checks();
        boolean compared = !(finding instanceof CheckResult.NotChecked || finding instanceof CheckResult.NotApplicable);
        CheckResult.Where where = !compared || !checks.met(check)
                ? new CheckResult.NoCase()
                : run.occurrences().where(checks.caseOf(check), checks.at(check));
        results.add(new CheckResult(id, run.names().member(m), finding, where, citation, record));
    }

    private static Finding judged(Peaks checks, int check, Measure measure, String nothing) {
        if (!checks.met(check) || checks.demand(check) == 0) {
            return new CheckResult.NotApplicable(nothing);
        }
        if (checks.capacity(check) == 0) {
            return new CheckResult.Refused(
                    measure, checks.demand(check), "the slenderness ratio of 3.3.3.7 is above 50: no value is allowed");
        }
        return new CheckResult.Judged(measure, checks.demand(check), checks.capacity(check));
    }

    private void addTreatment(int m, Member member) {
        results.add(new CheckResult(
                CheckId.TIMBER_TREATMENT,
                run.names().member(m),
                TreatmentJudge.judge(member.details().treatment()),
                new CheckResult.NoCase(),
                TREATMENT));
    }

    private Finding creep(int m, Working working) {
        Finding total = judged(
                run.members().get(m).checks(), MemberRun.TOTAL_CHECK, Measure.DEFLECTION, "no deflection arises");
        return total instanceof CheckResult.Judged judged ? new CreepJudge(run).judge(m, judged, working) : total;
    }

    private void addPlies(int m, Shore shore, Finding creep) {
        Peaks checks = run.members().get(m).checks();
        List<CheckResult.Judged> asOne = new ArrayList<>();
        for (int check :
                new int[] {MemberRun.BENDING_CHECK, MemberRun.SHEAR_CHECK, MemberRun.TOTAL_CHECK, MemberRun.LIVE_CHECK
                }) {
            Measure measure = check < MemberRun.TOTAL_CHECK ? Measure.STRESS : Measure.DEFLECTION;
            if (checks.met(check) && checks.demand(check) > 0) {
                asOne.add(new CheckResult.Judged(measure, checks.demand(check), checks.capacity(check)));
            }
        }
        if (creep instanceof CheckResult.Judged judged) {
            asOne.add(judged);
        }
        Working working = steps.working();
        Finding finding = PlyJudge.judge(shore, run.plan().floor().joists(), asOne, working);
        results.add(new CheckResult(
                CheckId.BEAM_PLY_FASTENING,
                run.names().member(m),
                finding,
                new CheckResult.NoCase(),
                GirderNail.RULE,
                working.steps(finding)));
    }

    private void addMoisture(int m, Member member) {
        Finding finding = switch (member.moisture()) {
            case DRY -> new CheckResult.NotApplicable("stated dry");
            case WET -> new CheckResult.NotApplicable("stated wet: the wet service factors are applied");
            case UNSTATED ->
                new CheckResult.NotChecked(
                        "whether the timber stays dry is not stated; dry values were used (declare: moisture)");
        };
        results.add(new CheckResult(
                CheckId.TIMBER_SERVICE, run.names().member(m), finding, new CheckResult.NoCase(), MOISTURE));
    }
}
