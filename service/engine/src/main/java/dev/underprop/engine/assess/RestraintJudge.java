package dev.underprop.engine.assess;

import dev.underprop.engine.assess.SituationResult.Sideways;
import dev.underprop.engine.check.Bound;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.function.ToDoubleFunction;

/**
 * What must hold the floor and the heads of the posts sideways: a part of the post loads that stands for out of plumb and the
 * unforeseen, and on the floor the forces that the engineer of the job gives. Posts are pinned at both ends and hold nothing.
 */
final class RestraintJudge {

    private static final Citation RULE = Citation.remembered(
            "BS 5975 and EN 12812 practice", "", "2.5 % of the vertical load, sideways in any direction");

    private static final String FLOOR = "floor";
    private static final String ALONG = "along the shores";
    private static final String ACROSS = "along the joists";

    private final SituationRun run;
    private final boolean wanted;
    private final List<Sideways> forces = new ArrayList<>();
    private final List<CheckResult> results = new ArrayList<>();

    /** @param working whether calculation records are wanted */
    RestraintJudge(SituationRun run, boolean working) {
        this.run = run;
        this.wanted = working;
        for (int s = 0; s < run.plan().shores().size(); s++) {
            Shore shore = run.plan().shores().get(s);
            int occurrence = run.met().shores().caseOf(s);
            CheckResult.Where where = run.occurrences().where(occurrence, Double.NaN);
            String heads = "heads of " + shore.name();
            Push push = ofShore(s);
            judge(heads, ALONG, shore.bracing().heads().along(), push, where);
            judge(heads, ACROSS, shore.bracing().heads().across(), ofShore(s), where);
        }
        if (!run.plan().shores().isEmpty()) {
            Restraint.Sides floor = run.plan().circumstances().floorRestraint();
            CheckResult.Where where = new CheckResult.InCase(
                    run.situation().name(),
                    "sum of the shores' greatest, with given sideways loads",
                    "any",
                    Double.NaN,
                    Bound.NONE);
            judge(FLOOR, ALONG, floor.along(), ofFloor(Lateral.Force::along), where);
            judge(FLOOR, ACROSS, floor.across(), ofFloor(Lateral.Force::across), where);
        }
    }

    /**
     * What pushes sideways.
     *
     * @param force (N); F in its record
     * @param notional the part that stands for out of plumb and the unforeseen (N)
     */
    private record Push(double force, double notional, Working working) {}

    private Push ofShore(int s) {
        Working working = Working.when(wanted);
        double notional = notional(s, "", working);
        working.step("F", "sideways force", Dimension.FORCE, notional, "H");
        return new Push(notional, notional, working);
    }

    private double notional(int s, String mark, Working working) {
        String name = run.plan().shores().get(s).name();
        double load = working.analysis(
                "V" + mark,
                "greatest sum of the post loads of " + name,
                Dimension.FORCE,
                Math.max(0, run.met().shores().value(s)));
        working.rule("c", "part that stands for the unforeseen", Dimension.NUMBER, SidewaysJudge.NOTIONAL, RULE, "");
        return working.rule(
                "H" + mark, "of it sideways", Dimension.FORCE, SidewaysJudge.NOTIONAL * load, RULE, "c × V" + mark);
    }

    private Push ofFloor(ToDoubleFunction<Lateral.Force> side) {
        Working working = Working.when(wanted);
        double all = 0;
        StringJoiner sum = new StringJoiner(" + ");
        for (int s = 0; s < run.plan().shores().size(); s++) {
            all += notional(s, String.valueOf(s + 1), working);
            sum.add("H" + (s + 1));
        }
        working.step("Hn", "all shores together", Dimension.FORCE, all, sum.toString());
        double force = all + given(side, working);
        working.step("F", "sideways force", Dimension.FORCE, force, "Hn + Hg");
        return new Push(force, all, working);
    }

    /** Wind and earthquake do not act together. */
    private double given(ToDoubleFunction<Lateral.Force> side, Working working) {
        double wind = 0;
        double seismic = 0;
        if (run.plan().circumstances().lateral() instanceof Lateral.Given given) {
            for (Lateral.Force force : given.forces()) {
                if (force.origin() == Lateral.Origin.WIND) {
                    wind += Section2_4.windSideways().value() * side.applyAsDouble(force);
                } else {
                    seismic += Section2_4.seismicSideways().value() * side.applyAsDouble(force);
                }
            }
        }
        Citation factors = Section2_4.windSideways().citation();
        working.rule("W", "given wind, times its factor", Dimension.FORCE, wind, factors, "");
        working.rule("S", "given earthquake, times its factor", Dimension.FORCE, seismic, factors, "");
        return working.step(
                "Hg", "the larger: they do not act together", Dimension.FORCE, Math.max(wind, seismic), "max( W , S )");
    }

    private void judge(String what, String direction, Restraint restraint, Push push, CheckResult.Where where) {
        String declared = restraint instanceof Restraint.Held held ? held.by() : "";
        forces.add(new Sideways(what, direction, push.force, push.notional, declared));
        CheckResult.Finding finding = finding(what, direction, restraint, push);
        boolean compared = !(finding instanceof CheckResult.NotChecked);
        results.add(new CheckResult(
                CheckId.SIDEWAYS_RESTRAINT,
                what + ", " + direction,
                finding,
                compared ? where : new CheckResult.NoCase(),
                RULE,
                push.working.steps(finding)));
    }

    private static CheckResult.Finding finding(String what, String direction, Restraint restraint, Push push) {
        double force = push.force;
        if (restraint instanceof Restraint.Held held) {
            return Double.isNaN(held.capacity())
                    ? new CheckResult.Condition(true, Measure.FORCE, force, "declared held by " + held.by())
                    : held(force, held.capacity(), push.working);
        }
        return restraint instanceof Restraint.Free
                ? new CheckResult.Condition(
                        false,
                        Measure.FORCE,
                        0,
                        "nothing holds the " + what + " " + direction + ": it stands free on pinned posts")
                : new CheckResult.NotChecked("what holds the " + what + " " + direction + " is not declared (declare: "
                        + (what.equals(FLOOR) ? "restraint" : "heads") + ")");
    }

    private static CheckResult.Finding held(double force, double capacity, Working working) {
        working.plan("Fc", "what holds it, as stated", Dimension.FORCE, capacity);
        return working.compared("F", "Fc", new CheckResult.Judged(Measure.FORCE, force, capacity));
    }

    List<Sideways> forces() {
        return forces;
    }

    List<CheckResult> results() {
        return results;
    }
}
