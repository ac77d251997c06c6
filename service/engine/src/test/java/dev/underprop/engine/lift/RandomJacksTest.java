package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lifts by jacks drawn by seed, every turn of which is solved again with the jack as one more post of the plan. */
class RandomJacksTest {

    private static final int FLOORS = 60;

    /** Parts of a limit that differ by less come from where either search for the jack's raise ends. */
    private static final double CLOSE = 1e-5;

    private final Map<Limit.Kind, Double> most = new EnumMap<>(Limit.Kind.class);
    private int up;
    private int down;
    private int states;

    /** A plan, and what is asked of it. */
    private record Drawn(JobPlan plan, LiftRequest request) {}

    @Test
    void whileAJackHoldsNoLimitIsBrokenAndNoneIsToldToBeLessUsed() {
        Map<LiftPlan.Outcome, Integer> outcomes = new EnumMap<>(LiftPlan.Outcome.class);
        for (long seed = 1; seed <= FLOORS; seed++) {
            Drawn drawn = draw(seed);
            LiftPlan plan = Lifter.plan(drawn.plan(), drawn.request());
            outcomes.merge(plan.outcome(), 1, Integer::sum);
            double[] raised = new double[drawn.request().screws().size()];
            String name = "seed " + seed;
            up += follow(name + ", up", drawn, plan, plan.stages(), raised, new double[0]);
            if (plan.release() instanceof LiftPlan.LetDown release) {
                down += follow(name + ", down", drawn, plan, release.stages(), raised, raised.clone());
            }
        }
        System.out.println(FLOORS + " floors by jacks, " + up + " turns up and " + down + " down, " + states
                + " states solved again; outcomes " + outcomes + "; most used " + most);
        assertThat(up).isGreaterThan(200);
        assertThat(down).isGreaterThanOrEqualTo(20);
        assertThat(most.get(Limit.Kind.POST)).isGreaterThan(0.95);
        assertThat(most.get(Limit.Kind.BEAM)).isGreaterThan(0.95);
    }

    /** Solves every turn again, and goes on with the screws. */
    private int follow(
            String name, Drawn drawn, LiftPlan plan, List<LiftPlan.Stage> stages, double[] raised, double[] built) {
        int turns = 0;
        for (LiftPlan.Stage stage : stages) {
            for (LiftPlan.Turn turn : stage.turns()) {
                double[] before = raised.clone();
                raised[turn.post()] += turn.raise();
                LiftRequest.Jack jack = drawn.request().jacks().stream()
                        .filter(j -> j.post() == turn.post())
                        .findFirst()
                        .orElseThrow();
                HeldByJack again = new HeldByJack(drawn.plan(), jack, before, raised, built);
                look(
                        name + ", turn " + ++turns,
                        plan,
                        turn,
                        again,
                        drawn.request().limits().slope().value());
                states += again.solved();
            }
        }
        return turns;
    }

    private void look(String name, LiftPlan plan, LiftPlan.Turn turn, HeldByJack again, double slope) {
        LiftPlan.JackUse told = turn.jack();
        again.go(ACME.step());
        assertThat(again.load().least()).as(name).isCloseTo(told.load().least(), within(0.05));
        assertThat(again.load().greatest()).as(name).isCloseTo(told.load().greatest(), within(0.05));
        assertThat(again.lift().least()).as(name).isCloseTo(told.lift().least(), within(1e-7));
        assertThat(again.lift().greatest()).as(name).isCloseTo(told.lift().greatest(), within(1e-7));
        again.used().forEach((kind, value) -> {
            // A change of slope is told as such, and its limit is one for all.
            double used = kind == Limit.Kind.SLOPE ? value / slope : value;
            double begun = again.begun().getOrDefault(kind, 0.0) / (kind == Limit.Kind.SLOPE ? slope : 1);
            double all = turn.governing().stream()
                    .filter(r -> r.limit().kind() == kind)
                    .mapToDouble(LiftPlan.Running::used)
                    .max()
                    .orElseThrow();
            double start = plan.broken().stream()
                    .filter(r -> r.limit().kind() == kind)
                    .mapToDouble(LiftPlan.Running::used)
                    .max()
                    .orElse(0);
            assertThat(used).as("%s, %s", name, kind).isLessThanOrEqualTo(Math.max(all, begun) + CLOSE);
            assertThat(used).as("%s, %s", name, kind).isLessThanOrEqualTo(Math.max(1, start) + CLOSE);
            most.merge(kind, used, Math::max);
        });
    }

    private static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private static Drawn draw(long seed) {
        Random random = new Random(seed);
        int count = 2 + random.nextInt(4);
        boolean letDown = random.nextInt(3) == 0;
        Post.Stiffness stiffness = new Post.Rigid();
        double capacity = between(random, 1600, 5000) * POUND;
        JobPlan row = Lifts.row(count, stiffness, capacity, between(random, 1.5, 4) * FOOT);
        JobPlan loaded = Lifts.loaded(
                random.nextInt(4) > 0 ? Lifts.fastened(row) : row,
                between(random, 8, 16),
                random.nextInt(3) > 0 ? between(random, 5, 30) : 0,
                between(random, 40, 120));
        JobPlan plan = light(loaded, random.nextBoolean() ? 3 : 2);
        double[] raise = new double[count];
        for (int p = 0; p < count; p++) {
            raise[p] = random.nextInt(4) == 0 ? 0 : between(random, 0.5, 4) * INCH / 16;
        }
        raise[random.nextInt(count)] = INCH / 8;
        List<LiftRequest.Jack> jacks = new ArrayList<>();
        for (int p = 0; p < count; p++) {
            if (letDown || raise[p] > 0) {
                jacks.add(jack(random, plan, p, 1.2 * capacity * between(random, 0.8, 2), stiffness));
            }
        }
        LiftLimits limits = Lifts.limits(random.nextBoolean() ? INCH / 8 : INCH / 16, between(random, 0.004, 0.02));
        LiftRequest asked = Lifts.request(plan, limits, ACME, raise);
        return new Drawn(
                plan,
                new LiftRequest(
                        Lifts.NEAR_OUT,
                        asked.survey(),
                        new LiftRequest.Target(asked.target().plane(), !letDown),
                        limits,
                        asked.screws(),
                        LiftRequest.Order.values()[random.nextInt(3)],
                        asked.crept(),
                        asked.progress(),
                        letDown ? new LiftRequest.After(List.of(0)) : asked.after(),
                        jacks));
    }

    /** Its pad clear of those of the posts. */
    private static LiftRequest.Jack jack(
            Random random, JobPlan plan, int post, double capacity, Post.Stiffness stiffness) {
        List<Post> posts = plan.shores().get(0).posts();
        boolean right = post == 0 || post + 1 < posts.size() && random.nextBoolean();
        // Two jacks at one place would be one.
        double off = (right ? between(random, 21.5, 23.5) : between(random, 22, 24)) * INCH;
        Pad pad = new Pad("small", Pad.Kind.CONCRETE, 18 * INCH, 36 * INCH, 10 * INCH, new Pad.Known(0, true));
        double x = posts.get(post).x() + (right ? off : -off);
        return new LiftRequest.Jack(
                post,
                new Post("jack " + (post + 1), x, 6.5 * FOOT, stiffness, 0, 0, Lifts.type(capacity), pad),
                4 * INCH);
    }

    /** A beam almost without weight lies as straight on posts alone as on posts and jack when the floor is found. */
    private static JobPlan light(JobPlan plan, int plies) {
        return Lifts.onBeam(plan, Lifts.weightless(Lifts.member(plies, 9.25)));
    }
}
