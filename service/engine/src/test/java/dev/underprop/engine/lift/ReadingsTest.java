package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings that are off: what may go on, and what stops the crew. */
class ReadingsTest {

    private static final double HALF = -0.25 * INCH;

    private static LiftRequest read(JobPlan plan, double... levels) {
        LiftRequest asked = Lifts.request(plan, Lifts.limits(INCH / 8, 1.0 / 40), ACME, 0.5 * INCH);
        List<Double> readings = Arrays.stream(levels).boxed().toList();
        return Lifts.with(
                asked,
                asked.during(),
                new LiftRequest.Progress(Collections.nCopies(4, 0.25 * INCH), readings),
                asked.after());
    }

    private static JobPlan four(double capacity) {
        return Lifts.fastened(Lifts.row(4, new Post.Rigid(), capacity * POUND, 2 * FOOT));
    }

    @Test
    void whatIsReadTooHighStopsTheCrew() {
        JobPlan plan = four(12000);
        LiftPlan answer = Lifter.plan(plan, read(plan, HALF, HALF, HALF + 0.1 * INCH, HALF));

        assertThat(answer.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(answer.stages()).isEmpty();
        assertThat(answer.reason()).contains("over A3").contains("higher");
    }

    /** The middle of the floor is low and every post is where it should be: no pad explains it. */
    @Test
    void whatNoPadExplainsStopsTheCrew() {
        JobPlan plan = four(12000);
        LiftRequest asked = read(plan, HALF, HALF, HALF, HALF);
        List<LiftRequest.Point> points = new ArrayList<>(asked.survey().points());
        points.add(new LiftRequest.Point("middle", 6 * FOOT, 8 * FOOT, 0, Double.NaN));
        List<Double> readings = new ArrayList<>(asked.progress().readings());
        readings.add(-0.3 * INCH);
        LiftRequest request = new LiftRequest(
                asked.during(),
                new LiftRequest.Survey(points, INCH / 32),
                asked.target(),
                asked.limits(),
                asked.screws(),
                asked.order(),
                asked.crept(),
                new LiftRequest.Progress(asked.progress().turned(), readings),
                asked.after());
        LiftPlan answer = Lifter.plan(plan, request);

        assertThat(answer.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(answer.stages()).isEmpty();
        assertThat(answer.reason()).contains("middle");
    }

    /** Posts strong enough for A2 to carry nothing at all: the lift goes on, and is never said to be fully checked. */
    @Test
    void aLowPostGoesOnOnlyWhereItsNeighboursCouldDoWithoutIt() {
        JobPlan strong = four(12000);
        LiftPlan goesOn = Lifter.plan(strong, read(strong, HALF, HALF - 0.06 * INCH, HALF, HALF));
        JobPlan weak = four(3500);
        LiftPlan stops = Lifter.plan(weak, read(weak, HALF, HALF - 0.06 * INCH, HALF, HALF));

        assertThat(goesOn.outcome()).as(goesOn.toString()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(goesOn.reason()).isEmpty();
        assertThat(goesOn.stages()).isNotEmpty();
        assertThat(goesOn.open()).anyMatch(o -> o.contains("over A2"));
        LiftPlan.Turn first = goesOn.stages().get(0).turns().get(0);
        assertThat(first.name()).isEqualTo("A2");
        assertThat(first.before().least()).isZero();
        assertThat(stops.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(stops.stages()).isEmpty();
        assertThat(stops.reason()).contains("A2").contains("nothing");
    }

    /** Without A2 the beam bends down by 0.035 in; a floor 0.1 in low is not explained by whatever A2 does. */
    @Test
    void lowerThanWithoutThePostStopsTheCrew() {
        JobPlan plan = four(12000);
        LiftPlan answer = Lifter.plan(plan, read(plan, HALF, HALF - 0.1 * INCH, HALF, HALF));

        assertThat(answer.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(answer.stages()).isEmpty();
        assertThat(answer.reason()).contains("over A2").contains("explains");
    }

    /** A reading at A4 is missing, and A4 is not asked to move: whether it settles is not known, and that is said. */
    @Test
    void aPostWithoutAReadingIsNotChecked() {
        JobPlan plan = four(12000);
        LiftRequest asked = read(plan, HALF, HALF, HALF, Double.NaN);
        List<LiftRequest.Point> points = new ArrayList<>();
        for (LiftRequest.Point p : asked.survey().points()) {
            points.add(new LiftRequest.Point(
                    p.name(), p.x(), p.y(), p.level(), p.name().equals("over A4") ? Double.NaN : 0));
        }
        LiftRequest request = new LiftRequest(
                asked.during(),
                new LiftRequest.Survey(points, INCH / 32),
                new LiftRequest.Target(LiftRequest.Plane.NONE, false),
                asked.limits(),
                asked.screws(),
                asked.order(),
                asked.crept(),
                asked.progress(),
                asked.after());
        LiftPlan answer = Lifter.plan(plan, request);

        assertThat(answer.outcome()).isNotEqualTo(LiftPlan.Outcome.PLANNED);
        assertThat(answer.open()).anyMatch(o -> o.contains("over A4"));
    }
}
