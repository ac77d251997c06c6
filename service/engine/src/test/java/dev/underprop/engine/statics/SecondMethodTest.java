package dev.underprop.engine.statics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The contact solve against an independent energy method, on random layouts. */
class SecondMethodTest {

    private static final int LAYOUTS = 800;

    @Test
    void agrees_with_the_energy_method_on_random_layouts() {
        Tally tally = new Tally();
        for (long seed = 1; seed <= LAYOUTS; seed++) {
            tally.compare(RandomLayouts.of(seed));
        }
        System.out.println(tally.line());
        assertThat(tally.faults).isEmpty();
        assertThat(tally.settledLayouts).isGreaterThanOrEqualTo(500);
        assertThat(tally.mechanisms).isPositive();
    }

    /** What was seen over all layouts. */
    private static final class Tally {
        private final List<String> faults = new ArrayList<>();
        private int settledLayouts;
        private int settled;
        private int mechanisms;
        private int changes;
        private int mostChanges;
        private int repairs;
        private int oneByOne;
        private double worstForce;
        private double worstMovement;

        void compare(Layout layout) {
            ContactSolver solver = layout.solver();
            boolean any = false;
            for (int i = 0; i < layout.cases().size(); i++) {
                LoadCase loadCase = layout.cases().get(i);
                String where = "seed " + layout.seed() + " case " + i + ": ";
                Reference.Answer answer;
                try {
                    answer = layout.reference(loadCase);
                } catch (AssertionError e) {
                    faults.add(where + e.getMessage());
                    continue;
                }
                Solution solution = solver.solve(loadCase);
                boolean held = answer.held() && !layout.adrift(answer);
                Solution.Outcome due = held ? Solution.Outcome.SETTLED : Solution.Outcome.MECHANISM;
                if (solution.outcome() != due) {
                    faults.add(where + solution.outcome() + " but should be " + due);
                } else if (held) {
                    any = true;
                    compare(where, layout.total(loadCase), solution, answer);
                } else {
                    mechanisms++;
                }
            }
            settledLayouts += any ? 1 : 0;
            oneByOne += solver.oneByOne();
        }

        private void compare(String where, double total, Solution solution, Reference.Answer answer) {
            settled++;
            changes += solution.changes();
            mostChanges = Math.max(mostChanges, solution.changes());
            repairs += answer.repairs() > 0 ? 1 : 0;
            double force = 0;
            double movement = 0;
            double size = 0;
            for (int c = 0; c < answer.force().length; c++) {
                force = Math.max(force, Math.abs(answer.force()[c] - solution.force(c)) / total);
                movement = Math.max(movement, Math.abs(answer.opening()[c] - solution.opening(c)));
                movement = Math.max(movement, Math.abs(answer.movement()[c] - solution.movement(c)));
                size = Math.max(size, Math.abs(answer.movement()[c]));
            }
            worstForce = Math.max(worstForce, force);
            worstMovement = Math.max(worstMovement, movement / size);
            if (force > 1e-6 || movement > 1e-6 * size) {
                faults.add(String.format(
                        Locale.ROOT, "%sforces differ by %.2e, movements by %.2e", where, force, movement / size));
            }
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "second method: %d layouts with %d settled cases, %d mechanisms; worst difference %.1e of the load, "
                            + "%.1e of the movement; %d changes, at most %d; %d cases one by one; %d answers of the convex solver refined",
                    settledLayouts,
                    settled,
                    mechanisms,
                    worstForce,
                    worstMovement,
                    changes,
                    mostChanges,
                    oneByOne,
                    repairs);
        }
    }
}
