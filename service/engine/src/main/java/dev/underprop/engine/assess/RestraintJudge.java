package dev.underprop.engine.assess;

import dev.underprop.engine.assess.SituationResult.Sideways;
import dev.underprop.engine.check.Bound;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;
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
    private final List<Sideways> forces = new ArrayList<>();
    private final List<CheckResult> results = new ArrayList<>();

    RestraintJudge(SituationRun run) {
        this.run = run;
        double all = 0;
        for (int s = 0; s < run.plan().shores().size(); s++) {
            Shore shore = run.plan().shores().get(s);
            double notional =
                    SidewaysJudge.NOTIONAL * Math.max(0, run.met().shores().value(s));
            all += notional;
            int occurrence = run.met().shores().caseOf(s);
            CheckResult.Where where = run.occurrences().where(occurrence, Double.NaN);
            String heads = "heads of " + shore.name();
            judge(heads, ALONG, shore.bracing().heads().along(), notional, notional, where);
            judge(heads, ACROSS, shore.bracing().heads().across(), notional, notional, where);
        }
        if (!run.plan().shores().isEmpty()) {
            Restraint.Sides floor = run.plan().circumstances().floorRestraint();
            CheckResult.Where where = new CheckResult.InCase(
                    run.situation().name(),
                    "sum of the shores' greatest, with given sideways loads",
                    "any",
                    Double.NaN,
                    Bound.NONE);
            judge(FLOOR, ALONG, floor.along(), all + given(Lateral.Force::along), all, where);
            judge(FLOOR, ACROSS, floor.across(), all + given(Lateral.Force::across), all, where);
        }
    }

    /** Wind and earthquake do not act together. */
    private double given(ToDoubleFunction<Lateral.Force> side) {
        if (!(run.plan().circumstances().lateral() instanceof Lateral.Given given)) {
            return 0;
        }
        double wind = 0;
        double seismic = 0;
        for (Lateral.Force force : given.forces()) {
            if (force.origin() == Lateral.Origin.WIND) {
                wind += Section2_4.windSideways().value() * side.applyAsDouble(force);
            } else {
                seismic += Section2_4.seismicSideways().value() * side.applyAsDouble(force);
            }
        }
        return Math.max(wind, seismic);
    }

    private void judge(
            String what,
            String direction,
            Restraint restraint,
            double force,
            double notional,
            CheckResult.Where where) {
        String declared = restraint instanceof Restraint.Held held ? held.by() : "";
        forces.add(new Sideways(what, direction, force, notional, declared));
        CheckResult.Finding finding = finding(what, direction, restraint, force);
        boolean compared = !(finding instanceof CheckResult.NotChecked);
        results.add(new CheckResult(
                CheckId.SIDEWAYS_RESTRAINT,
                what + ", " + direction,
                finding,
                compared ? where : new CheckResult.NoCase(),
                RULE));
    }

    private static CheckResult.Finding finding(String what, String direction, Restraint restraint, double force) {
        if (restraint instanceof Restraint.Held held) {
            return Double.isNaN(held.capacity())
                    ? new CheckResult.Condition(true, Measure.FORCE, force, "declared held by " + held.by())
                    : new CheckResult.Judged(Measure.FORCE, force, held.capacity());
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

    List<Sideways> forces() {
        return forces;
    }

    List<CheckResult> results() {
        return results;
    }
}
