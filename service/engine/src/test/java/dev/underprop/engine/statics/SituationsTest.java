package dev.underprop.engine.statics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** One solver for all situations of a floor, against the energy method and against a solver made for each alone. */
class SituationsTest {

    private static final int LAYOUTS = 600;

    /** Of the twelve cases of a layout, four are compared, so that the test takes seconds; a longer run took all. */
    private static final int PART = 3;

    @Test
    void agrees_with_the_energy_method_in_every_situation() {
        Tally tally = new Tally();
        for (long seed = 1; seed <= LAYOUTS; seed++) {
            tally.compare(RandomSituations.of(seed));
        }
        System.out.println(tally.line());
        assertThat(tally.faults).isEmpty();
        assertThat(tally.settled + tally.mechanisms).isEqualTo(LAYOUTS * 4 * 3 / PART);
        assertThat(tally.layouts).isGreaterThanOrEqualTo(500);
        assertThat(tally.pulling).isPositive();
        assertThat(tally.away).isPositive();
    }

    private static final class Tally {
        private final List<String> faults = new ArrayList<>();
        private int layouts;
        private int settled;
        private int mechanisms;
        private int pulling;
        private int away;
        private int shifts;
        private int shiftsHeld;
        private double worstForce;
        private double worstMovement;
        private double worstAlone;

        void compare(List<Situation> situations) {
            Layout layout = situations.get(0).layout();
            ContactSolver shared = layout.solver();
            int before = settled;
            for (int s = 0; s < situations.size(); s++) {
                ContactSolver solver = shared.withProps(situations.get(s).stiffness());
                for (int i = 0; i < layout.cases().size(); i++) {
                    if ((layout.seed() + s + i) % PART == 0) {
                        String where = "seed " + layout.seed() + " situation " + s + " case " + i + ": ";
                        compare(where, situations.get(s), layout.cases().get(i), solver);
                    }
                }
            }
            layouts += settled > before ? 1 : 0;
        }

        private void compare(String where, Situation situation, LoadCase loadCase, ContactSolver solver) {
            Situation.Plain plain = situation.plain(loadCase);
            away += plain.layout().frame().carriers().size()
                            < situation.layout().frame().carriers().size()
                    ? 1
                    : 0;
            Reference.Answer answer;
            try {
                answer = plain.layout().reference(loadCase);
            } catch (AssertionError e) {
                faults.add(where + e.getMessage());
                return;
            }
            Solution solution = solver.solve(loadCase, situation.rules());
            boolean held = answer.held() && !plain.layout().adrift(answer);
            Solution.Outcome due = held ? Solution.Outcome.SETTLED : Solution.Outcome.MECHANISM;
            if (solution.outcome() != due) {
                faults.add(where + solution.outcome() + " but should be " + due);
            } else if (held) {
                settled++;
                compare(where, plain, loadCase, solution, answer);
                shift(where, loadCase, solution, solver);
            } else {
                mechanisms++;
            }
        }

        private void compare(
                String where, Situation.Plain plain, LoadCase loadCase, Solution solution, Reference.Answer answer) {
            Solution alone = plain.layout().solver().solve(loadCase);
            double total = plain.layout().total(loadCase);
            double force = 0;
            double movement = 0;
            double size = 0;
            double apart = 0;
            boolean pulls = false;
            for (int i = 0; i < plain.contacts().length; i++) {
                int c = plain.contacts()[i];
                force = Math.max(force, Math.abs(answer.force()[i] - solution.force(c)) / total);
                movement = Math.max(movement, Math.abs(answer.opening()[i] - solution.opening(c)));
                movement = Math.max(movement, Math.abs(answer.movement()[i] - solution.movement(c)));
                size = Math.max(size, Math.abs(answer.movement()[i]));
                apart = Math.max(apart, Math.abs(alone.force(i) - solution.force(c)) / total);
                pulls |= solution.force(c) < -0.01 * total;
            }
            pulling += pulls ? 1 : 0;
            worstForce = Math.max(worstForce, force);
            worstMovement = Math.max(worstMovement, movement / size);
            worstAlone = Math.max(worstAlone, apart);
            if (force > 1e-6 || movement > 1e-6 * size || apart > 1e-9) {
                faults.add(String.format(
                        Locale.ROOT,
                        "%sforces differ by %.2e, movements by %.2e, from the frame alone by %.2e",
                        where,
                        force,
                        movement / size,
                        apart));
            }
        }

        /** The post turned by its tolerance on top: what holds must be what a search from nothing finds. */
        private void shift(String where, LoadCase loadCase, Solution solution, ContactSolver solver) {
            Solution shifted = solver.shifted(solution, 5, 0.5, solution.rules());
            Solution fresh = solver.solve(loadCase.with(5, 0.5), solution.rules());
            shifts++;
            shiftsHeld += shifted.changes() == 0 ? 1 : 0;
            double most = 0;
            double apart = 0;
            for (int c = 0; fresh.outcome() == Solution.Outcome.SETTLED && c < solver.contacts(); c++) {
                most = Math.max(most, Math.abs(fresh.force(c)));
                apart = Math.max(apart, Math.abs(fresh.force(c) - shifted.force(c)));
            }
            if (shifted.outcome() != fresh.outcome() || apart > 1e-7 * most) {
                faults.add(where + "shifted is " + shifted.outcome() + " and " + apart + " N off " + fresh.outcome());
            }
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "situations: %d layouts with %d settled cases, %d mechanisms; %d with fastenings pulling, %d with a carrier away; "
                            + "worst difference %.1e of the load, %.1e of the movement, %.1e from a frame of its own; "
                            + "%d of %d shifts hold",
                    layouts,
                    settled,
                    mechanisms,
                    pulling,
                    away,
                    worstForce,
                    worstMovement,
                    worstAlone,
                    shiftsHeld,
                    shifts);
        }
    }
}
