package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Going on from readings, and letting posts down once the floor is secured. */
class ReplanTest {

    private final JobPlan four =
            Lifts.fastened(Lifts.loaded(Lifts.row(4, new Post.Rigid(), 6000 * POUND, 2 * FOOT), 12, 12, 100));
    private final LiftRequest whole = Lifts.request(four, Lifts.limits(INCH / 8, 1.0 / 40), ACME, 0.5 * INCH);

    private LiftRequest with(LiftRequest.Progress progress, LiftRequest.After after) {
        return new LiftRequest(
                whole.during(),
                whole.survey(),
                whole.target(),
                whole.limits(),
                whole.screws(),
                whole.order(),
                whole.crept(),
                progress,
                after);
    }

    private LiftRequest read(double... levels) {
        List<Double> readings = new ArrayList<>();
        for (double level : levels) {
            readings.add(level);
        }
        return with(
                new LiftRequest.Progress(Collections.nCopies(4, 0.25 * INCH), readings), LiftRequest.After.POSTS_STAY);
    }

    @Test
    void readingsAsExpectedGoOnWithTheSamePlan() {
        double half = -0.25 * INCH;
        LiftPlan plan = Lifter.plan(four, read(half, half, half, half));
        LiftPlan first = Lifter.plan(four, whole);

        assertThat(plan.stages()).hasSize(2);
        assertThat(plan.remarks()).noneMatch(r -> r.kind() == LiftPlan.Remark.Kind.READING);
        assertThat(plan.points()).allSatisfy(p -> assertThat(p.reading().off()).isZero());
        LiftPlan.Turn here = plan.stages().get(0).turns().get(0);
        LiftPlan.Turn there = first.stages().get(2).turns().get(0);
        assertThat(here.raised()).isCloseTo(there.raised(), within(1e-12));
        assertThat(here.after().greatest()).isCloseTo(there.after().greatest(), within(1e-6));
    }

    @Test
    void aSinkingPadIsReadAndMadeUpFor() {
        double half = -0.25 * INCH;
        LiftPlan plan = Lifter.plan(four, read(half, half - 0.06 * INCH, half, half));

        assertThat(plan.remarks())
                .anyMatch(r -> r.kind() == LiftPlan.Remark.Kind.READING
                        && r.place().equals("A2")
                        && r.words().contains("pad has settled"));
        assertThat(plan.points().get(1).reading().off()).isCloseTo(-0.06 * INCH + INCH / 32, within(1e-9));
        assertThat(plan.posts().get(1).wanted()).isCloseTo(0.31 * INCH, within(1e-9));
        assertThat(plan.posts().get(0).wanted()).isCloseTo(0.25 * INCH, within(1e-9));
        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        // A2 carries less than it should until it has been made up for, A3 more.
        LiftPlan.Turn first = plan.stages().get(0).turns().stream()
                .filter(t -> t.name().equals("A2"))
                .findFirst()
                .orElseThrow();
        assertThat(first.before().greatest()).isLessThan(first.after().greatest());
        assertThat(plan.posts().get(1).travel())
                .isCloseTo(6 * INCH - 0.25 * INCH - plan.posts().get(1).planned(), within(1e-9));
    }

    @Test
    void aReadingThatIsTooHighIsSaid() {
        double half = -0.25 * INCH;
        LiftPlan plan = Lifter.plan(four, read(half, half, half + 0.1 * INCH, half));

        assertThat(plan.remarks())
                .anyMatch(r -> r.place().equals("over A3") && r.words().startsWith("higher than expected"));
    }

    @Test
    void postsAreLetDownOntoTheRebuiltWall() {
        LiftPlan plan = Lifter.plan(four, with(LiftRequest.Progress.NONE, new LiftRequest.After(List.of(0))));

        assertThat(plan.release()).isInstanceOf(LiftPlan.LetDown.class);
        LiftPlan.LetDown down = (LiftPlan.LetDown) plan.release();
        assertThat(down.onto()).containsExactly("near wall");
        LiftPlan.Stage last = down.stages().get(down.stages().size() - 1);
        assertThat(down.stages().stream().flatMap(s -> s.turns().stream()))
                .allSatisfy(t -> assertThat(t.raise()).isNegative());
        // What is left is the weight of the beam itself.
        double own = 9 * Lifts.PLF * four.shores().get(0).length();
        assertThat(last.loads().stream().mapToDouble(Span::greatest).sum()).isLessThan(1.06 * own);
        assertThat(down.levels()).allSatisfy(l -> assertThat(l.least()).isGreaterThan(-0.1 * INCH));
        assertThat(plan.stages()).hasSize(4);
    }

    @Test
    void withoutABearingToCarryItNothingIsLetDown() {
        LiftPlan plan = Lifter.plan(four, with(LiftRequest.Progress.NONE, new LiftRequest.After(List.of(1))));

        assertThat(plan.release()).isInstanceOf(LiftPlan.CannotLetDown.class);
    }
}
