package dev.underprop.engine.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One solver by several rules, with units that change gaps, on props of several stiffnesses. */
class RulesTest {

    private static final double RIGID = Double.POSITIVE_INFINITY;
    private static final double EI = 3e5;
    private static final double L = 3;
    private static final double W = 2000;
    private static final LoadCase LOADED = new LoadCase(new int[] {0}, new double[] {1});

    /** A carrier of two equal spans: props 0, 1, 2 at its ends and middle. */
    private static ContactSolver twoSpans(double middle, double gap, UnitLoad... more) {
        List<UnitLoad> units = new ArrayList<>();
        units.add(new UnitLoad("line", List.of(new UnitLoad.Uniform(0, 0, 2 * L, W))));
        units.addAll(List.of(more));
        return new ContactSolver(
                new Frame(
                        List.of(),
                        List.of(new Frame.Carrier(0, 0, 2 * L, EI)),
                        List.of(
                                new Contact.OnProp(0, 0, RIGID, 0, false),
                                new Contact.OnProp(0, L, middle, gap, false),
                                new Contact.OnProp(0, 2 * L, RIGID, 0, false))),
                units);
    }

    private static UnitLoad offset(int contact, double size) {
        return new UnitLoad("offset", List.of(), List.of(new UnitLoad.Offset(contact, size)));
    }

    private static BitSet bits(int... set) {
        BitSet bits = new BitSet();
        Arrays.stream(set).forEach(bits::set);
        return bits;
    }

    private static Rules without(int... absent) {
        return new Rules(bits(absent), new BitSet());
    }

    private static Diagram scanned(ContactSolver solver, Solution solution, int member) {
        double[] row = new double[solver.rowSize()];
        solution.writeRow(row);
        Diagram diagram = solver.diagram(member);
        diagram.view(row);
        diagram.scan();
        return diagram;
    }

    @Test
    void rules_are_values_and_keep_copies() {
        BitSet absent = bits(1);
        Rules rules = new Rules(absent, bits(2));
        absent.set(5);
        rules.absent().set(6);
        rules.fastened().set(7);
        assertThat(rules).isEqualTo(new Rules(bits(1), bits(2))).hasSameHashCodeAs(new Rules(bits(1), bits(2)));
        assertThat(rules).isNotEqualTo(new Rules(bits(1), bits(3)));
    }

    @Test
    void a_gap_under_two_spans_closes_when_the_sag_of_one_span_reaches_it() {
        double gap = 0.02;
        // 5 w (2L)^4 / 384 EI = gap, from there R = (sag - gap) / ((2L)^3 / 48 EI + 1/k).
        double touching = gap * 384 * EI / (5 * 16 * L * L * L * L);
        for (double stiffness : new double[] {RIGID, 1e6}) {
            for (boolean own : new boolean[] {true, false}) {
                ContactSolver solver = twoSpans(stiffness, own ? gap : 0, offset(1, gap));
                for (double part : new double[] {0.5, 0.999, 1.001, 1.5, 3}) {
                    LoadCase plain = new LoadCase(new int[] {0}, new double[] {part * touching / W});
                    Solution solution = solver.solve(own ? plain : plain.with(1, 1));
                    double flexibility = 8 * L * L * L / (48 * EI) + 1 / stiffness;
                    double middle = part < 1 ? 0 : (part - 1) * gap / flexibility;
                    assertThat(solution.closed(1)).isEqualTo(part > 1);
                    assertThat(solution.force(1)).isCloseTo(middle, within(1e-9 * W * L));
                    assertThat(solution.force(0)).isCloseTo(part * touching * L - middle / 2, within(1e-9 * W * L));
                    assertThat(solution.opening(1)).isCloseTo(part < 1 ? (1 - part) * gap : 0, within(1e-13));
                }
            }
        }
    }

