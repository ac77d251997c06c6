package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Letting posts down onto what was built up. */
class LettingDownTest {

    private static final LiftLimits EIGHTH = Lifts.limits(INCH / 8, 1.0 / 40);

    private final JobPlan four = Lifts.fastened(Lifts.row(4, new Post.Rigid(), 12000 * POUND, 2 * FOOT));

    private static LiftRequest onto(JobPlan plan, LiftScrew screw, double... raise) {
        LiftRequest asked = Lifts.request(plan, EIGHTH, screw, raise);
        return Lifts.with(asked, asked.during(), asked.progress(), new LiftRequest.After(List.of(0)));
    }

    /**
     * A joist of 15.8 ft less 2 in, 24 in apart: 18 psf dead in all bends it by 18·2·15.63²/8 = 1,100 lb·ft or 617 psi, and
     * 60 psf of live load more to 2,670 psi, where 850·1.1·1.15 = 1,075 psi is allowed.
     */
    @Test
    void aFloorThatCannotBearItsLiveLoadWithoutPostsKeepsThem() {
        JobPlan heavy = Lifts.loaded(four, 15, 60, 100);
        LiftPlan plan = Lifter.plan(heavy, onto(heavy, ACME, 0.25 * INCH));
        JobPlan light = Lifts.loaded(four, 10, 5, 100);
        LiftPlan freed = Lifter.plan(light, onto(light, ACME, 0.25 * INCH));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(plan.release()).isInstanceOf(LiftPlan.CannotLetDown.class);
        assertThat(((LiftPlan.CannotLetDown) plan.release()).reason()).contains("joist");
        assertThat(freed.release()).isInstanceOf(LiftPlan.LetDown.class);
    }

    /** A1 to A3 are raised, A4 is not: to be free it must go below where its screw began, and nothing says that it can. */
    @Test
    void aScrewGoesBelowItsStartOnlyWhereThatIsStated() {
        JobPlan light = Lifts.loaded(four, 10, 5, 100);
        LiftPlan plan = Lifter.plan(light, onto(light, ACME, 0.25 * INCH, 0.25 * INCH, 0.25 * INCH, 0));

        assertThat(plan.outcome()).as(plan.obstacle().toString()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(plan.open()).anyMatch(o -> o.contains("screw") && o.contains("down"));
    }

    /** The screw of A4, which is only let down, goes half an inch at once where an eighth a stage is allowed. */
    @Test
    void aScrewThatIsOnlyLetDownIsFineEnoughToo() {
        LiftRequest asked = onto(four, ACME, 0.25 * INCH, 0.25 * INCH, 0.25 * INCH, 0);
        List<LiftScrew> screws = new ArrayList<>(asked.screws());
        screws.set(3, new LiftScrew(0.5 * INCH, 1, ACME.thread(), ACME.wrench(), ACME.pull(), ACME.travel()));

        assertThat(Lifter.misfits(four, asked.with(screws)).toString())
                .contains("TooCoarse")
                .contains("A4");
    }
}
