package dev.underprop.engine.lift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Lifts drawn by seed: each seed names its lift. */
class RandomLiftsTest {

    private static final int LIFTS = 320;

    private static boolean made(LiftPlan plan) {
        return plan.outcome() == LiftPlan.Outcome.PLANNED || plan.outcome() == LiftPlan.Outcome.INCOMPLETE;
    }

    @Test
    void turnByTurnNoLimitIsBrokenAndTargetsAreReached() {
        Map<LiftPlan.Outcome, Integer> outcomes = new EnumMap<>(LiftPlan.Outcome.class);
        int lifts = 0;
        int turns = 0;
        int looked = 0;
        double rounding = 0;
        for (long seed = 1; lifts < LIFTS; seed++) {
            RandomLifts.Lift lift = RandomLifts.of(seed);
            LiftPlan plan = Lifter.plan(lift.plan(), lift.request());
            outcomes.merge(plan.outcome(), 1, Integer::sum);
            if (made(plan)) {
                lifts++;
                Replay replay = new Replay(lift, plan);
                assertThat(replay.broken()).as("seed %d", seed).isEmpty();
                for (int p = 0; p < plan.posts().size(); p++) {
                    LiftPlan.PostCourse post = plan.posts().get(p);
                    assertThat(replay.end()[p]).isCloseTo(post.planned(), org.assertj.core.data.Offset.offset(1e-12));
                    assertThat(Math.abs(post.left())).isLessThanOrEqualTo(Lifts.ACME.step() / 2 + 1e-12);
                    assertThat(post.wanted()).isEqualTo(post.target() - post.found());
                    rounding = Math.max(rounding, Math.abs(post.left()));
                }
                turns += plan.stages().stream().mapToInt(s -> s.turns().size()).sum();
                looked += replay.looked();
            }
        }
        System.out.println(lifts + " random lifts replayed, " + turns + " turns, " + looked
                + " values against limits, greatest rounding " + rounding / Lifts.INCH + " in; outcomes " + outcomes);
        assertThat(lifts).isGreaterThanOrEqualTo(300);
    }

    @Test
    void aMirrorChangesNothing() {
        int lifts = 0;
        for (int i = 1; i <= 200; i++) {
            long seed = i;
            RandomLifts.Lift lift = RandomLifts.of(seed);
            LiftPlan one = Lifter.plan(lift.plan(), lift.request());
            RandomLifts.Lift turned = lift.mirrored();
            LiftPlan other = Lifter.plan(turned.plan(), turned.request());

            assertThat(other.outcome()).as("seed %d", seed).isEqualTo(one.outcome());
            assertThat(other.stages()).as("seed %d", seed).hasSameSizeAs(one.stages());
            int posts = one.posts().size();
            for (int p = 0; p < posts; p++) {
                assertThat(other.posts().get(posts - 1 - p).planned())
                        .as("seed %d", seed)
                        .isCloseTo(one.posts().get(p).planned(), org.assertj.core.data.Offset.offset(1e-9));
            }
            Map<Limit.Kind, Double> here = governing(one);
            Map<Limit.Kind, Double> there = governing(other);
            here.forEach((kind, used) -> assertThat(there.get(kind))
                    .as("seed %d %s", seed, kind)
                    .isCloseTo(used, org.assertj.core.data.Offset.offset(1e-6 * (1 + used))));
            lifts += one.stages().isEmpty() ? 0 : 1;
        }
        System.out.println(lifts + " lifts seen in a mirror");
        assertThat(lifts).isGreaterThan(100);
    }

    private static Map<Limit.Kind, Double> governing(LiftPlan plan) {
        Map<Limit.Kind, Double> worst = new TreeMap<>();
        plan.stages()
                .forEach(s -> s.governing().forEach(g -> worst.merge(g.limit().kind(), g.used(), Math::max)));
        return worst;
    }

    @Test
    void stricterLimitsNeverLowerTheBound() {
        int compared = 0;
        for (long seed = 1; seed <= 100; seed++) {
            RandomLifts.Lift lift = RandomLifts.of(seed);
            LiftLimits l = lift.request().limits();
            LiftLimits[] stricter = {
                new LiftLimits(
                        l.perTurn(),
                        l.perStage() / 2,
                        l.perDay(),
                        l.total(),
                        l.hold(),
                        l.slope(),
                        l.ratios(),
                        l.mayLeave()),
                new LiftLimits(
                        l.perTurn(),
                        l.perStage(),
                        l.perStage() / 3,
                        l.total(),
                        l.hold(),
                        l.slope(),
                        l.ratios(),
                        l.mayLeave()),
                new LiftLimits(
                        Lifts.INCH / 32,
                        l.perStage(),
                        l.perDay(),
                        l.total(),
                        l.hold(),
                        l.slope(),
                        l.ratios(),
                        l.mayLeave())
            };
            LiftPlan loose = Lifter.plan(lift.plan(), lift.request());
            for (LiftLimits strict : stricter) {
                LiftPlan tight = Lifter.plan(lift.plan(), lift.with(strict).request());
                assertThat(tight.count().least())
                        .isGreaterThanOrEqualTo(loose.count().least());
                if (made(loose) && made(tight)) {
                    assertThat(tight.stages().size())
                            .isGreaterThanOrEqualTo(loose.stages().size());
                    assertThat(tight.stages().size())
                            .isGreaterThanOrEqualTo(tight.count().least());
                    compared++;
                }
            }
        }
        System.out.println(compared + " pairs of plans compared");
        assertThat(compared).isGreaterThan(100);
    }
}
