package dev.underprop.engine.lift;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.List;

/** States of a lift as situations of its plan: whether the door for layouts finds each of them to stand. */
final class StandsReplay {

    private StandsReplay() {}

    static int stands(RandomLifts.Lift lift, List<double[]> states, long seed) {
        JobPlan plan = lift.plan();
        List<Situation> all = new ArrayList<>();
        for (double[] state : states) {
            List<Situation.PostLift> lifts = new ArrayList<>();
            for (int p = 0; p < state.length; p++) {
                lifts.add(new Situation.PostLift(0, p, state[p]));
            }
            all.add(new Situation("turn " + all.size(), lift.request().during().removed(), lifts));
        }
        if (all.isEmpty()) {
            return 0;
        }
        Assessment assessment = Assessor.assess(
                new JobPlan(plan.basis(), plan.floor(), plan.shores(), plan.ground(), all, plan.circumstances()));
        assessment
                .situations()
                .forEach(s ->
                        assertThat(s.stands()).as("seed %d, %s", seed, s.name()).isTrue());
        return all.size();
    }
}
