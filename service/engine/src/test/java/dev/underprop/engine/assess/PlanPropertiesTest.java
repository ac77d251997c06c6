package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What must hold between the answers for two plans that differ in one way. */
class PlanPropertiesTest {

    /** Each has about fifty settings of some hundred cases. */
    private static final int PLANS = 16;

    @Test
    void theSamePlanGivesTheSameAnswer() {
        for (long seed = 1; seed <= PLANS; seed++) {
            assertThat(Assessor.assess(RandomPlans.of(seed)))
                    .as("seed %d", seed)
                    .isEqualTo(Assessor.assess(RandomPlans.of(seed)));
        }
    }

    @Test
    void aMirroredPlanGivesTheMirroredAnswer() {
        int stood = 0;
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan plan = RandomPlans.of(seed);
            Assessment one = Assessor.assess(plan);
            Assessment other = Assessor.assess(Changed.mirrored(plan));
            assertThat(other.verdict()).as("seed %d", seed).isEqualTo(one.verdict());
            assertSame(seed, numbers(one, 1), numbers(other, 1));
            stood += one.situations().stream().allMatch(SituationResult::stands) ? 1 : 0;
        }
        assertThat(stood).isPositive();
    }

    @Test
    void loadsTimesKGiveForcesTimesK() {
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan plan = Plans.exact(RandomPlans.of(seed));
            double k = 0.25 + seed % 7;
            Assessment one = Assessor.assess(plan);
            Assessment other = Assessor.assess(Changed.scaled(plan, k));
            assertSame(seed, forces(one, k), forces(other, 1));
        }
    }

    private static void assertSame(long seed, Map<String, Double> wanted, Map<String, Double> actual) {
        assertThat(actual.keySet()).as("seed %d", seed).isEqualTo(wanted.keySet());
        wanted.forEach((key, value) -> {
            double size = Math.max(1e-3, Math.abs(value));
            assertThat(actual.get(key)).as("seed %d %s", seed, key).isCloseTo(value, within(1e-6 * size));
        });
    }

    /** Forces of all contacts and members of every situation that stands. */
    private static Map<String, Double> forces(Assessment assessment, double k) {
        Map<String, Double> map = new TreeMap<>();
        for (SituationResult situation : assessment.situations()) {
            String at = situation.name() + ", ";
            situation.contacts().forEach(c -> {
                map.put(at + c.name() + " greatest", k * c.greatest().value());
                map.put(at + c.name() + " least", k * c.least().value());
            });
            situation.members().forEach(m -> {
                map.put(at + m.name() + " sagging", k * m.sagging().value());
                map.put(at + m.name() + " hogging", k * m.hogging().value());
                map.put(at + m.name() + " shear", k * m.shear().value());
            });
        }
        return map;
    }

    /** Forces, and ratios of all checks that have one. */
    private static Map<String, Double> numbers(Assessment assessment, double k) {
        Map<String, Double> map = forces(assessment, k);
        for (SituationResult situation : assessment.situations()) {
            for (CheckResult r : situation.checks()) {
                String key = situation.name() + ", " + r.id().id() + " " + r.place();
                if (Double.isFinite(r.ratio())) {
                    map.put(key, r.ratio());
                }
                map.put(key + " verdict", (double) r.verdict().ordinal());
            }
        }
        return map;
    }

    @Test
    void oneMoreSituationNeverMakesACheckBetter() {
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan plan = RandomPlans.of(seed);
            JobPlan fewer = Changed.situations(plan, plan.situations().subList(0, 1));
            List<Situation> more = new ArrayList<>(plan.situations());
            more.add(new Situation("raised", List.of(), List.of(new Situation.PostLift(0, 0, 0.003))));
            Assessment least = Assessor.assess(fewer);
            Assessment between = Assessor.assess(plan);
            Assessment most = Assessor.assess(Changed.situations(plan, more));
            assertNoBetter(seed, least, between);
            assertNoBetter(seed, between, most);
        }
    }

    /**
     * Of more live load this cannot be said: a joist that lifts off takes its load from the beam below. But dead load alone
     * stays among the cases. A situation that no longer stands has no ratios; its verdict is the worst there is.
     */
    @Test
    void liveLoadNeverMakesACheckBetter() {
        int compared = 0;
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan plan = RandomPlans.of(seed);
            for (Situation situation : plan.situations()) {
                JobPlan one = Changed.situations(plan, List.of(situation));
                compared += assertNoBetter(seed, Assessor.assess(Changed.live(one, 0)), Assessor.assess(one));
            }
        }
        assertThat(compared).isGreaterThan(500);
    }

    /** From the first pattern to all of them, a random number at a time. */
    @Test
    void oneMorePatternNeverMakesACheckBetter() {
        int compared = 0;
        int raised = 0;
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan plan = RandomPlans.of(seed);
            Random random = new Random(seed);
            Assessment before = Assessor.assess(new Structure(plan), 1);
            int most = Assessor.assess(plan).counts().patterns();
            for (int patterns = 1 + random.nextInt(4); patterns < most; patterns += 1 + random.nextInt(most / 3)) {
                Assessment more = Assessor.assess(new Structure(plan), patterns);
                compared += assertNoBetter(seed, before, more);
                raised += worstRatio(more) > worstRatio(before) ? 1 : 0;
                before = more;
            }
            compared += assertNoBetter(seed, before, Assessor.assess(plan));
        }
        assertThat(compared).isGreaterThan(500);
        assertThat(raised).as("steps that raised the worst ratio").isPositive();
    }

    private static double worstRatio(Assessment assessment) {
        return assessment.checks().stream()
                .mapToDouble(CheckResult::ratio)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
    }

    @Test
    void oneMoreBoundNeverMakesACheckBetter() {
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan rigid = Plans.exact(Changed.stiffness(RandomPlans.of(seed), new Post.Rigid()));
            JobPlan soft = Changed.stiffness(rigid, Post.Stiffness.exactly(1e7));
            JobPlan both = Changed.stiffness(rigid, new Post.Between(1e7, 6e7));
            JobPlan fitted = Plans.with(both, Circumstances.UNSTATED);
            Assessment withoutGive = Assessor.assess(rigid);
            Assessment softToo = Assessor.assess(soft);
            Assessment stiffToo = Assessor.assess(both);
            assertNoBetter(seed, withoutGive, softToo);
            assertNoBetter(seed, softToo, stiffToo);
            assertNoBetter(seed, stiffToo, Assessor.assess(fitted));
        }
    }

    /** Softness moves load between posts, but no post is ever judged for less than it carries on rigid ones. */
    @Test
    void softnessNeverLowersAPostsDemand() {
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan rigid = Plans.exact(Changed.stiffness(RandomPlans.of(seed), new Post.Rigid()));
            Assessment hard = Assessor.assess(rigid);
            Assessment soft = Assessor.assess(Changed.stiffness(rigid, Post.Stiffness.exactly(3e6)));
            for (int s = 0; s < hard.situations().size(); s++) {
                List<SituationResult.PostResult> before =
                        hard.situations().get(s).posts();
                List<SituationResult.PostResult> after =
                        soft.situations().get(s).posts();
                for (int p = 0; p < Math.min(before.size(), after.size()); p++) {
                    assertThat(after.get(p).greatest().value())
                            .as("seed %d %s", seed, before.get(p).name())
                            .isGreaterThanOrEqualTo(before.get(p).greatest().value() * (1 - 1e-9));
                }
            }
        }
    }

    /** Snow brings combinations of its own and leaves those without it as they are. */
    @Test
    void oneMoreKindOfLoadNeverMakesACheckBetter() {
        for (long seed = 1; seed <= PLANS; seed++) {
            JobPlan plan = RandomPlans.of(seed);
            boolean snowless = plan.floor().loads().stream()
                    .allMatch(load -> load.intensity().snow() == 0);
            if (snowless) {
                assertNoBetter(seed, Assessor.assess(plan), Assessor.assess(Changed.snow(plan, 0.5)));
            }
        }
    }

    /** Compares checks that were made in both; where a structure no longer stands they are not made at all. */
    private static int assertNoBetter(long seed, Assessment before, Assessment after) {
        int compared = 0;
        assertThat(after.verdict()).as("seed %d", seed).isGreaterThanOrEqualTo(before.verdict());
        Map<String, CheckResult> there = new TreeMap<>();
        after.checks().forEach(r -> there.put(r.id() + " " + r.place(), r));
        for (CheckResult one : before.checks()) {
            CheckResult other = there.get(one.id() + " " + one.place());
            if (other != null && !Double.isNaN(one.ratio()) && !Double.isNaN(other.ratio())) {
                assertThat(other.ratio())
                        .as("seed %d %s %s", seed, one.id(), one.place())
                        .isGreaterThanOrEqualTo(one.ratio() * (1 - 1e-9) - 1e-12);
                compared++;
            }
            if (other != null) {
                assertThat(other.verdict()).as("seed %d %s", seed, one.id()).isGreaterThanOrEqualTo(one.verdict());
            }
        }
        return compared;
    }
}