    @Test
    void a_post_turned_up_takes_six_EI_over_L_cubed_from_its_neighbours() {
        double lift = 0.003;
        ContactSolver solver = twoSpans(RIGID, 0, offset(1, -lift));
        Solution snug = solver.solve(LOADED);
        Solution turned = solver.shifted(snug, 1, 1, snug.rules());
        assertThat(turned.changes()).isZero();
        assertThat(snug.force(1)).isCloseTo(1.25 * W * L, within(1e-8));
        assertThat(turned.force(1)).isCloseTo(1.25 * W * L + 6 * EI * lift / (L * L * L), within(1e-8));
        assertThat(turned.force(0)).isCloseTo(0.375 * W * L - 3 * EI * lift / (L * L * L), within(1e-8));
        assertThat(turned.loadCase().size()).isEqualTo(2);
        assertThat(snug.influence(1, 1)).isCloseTo(6 * EI * lift / (L * L * L), within(1e-8));
    }

    @Test
    void a_post_turned_far_up_lifts_the_beam_off_its_neighbours() {
        ContactSolver solver = twoSpans(RIGID, 0, offset(1, -0.1));
        Solution snug = solver.solve(LOADED);
        Solution held = solver.shifted(snug, 1, 1, new Rules(new BitSet(), bits(0, 2)));
        assertThat(held.changes()).isZero();
        assertThat(held.force(0)).isCloseTo(0.375 * W * L - 3 * EI * 0.1 / (L * L * L), within(1e-8));
        Solution free = solver.shifted(snug, 1, 1, snug.rules());
        assertThat(free.outcome()).isEqualTo(Solution.Outcome.MECHANISM);
    }

    @Test
    void a_lift_without_any_load_settles() {
        double lift = 0.003;
        for (boolean loaded : new boolean[] {true, false}) {
            Frame frame = new Frame(
                    List.of(),
                    List.of(new Frame.Carrier(0, 0, 4 * L, EI)),
                    List.of(
                            new Contact.OnProp(0, 0, RIGID, 0, true),
                            new Contact.OnProp(0, L, RIGID, 0, false),
                            new Contact.OnProp(0, 2 * L, RIGID, 0, true),
                            new Contact.OnProp(0, 3 * L, 1e7, 0, false),
                            new Contact.OnProp(0, 4 * L, RIGID, 0, true)));
            UnitLoad line = new UnitLoad("line", List.of(new UnitLoad.Uniform(0, 0, 4 * L, loaded ? W : 0)));
            ContactSolver solver = new ContactSolver(frame, List.of(line, offset(1, -lift), offset(3, 0.1)));
            Solution solution = solver.solve(new LoadCase(new int[] {1, 2}, new double[] {1, 1}));
            assertThat(solution.outcome()).isEqualTo(Solution.Outcome.SETTLED);
            // Two continuous spans of 2L, the first propped up in its middle: by the slope at the second support.
            assertThat(solution.closed(3)).isFalse();
            assertThat(solution.force(1)).isPositive();
            double sum = 0;
            for (int c = 0; c < 5; c++) {
                sum += solution.force(c);
            }
            assertThat(sum).isCloseTo(0, within(1e-9));
            // A force P in the middle of one of two equal spans lifts the far support by 3/32 P; here it acts upwards.
            assertThat(solution.force(4)).isCloseTo(3 * solution.force(1) / 32, within(1e-8));
        }
    }

