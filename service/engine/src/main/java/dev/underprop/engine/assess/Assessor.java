package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Assessment.Counts;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.PlanVerdict;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Assesses a plan: every situation, every combination, every live load pattern. Pure: the same plan gives the same
 * answer, on any thread.
 */
public final class Assessor {

    private Assessor() {}

    /** Assesses one plan. */
    public static Assessment assess(JobPlan plan) {
        LoadModel model = LoadModel.of(plan);
        List<Combination> combinations = Section2_4.gravity(present(model));
        List<SituationResult> situations = new ArrayList<>();
        int patterns = 0;
        int cases = 0;
        int factorised = 0;
        for (Situation situation : plan.situations()) {
            SituationRun run = new SituationRun(plan, situation, model, combinations);
            run.run();
            situations.add(new SituationJudge(run).judge());
            patterns = Math.max(patterns, run.patternCount());
            cases += run.quality().cases();
            factorised += run.quality().factorised();
        }
        PlanVerdict verdict =
                situations.stream().map(SituationResult::verdict).reduce(PlanVerdict.ADEQUATE, PlanVerdict::worse);
        return new Assessment(
                verdict,
                worst(situations),
                situations,
                Assumptions.of(plan),
                Advisories.of(plan, situations),
                new Counts(situations.size(), combinations.size(), patterns, cases, factorised));
    }

    private static Set<LoadKind> present(LoadModel model) {
        Set<LoadKind> kinds = EnumSet.of(LoadKind.DEAD);
        if (!model.cells().isEmpty()) {
            kinds.add(LoadKind.LIVE);
        }
        if (model.roofLive() != LoadModel.ABSENT) {
            kinds.add(LoadKind.ROOF_LIVE);
        }
        if (model.snow() != LoadModel.ABSENT) {
            kinds.add(LoadKind.SNOW);
        }
        return kinds;
    }

    /** For each check and place the worst over all situations, in the order of the table of checks. */
    private static List<CheckResult> worst(List<SituationResult> situations) {
        Map<CheckId, Map<String, CheckResult>> worst = new LinkedHashMap<>();
        for (CheckId id : CheckId.values()) {
            worst.put(id, new LinkedHashMap<>());
        }
        for (SituationResult situation : situations) {
            for (CheckResult result : situation.checks()) {
                worst.get(result.id()).merge(result.place(), result, Assessor::worse);
            }
        }
        return worst.values().stream().flatMap(m -> m.values().stream()).toList();
    }

    private static CheckResult worse(CheckResult one, CheckResult other) {
        return CheckResult.BEST_FIRST.compare(one, other) >= 0 ? one : other;
    }
}
