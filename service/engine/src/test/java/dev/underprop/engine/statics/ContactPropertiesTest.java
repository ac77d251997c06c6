package dev.underprop.engine.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every layout, whatever it is. */
class ContactPropertiesTest {

    private static final double SAME = 1e-7;

    /** Layouts that settle in every case, so that there are forces to look at. */
    static LongStream settled() {
        return seeds(RandomLayouts::of, 50_000).limit(60);
    }

    static LongStream snug() {
        return seeds(RandomLayouts::snug, 60_000).limit(40);
    }

    private static LongStream seeds(LongFunction<Layout> make, long from) {
        return LongStream.iterate(from, seed -> seed + 1).filter(seed -> {
            Layout layout = make.apply(seed);
            ContactSolver solver = layout.solver();
            return layout.cases().stream().allMatch(c -> solver.solve(c).outcome() == Solution.Outcome.SETTLED);
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("settled")
    void every_member_is_in_equilibrium(long seed) {
        Layout layout = RandomLayouts.of(seed);
        ContactSolver solver = layout.solver();
        for (LoadCase loadCase : layout.cases()) {
            double[] forces = forces(layout, solver.solve(loadCase));
            double most = Math.max(layout.total(loadCase), largest(forces));
            assertThat(new EnergyProblem(layout, loadCase).unbalanced(forces)).isLessThan(1e-9 * most);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("settled")
    void contacts_press_or_are_open_and_never_both(long seed) {
        Layout layout = RandomLayouts.of(seed);
        ContactSolver solver = layout.solver();
        for (LoadCase loadCase : layout.cases()) {
            Solution solution = solver.solve(loadCase);
            for (int c = 0; c < layout.frame().contacts().size(); c++) {
                assertThat(solution.force(c) * solution.opening(c)).isZero();
                assertThat(solution.opening(c)).isGreaterThan(-1e-9);
                if (!layout.frame().contacts().get(c).fastened()) {
                    assertThat(solution.force(c)).isGreaterThan(-1e-8 * layout.total(loadCase));
                }
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("settled")
    void no_other_forces_in_balance_store_less_energy(long seed) {
        Layout layout = RandomLayouts.of(seed);
        Random random = new Random(seed);
        ContactSolver solver = layout.solver();
        int others = 0;
        for (LoadCase loadCase : layout.cases()) {
            EnergyProblem problem = new EnergyProblem(layout, loadCase);
            double[] least = forces(layout, solver.solve(loadCase));
            for (int round = 0; round < 5; round++) {
                Solution other = layout.with(c -> softened(c, random)).solver().solve(loadCase);
                if (other.outcome() == Solution.Outcome.SETTLED) {
                    others++;
                    for (double part : new double[] {1e-3, 0.1, 1}) {
                        double[] moved = towards(least, forces(layout, other), part);
                        double energy = problem.energy(least);
                        assertThat(problem.energy(moved)).isGreaterThanOrEqualTo(energy - 1e-9 * Math.abs(energy));
                    }
                }
            }
        }
        assertThat(others).isPositive();
    }

    private static Contact softened(Contact contact, Random random) {
        double gap = contact.gap() + 0.004 * random.nextDouble();
        double stiffness = Math.pow(10, 5 + 3 * random.nextDouble());
        if (contact instanceof Contact.OnGround seat) {
            return new Contact.OnGround(seat.joist(), seat.y(), stiffness, gap, seat.fastened());
        } else if (contact instanceof Contact.OnProp prop) {
            return new Contact.OnProp(prop.carrier(), prop.x(), stiffness, gap, prop.fastened());
        }
        Contact.OnCarrier seat = (Contact.OnCarrier) contact;
        return new Contact.OnCarrier(seat.joist(), seat.carrier(), gap, seat.fastened());
    }

    private static double[] towards(double[] from, double[] to, double part) {
        double[] moved = from.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += part * (to[i] - from[i]);
        }
        return moved;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("settled")
    void a_mirror_changes_nothing(long seed) {
        Layout layout = RandomLayouts.of(seed);
        assertSame(layout, layout.solver(), Mirror.alongX(layout).solver());
        assertSame(layout, layout.solver(), Mirror.alongY(layout).solver());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("settled")
    void members_and_contacts_may_be_listed_in_any_order(long seed) {
        Layout layout = RandomLayouts.of(seed);
        List<Contact> reversed = new ArrayList<>(layout.frame().contacts());
        Collections.reverse(reversed);
        Frame frame = new Frame(layout.frame().joists(), layout.frame().carriers(), reversed);
        ContactSolver solver = layout.solver();
        ContactSolver other = new ContactSolver(frame, layout.units());
        for (LoadCase loadCase : layout.cases()) {
            double[] forces = forces(layout, solver.solve(loadCase));
            double[] back = forces(layout, other.solve(loadCase));
            for (int c = 0; c < forces.length; c++) {
                assertThat(back[forces.length - 1 - c])
                        .isCloseTo(forces[c], within(tolerance(layout, loadCase, forces)));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("snug")
    void without_gap_or_lift_forces_grow_as_the_loads(long seed) {
        Layout layout = RandomLayouts.snug(seed);
        ContactSolver solver = layout.solver();
        for (LoadCase loadCase : layout.cases()) {
            double[] once = forces(layout, solver.solve(loadCase));
            for (double k : new double[] {1e-3, 0.5, 7, 1000}) {
                double[] grown = forces(layout, solver.solve(times(loadCase, k)));
                for (int c = 0; c < once.length; c++) {
                    assertThat(grown[c] / k).isCloseTo(once[c], within(tolerance(layout, loadCase, once)));
                }
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("settled")
    void what_was_solved_before_changes_nothing(long seed) {
        Layout layout = RandomLayouts.of(seed);
        Random random = new Random(seed);
        ContactSolver used = layout.solver();
        for (int round = 0; round < 20; round++) {
            LoadCase base = layout.cases().get(random.nextInt(layout.cases().size()));
            LoadCase loadCase = times(base, 0.3 + 2 * random.nextDouble());
            Solution solution = used.solve(loadCase);
            Solution fresh = layout.solver().solve(loadCase);
            assertThat(solution.outcome()).isEqualTo(fresh.outcome());
            if (solution.outcome() == Solution.Outcome.SETTLED) {
                assertSame(layout, loadCase, solution, fresh);
            }
        }
    }

    private static LoadCase times(LoadCase loadCase, double k) {
        double[] factors = loadCase.factors().clone();
        for (int i = 0; i < factors.length; i++) {
            factors[i] *= k;
        }
        return new LoadCase(loadCase.units(), factors);
    }

    private static void assertSame(Layout layout, ContactSolver one, ContactSolver other) {
        for (LoadCase loadCase : layout.cases()) {
            assertSame(layout, loadCase, one.solve(loadCase), other.solve(loadCase));
        }
    }

    private static void assertSame(Layout layout, LoadCase loadCase, Solution one, Solution other) {
        assertThat(other.outcome()).isEqualTo(one.outcome());
        double[] forces = forces(layout, one);
        for (int c = 0; c < forces.length; c++) {
            assertThat(other.force(c)).isCloseTo(forces[c], within(tolerance(layout, loadCase, forces)));
            assertThat(other.opening(c)).isCloseTo(one.opening(c), within(1e-8));
            assertThat(other.movement(c)).isCloseTo(one.movement(c), within(1e-8));
        }
    }

    private static double tolerance(Layout layout, LoadCase loadCase, double[] forces) {
        return SAME * Math.max(layout.total(loadCase), largest(forces));
    }

    private static double largest(double[] forces) {
        double largest = 0;
        for (double force : forces) {
            largest = Math.max(largest, Math.abs(force));
        }
        return largest;
    }

    private static double[] forces(Layout layout, Solution solution) {
        return Layout.forces(solution, layout.frame().contacts().size());
    }
}