    @Test
    void a_girder_whose_pier_is_out_spans_twice_as_far() {
        ContactSolver solver = twoSpans(RIGID, 0);
        Solution whole = solver.solve(LOADED);
        Diagram before = scanned(solver, whole, 0);
        assertThat(before.hogging()).isCloseTo(W * L * L / 8, within(1e-8));
        assertThat(before.hoggingAt()).isEqualTo(L);
        assertThat(whole.force(1)).isCloseTo(10 * W * L / 8, within(1e-8));
        Solution out = solver.solve(LOADED, without(1));
        Diagram after = scanned(solver, out, 0);
        assertThat(out.outcome()).isEqualTo(Solution.Outcome.SETTLED);
        assertThat(out.closed(1)).isFalse();
        assertThat(out.opening(1)).isCloseTo(-5 * W * 16 * L * L * L * L / (384 * EI), within(1e-12));
        assertThat(out.force(0)).isCloseTo(W * L, within(1e-8));
        assertThat(after.sagging()).isCloseTo(W * 4 * L * L / 8, within(1e-8));
        assertThat(after.saggingAt()).isCloseTo(L, within(1e-12));
        assertThat(after.hogging()).isZero();
        assertThat(out.supports(0)).hasSize(2);
        Solution tipped = solver.solve(LOADED, without(0));
        assertThat(tipped.outcome()).isEqualTo(Solution.Outcome.SETTLED);
        assertThat(solver.solve(LOADED, without(0, 1)).outcome()).isEqualTo(Solution.Outcome.MECHANISM);
        assertThat(solver.solve(LOADED).force(1)).isEqualTo(whole.force(1));
    }

    /** Joists on a girder of springs, tied down to it, and the girder to its piers: the overhang pulls through both. */
    @Test
    void tension_goes_through_a_girder_into_its_piers() {
        List<Frame.Joist> joists = new ArrayList<>();
        List<Contact> contacts = new ArrayList<>();
        List<UnitLoad.Piece> tips = new ArrayList<>();
        for (int j = 0; j < 3; j++) {
            joists.add(new Frame.Joist(j, 0, 4, EI));
            contacts.add(new Contact.OnCarrier(j, 0, 0, true));
            contacts.add(new Contact.OnGround(j, 3, RIGID, 0, false));
            tips.add(new UnitLoad.Point(j, 4, 900));
        }
        contacts.add(new Contact.OnProp(0, 0, 1e7, 0, true));
        contacts.add(new Contact.OnProp(0, 2, RIGID, 0, true));
        ContactSolver solver = new ContactSolver(
                new Frame(joists, List.of(new Frame.Carrier(1, 0, 2, EI)), contacts),
                List.of(new UnitLoad("tips", tips)));
        Solution solution = solver.solve(LOADED);
        assertThat(solution.outcome()).isEqualTo(Solution.Outcome.SETTLED);
        for (int j = 0; j < 3; j++) {
            assertThat(solution.force(2 * j)).isCloseTo(-450, within(1e-8));
            assertThat(solution.force(2 * j + 1)).isCloseTo(1350, within(1e-8));
        }
        assertThat(solution.force(6)).isCloseTo(-675, within(1e-8));
        assertThat(solution.movement(6)).isCloseTo(-675 / 1e7, within(1e-13));
        assertThat(scanned(solver, solution, 3).hogging()).isCloseTo(225, within(1e-8));
        Solution released = solver.solve(LOADED, new Rules(new BitSet(), new BitSet()));
        assertThat(released.outcome()).isEqualTo(Solution.Outcome.MECHANISM);
        Solution halfReleased = solver.solve(LOADED, new Rules(new BitSet(), bits(0, 2, 4)));
        assertThat(halfReleased.outcome()).isEqualTo(Solution.Outcome.MECHANISM);
    }

