package dev.underprop.engine.assess;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.Assessment.Counts;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.PlanVerdict;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Assesses a plan: every situation, every combination, every live load pattern. Pure: the same plan gives the same
 * answer, on any thread.
 */
public final class Assessor {

    private Assessor() {}

    /** Assesses one plan, without calculation records. */
    public static Assessment assess(JobPlan plan) {
        return assess(plan, false);
    }

    /**
     * Assesses one plan.
     *
     * @param working whether every check carries its calculation record
     */
    public static Assessment assess(JobPlan plan, boolean working) {
        return assess(plan, working, Halt.NEVER);
    }

    /**
     * Assesses one plan as long as the answer is wanted.
     *
     * @param working whether every check carries its calculation record
     * @param halt asked while cases are solved
     * @throws dev.underprop.engine.Halted when nobody wants the answer any more
     */
    public static Assessment assess(JobPlan plan, boolean working, Halt halt) {
        return assess(new Structure(plan, halt), Integer.MAX_VALUE, working);
    }

    /** The same with the first so many live load patterns alone: what more of them add can be told by comparison. */
    static Assessment assess(Structure structure, int mostPatterns) {
        return assess(structure, mostPatterns, false);
    }

    private static Assessment assess(Structure structure, int mostPatterns, boolean working) {
        JobPlan plan = structure.plan();
        Combinations combinations = Combinations.of(structure.model());
        List<SituationResult> situations = new ArrayList<>();
        int patterns = 0;
        int cases = 0;
        int settings = 0;
        Situation before = new Situation("as found", List.of(), List.of());
        Seats seats = Seats.first(structure, plan.situations().get(0));
        for (Situation situation : plan.situations()) {
            seats = situations.isEmpty() ? seats : seats.next(situation);
            SituationRun run = new SituationRun(structure, situation, combinations, seats, mostPatterns);
            run.run();
            situations.add(new SituationJudge(run, before, working).judge());
            before = situation;
            patterns = Math.max(patterns, run.patternCount());
            settings = Math.max(settings, run.occurrences().settings());
            cases += run.quality().cases();
        }
        PlanVerdict verdict =
                situations.stream().map(SituationResult::verdict).reduce(PlanVerdict.ADEQUATE, PlanVerdict::worse);
        return new Assessment(
                verdict,
                worst(situations),
                situations,
                Assumptions.of(plan, structure.bounds()),
                Advisories.of(plan, situations),
                new Counts(situations.size(), combinations.count(), patterns, settings, cases, structure.factorised()));
    }

    /** For each check and place the worst over all situations, in the order of the table of checks. */
    private static List<CheckResult> worst(List<SituationResult> situations) {
        Map<CheckId, Map<String, CheckResult>> worst = new EnumMap<>(CheckId.class);
        for (SituationResult situation : situations) {
            for (CheckResult result : situation.checks()) {
                worst.computeIfAbsent(result.id(), id -> new LinkedHashMap<>())
                        .merge(result.place(), result, Assessor::worse);
            }
        }
        List<CheckResult> all = new ArrayList<>();
        worst.values().forEach(ofOne -> all.addAll(ofOne.values()));
        return Collections.unmodifiableList(all);
    }

    private static CheckResult worse(CheckResult one, CheckResult other) {
        return CheckResult.BEST_FIRST.compare(one, other) >= 0 ? one : other;
    }
}
