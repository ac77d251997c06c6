package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is watched at a turn: not under dead load alone, and not at the end of a stage alone. */
class WatchedTest {

    /**
     * A shore halfway between two walls, 7.82 ft either side, joists 2x10 24 in apart. The outer joist carries 15 psf on 1 ft and
     * itself, 18 plf: each wall has 18·7.82 = 141 lb of it, and raising the shore by h takes 3EI/l³ = 467 lb/in off, so that
     * it comes clear at 0.30 in. Live load of 30 psf on the other span alone takes 30·7.82/16 = 15 lb more: 0.27 in.
     */
    @Test
    void aContactThatMustStayClosedIsWatchedUnderLiveLoadWhereItRelieves() {
        JobPlan row = Lifts.fastened(Lifts.row(4, new Post.Rigid(), 12000 * POUND, (15.8 * FOOT + 2 * INCH) / 2));
        LiftLimits limits = Lifts.limits(INCH / 8, 1.0 / 20);
        JobPlan bare = Lifts.loaded(row, 15, 0, 100);
        JobPlan live = Lifts.loaded(row, 15, 30, 100);
        LiftRequest high = Lifts.request(row, limits, ACME, 0.28 * INCH);
        LiftRequest less = Lifts.request(row, limits, ACME, 0.21 * INCH);

        assertThat(shored(bare, high).outcome())
                .as(shored(bare, high).obstacle().toString())
                .isEqualTo(LiftPlan.Outcome.PLANNED);
        assertThat(shored(live, less).outcome())
                .as(shored(live, less).obstacle().toString())
                .isEqualTo(LiftPlan.Outcome.PLANNED);
        LiftPlan answer = shored(live, high);
        assertThat(answer.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        assertThat(((LiftPlan.Stopped) answer.obstacle()).limit().kind()).isEqualTo(Limit.Kind.CONTACT);
    }

    /**
     * A shore at 6 ft, the near wall out, joists 24 in apart that the far wall ties down. About the shore 26 plf beyond it hold by
     * 26·10²/2 = 1,300 lb·ft and tip by 26·6²/2 = 468; live load of 20 psf on the overhang tips by 40·6²/2 = 720. All of dead
     * load holds; 0.6 of it by 780, so that a tie must hold (468 + 720 - 780)/9.8 = 42 lb.
     */
    @Test
    void tiesAreWatchedWithPartOfDeadLoad() {
        JobPlan row = Lifts.fastened(Lifts.row(3, new Post.Rigid(), 40000 * POUND, 6 * FOOT));
        JobPlan loaded = Lifts.loaded(row, 11.5, 20, 0.001);

        assertThat(broken(loaded, 30)).contains(Limit.Kind.TIE);
        assertThat(broken(loaded, 60)).doesNotContain(Limit.Kind.TIE);
    }

    private static List<Limit.Kind> broken(JobPlan plan, double tie) {
        Bearing far = plan.floor().bearings().get(1);
        Bearing tied = new Bearing(
                far.name(),
                far.y(),
                far.length(),
                far.stiffness(),
                far.from(),
                far.to(),
                new Fastening.Held(tie * POUND, "invented"),
                far.gaps());
        Floor floor = new Floor(
                plan.floor().joists(),
                List.of(plan.floor().bearings().get(0), tied),
                plan.floor().loads(),
                plan.floor().joistWeight());
        JobPlan held = Lifts.plan(floor, plan.shores());
        LiftPlan answer = Lifter.plan(held, Lifts.request(held, Lifts.limits(INCH / 8, 1.0 / 20), ACME, INCH / 8));
        assertThat(answer.outcome()).isNotEqualTo(LiftPlan.Outcome.UNSTABLE);
        return answer.broken().stream().map(b -> b.limit().kind()).toList();
    }

    private static LiftPlan shored(JobPlan plan, LiftRequest asked) {
        return Lifter.plan(plan, Lifts.with(asked, Lifts.SHORED, asked.progress(), asked.after()));
    }

    @Test
    void largeSharesDoNotOverflow() {
        assertThat(Stager.share(2_000_000, 1500, 2000)).isEqualTo(1_500_000);
    }

    /** A stage is no place to look at stability alone: each turn is. */
    @Test
    void everyTurnStandsWithPartOfDeadLoad() {
        int looked = 0;
        for (long seed = 1; seed <= 20; seed++) {
            RandomLifts.Lift lift = RandomLifts.of(seed);
            LiftPlan plan = Lifter.plan(lift.plan(), lift.request());
            List<double[]> states = new ArrayList<>();
            double[] now = new double[plan.posts().size()];
            for (LiftPlan.Stage stage : plan.stages()) {
                for (LiftPlan.Turn turn : stage.turns()) {
                    now[turn.post()] += turn.raise();
                    states.add(now.clone());
                }
            }
            looked += StandsReplay.stands(lift, states, seed);
        }
        System.out.println(looked + " turns stand with 0.6 of dead load");
        assertThat(looked).isGreaterThan(150);
    }
}