    @Test
    void a_shore_that_is_not_there_counts_for_nothing() {
        Layout layout = Floors.large();
        BitSet absent = new BitSet();
        List<Contact> rest = new ArrayList<>();
        for (int c = 0; c < layout.frame().contacts().size(); c++) {
            Contact contact = layout.frame().contacts().get(c);
            boolean second = contact instanceof Contact.OnCarrier seat && seat.carrier() == 1
                    || contact instanceof Contact.OnProp prop && prop.carrier() == 1;
            absent.set(c, second);
            if (!second) {
                rest.add(contact);
            }
        }
        List<UnitLoad> units = layout.units().stream()
                .map(u -> new UnitLoad(
                        u.name(),
                        u.pieces().stream().filter(p -> p.member() < 61).toList()))
                .toList();
        Frame alone = new Frame(
                layout.frame().joists(), List.of(layout.frame().carriers().get(0)), rest);
        ContactSolver one = layout.solver();
        ContactSolver other = new ContactSolver(alone, units);
        for (LoadCase loadCase : layout.cases()) {
            Solution a = one.solve(loadCase, new Rules(absent, new BitSet()));
            Solution b = other.solve(loadCase);
            assertThat(a.outcome()).isEqualTo(Solution.Outcome.SETTLED);
            int next = 0;
            for (int c = 0; c < layout.frame().contacts().size(); c++) {
                if (absent.get(c)) {
                    assertThat(a.force(c)).isZero();
                } else {
                    assertThat(a.force(c)).isCloseTo(b.force(next), within(1e-12 * layout.total(loadCase)));
                    assertThat(a.opening(c)).isCloseTo(b.opening(next++), within(1e-13));
                }
            }
            assertThat(scanned(one, a, 61).sagging()).isZero();
            assertThat(scanned(one, a, 61).residual()).isZero();
            assertThat(a.supports(61)).isEmpty();
        }
    }

    @Test
    void props_of_other_stiffness_share_groups_made_before_and_after() {
        ContactSolver first =
                twoSpans(RIGID, 0, offset(1, 0.001), new UnitLoad("point", List.of(new UnitLoad.Point(0, 1, 500))));
        int before = first.addGroup(new int[] {0, 1, 2});
        ContactSolver soft = first.withProps(new double[] {Double.NaN, 1e6, Double.NaN});
        int after = soft.addGroup(new int[] {0, 2});
        for (int group : new int[] {before, after}) {
            LoadCase loadCase = new LoadCase(new int[] {group}, new double[] {1.5});
            for (ContactSolver solver : List.of(first, soft)) {
                Solution asGroup = solver.solve(loadCase);
                Solution asUnits = solver.solve(solver.expand(loadCase));
                for (int c = 0; c < 3; c++) {
                    assertThat(asGroup.force(c)).isCloseTo(asUnits.force(c), within(1e-9));
                }
            }
        }
        double flexibility = 8 * L * L * L / (48 * EI);
        double rigid = 1.25 * W * L;
        assertThat(soft.solve(LOADED).force(1)).isCloseTo(rigid * flexibility / (flexibility + 1e-6), within(1e-8));
        assertThat(first.solve(LOADED).force(1)).isCloseTo(rigid, within(1e-8));
        double[] back = {Double.NaN, RIGID, Double.NaN};
        assertThat(soft.withProps(back).solve(LOADED).force(1))
                .isEqualTo(first.solve(LOADED).force(1));
    }

    @Test
    void what_is_no_prop_keeps_its_stiffness() {
        Frame frame = new Frame(
                List.of(new Frame.Joist(0, 0, 4, EI)),
                List.of(),
                List.of(new Contact.OnGround(0, 0, RIGID, 0, false), new Contact.OnGround(0, 4, RIGID, 0, false)));
        ContactSolver solver = new ContactSolver(frame, List.of());
        assertThatIllegalArgumentException().isThrownBy(() -> solver.withProps(new double[] {1e6, Double.NaN}));
        assertThatIllegalArgumentException().isThrownBy(() -> solver.withProps(new double[] {Double.NaN}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> twoSpans(RIGID, 0).withProps(new double[] {Double.NaN, -1, Double.NaN}));
    }

    @Test
    void an_offset_off_the_frame_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> twoSpans(RIGID, 0, offset(3, 0.001)));
        assertThatIllegalArgumentException().isThrownBy(() -> offset(-1, 0.001));
        assertThatIllegalArgumentException().isThrownBy(() -> offset(0, Double.NaN));
        assertThat(offset(1, 0.001).total()).isZero();
    }
}
