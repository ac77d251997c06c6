package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds, for any combination of unit loads, which contacts press and with what force.
 *
 * <p>The answer is the minimum of potential energy with contacts that only push (a convex quadratic programme). Within
 * one contact state the response is linear, so every state is factorised once, one that is asked again and again answers
 * for the unit loads once, and a case is a sum that is then verified: closed contacts must press, open ones must be clear. Where the sum fails, all
 * offending contacts change at once (primal-dual active set; M. Hintermüller, K. Ito, K. Kunisch, SIAM J. Optim. 13, 2002)
 * and the sum is verified in the next state. When a state comes back, the least-index rule of K. G. Murty (Linear
 * Complementarity, Linear and Nonlinear Programming, 1988, ch. 4; both from memory) changes one contact at a time on the
 * structure held by weak springs, for which it must end; its state is then verified on the true structure. A member
 * that moves further than its own length, on the weak springs or on a lever of a millimetre, is a mechanism too; any
 * other case for which no state verifies within the bound is {@code NOT_SETTLED}, never passed on as an answer.
 *
 * <p>Not safe for use by several threads at once; make one for each.
 */
public final class ContactSolver {

    /** States tried by the fast rule before the sure one takes over; floors settle in two to six. */
    private static final int FAST_CHANGES = 30;

    /** A contact force beyond this many times the load comes of a very short lever, or of a lift. */
    private static final double LEVERAGE = 10;

    /** Openings beyond this part of the shortest member are looked at more closely; a floor's are millimetres. */
    private static final double WIDE = 0.01;

    private final Assembly assembly;
    private final Map<BitSet, ContactState> states = new HashMap<>();
    private final Map<Integer, ContactState> lastOf = new HashMap<>();
    private final BitSet fastened = new BitSet();
    private final int contacts;
    private ContactState base;
    private boolean first = true;
    private int solves;
    private int oneByOne;

    /**
     * @param frame the structure
     * @param units the loads that cases combine
     */
    public ContactSolver(Frame frame, List<UnitLoad> units) {
        this.assembly = new Assembly(frame, units);
        this.contacts = frame.contacts().size();
        BitSet start = new BitSet();
        for (int c = 0; c < contacts; c++) {
            Contact contact = frame.contacts().get(c);
            fastened.set(c, contact.fastened());
            start.set(c, contact.fastened() || contact.gap() <= 0);
        }
        this.base = state(start);
    }

    /**
     * Makes a group of units that always act together at full value, such as a live load pattern, so that it costs one
     * addition a case.
     *
     * @return the group's number, to be used as a unit in a {@link LoadCase}
     */
    public int addGroup(int[] units) {
        return assembly.loadings().addGroup(units);
    }

    /** The case with its groups written out as units. */
    public LoadCase expand(LoadCase loadCase) {
        int[] units = new int[0];
        double[] factors = new double[0];
        for (int i = 0; i < loadCase.size(); i++) {
            int unit = loadCase.unit(i);
            int[] parts =
                    assembly.loadings().isGroup(unit) ? assembly.loadings().group(unit) : new int[] {unit};
            int from = units.length;
            units = Arrays.copyOf(units, from + parts.length);
            factors = Arrays.copyOf(factors, from + parts.length);
            System.arraycopy(parts, 0, units, from, parts.length);
            Arrays.fill(factors, from, factors.length, loadCase.factor(i));
        }
        return new LoadCase(units, factors);
    }

    /** Length of the row that {@link Solution#writeRow} fills. */
    public int rowSize() {
        return assembly.layout().size();
    }

    /** A view on one member's part of such rows; members are numbered as in {@link Frame}. */
    public Diagram diagram(int member) {
        return new Diagram(assembly.layout().stations(member), assembly.layout().base(member));
    }

    /** Number of contact states factorised so far. */
    public int factorised() {
        return solves;
    }

    /** Number of cases for which the fast rule met a state again, so that the sure one took over. */
    int oneByOne() {
        return oneByOne;
    }

    /**
     * Solves one case. It is tried in the state in which the last case with the same final unit ended, then in the state
     * of the first case solved; where neither will do, the search begins.
     */
    public Solution solve(LoadCase loadCase) {
        int key = loadCase.size() == 0 ? -1 : loadCase.unit(loadCase.size() - 1);
        ContactState likely = lastOf.getOrDefault(key, base);
        CaseAnswer answer = ask(likely, loadCase);
        BitSet wrong = wrong(answer, loadCase);
        if (!wrong.isEmpty() && likely != base) {
            answer = ask(base, loadCase);
            wrong = wrong(answer, loadCase);
        }
        Solution solution = wrong.isEmpty() ? accept(loadCase, answer, 0) : search(loadCase, answer, wrong);
        if (solution.outcome() == Solution.Outcome.SETTLED) {
            lastOf.put(key, solution.state());
            if (first) {
                first = false;
                base = solution.state();
            }
        }
        return solution;
    }

    private CaseAnswer ask(ContactState state, LoadCase loadCase) {
        return CaseAnswer.of(assembly, state, loadCase);
    }

    private Solution search(LoadCase loadCase, CaseAnswer from, BitSet firstWrong) {
        CaseAnswer answer = from;
        BitSet wrong = firstWrong;
        Set<BitSet> seen = new HashSet<>();
        int changes = 0;
        while (changes < FAST_CHANGES && seen.add(answer.state().closed())) {
            BitSet next = (BitSet) answer.state().closed().clone();
            next.xor(wrong);
            answer = ask(state(next), loadCase);
            changes++;
            wrong = wrong(answer, loadCase);
            if (wrong.isEmpty()) {
                return accept(loadCase, answer, changes);
            }
        }
        return searchOneByOne(loadCase, answer.state().closed(), changes);
    }

    private Solution searchOneByOne(LoadCase loadCase, BitSet from, int before) {
        oneByOne++;
        BitSet closed = (BitSet) from.clone();
        int bound = 200 + 40 * contacts;
        for (int changes = before + 1; changes <= bound; changes++) {
            CaseAnswer held = ask(ContactState.onWeakSprings(assembly, closed), loadCase);
            solves++;
            BitSet wrong = wrong(held, loadCase);
            if (wrong.isEmpty()) {
                return judge(loadCase, held, changes);
            }
            closed.flip(wrong.nextSetBit(0));
        }
        CaseAnswer last = ask(state(closed), loadCase);
        return new Solution(
                Solution.Outcome.NOT_SETTLED, loadCase, last, last.state().loose(), bound);
    }

    /** What contacts that agree on weak springs mean for the true structure. */
    private Solution judge(LoadCase loadCase, CaseAnswer held, int changes) {
        CaseAnswer answer = ask(state(held.state().closed()), loadCase);
        if (wrong(answer, loadCase).isEmpty()) {
            return accept(loadCase, answer, changes);
        }
        BitSet loose = answer.state().loose();
        if (loose.isEmpty()) {
            loose = assembly.adrift(
                    held.movements(), held.values(), held.state().closed());
        }
        Solution.Outcome outcome = loose.isEmpty() ? Solution.Outcome.NOT_SETTLED : Solution.Outcome.MECHANISM;
        return new Solution(outcome, loadCase, answer, loose, changes);
    }

    private Solution accept(LoadCase loadCase, CaseAnswer answer, int changes) {
        BitSet loose = answer.state().loose();
        if (loose.isEmpty() && far(loadCase, answer)) {
            loose = assembly.adrift(
                    answer.movements(), answer.values(), answer.state().closed());
        }
        Solution.Outcome outcome = loose.isEmpty() ? Solution.Outcome.SETTLED : Solution.Outcome.MECHANISM;
        return new Solution(outcome, loadCase, answer, loose, changes);
    }

    /** Whether forces or openings are so large that some member may have gone adrift: a cheap look before the full one. */
    private boolean far(LoadCase loadCase, CaseAnswer answer) {
        double most = LEVERAGE * total(loadCase);
        for (int c = 0; c < contacts; c++) {
            double bound = answer.state().pressing(c) ? most : WIDE * assembly.shortest();
            if (Math.abs(answer.values()[c]) > bound) {
                return true;
            }
        }
        return false;
    }

    private double total(LoadCase loadCase) {
        double total = 0;
        for (int i = 0; i < loadCase.size(); i++) {
            total += Math.abs(loadCase.factor(i)) * assembly.loadings().total(loadCase.unit(i));
        }
        return total;
    }

    private ContactState state(BitSet closed) {
        ContactState known = states.get(closed);
        if (known == null) {
            known = new ContactState(assembly, closed);
            states.put(known.closed(), known);
            solves++;
        }
        return known;
    }

    private BitSet wrong(CaseAnswer answer, LoadCase loadCase) {
        double[] values = answer.values();
        double largest = largestOpening(answer);
        double pull = -Tolerance.TENSION * total(loadCase) * Math.max(1, largest / assembly.longest());
        double overlap = -Tolerance.PENETRATION_FLOOR - Tolerance.PENETRATION * largest;
        BitSet wrong = new BitSet();
        for (int c = 0; c < contacts; c++) {
            boolean bad = answer.state().pressing(c) ? values[c] < pull && !fastened.get(c) : values[c] < overlap;
            if (bad || Double.isNaN(values[c])) {
                wrong.set(c);
            }
        }
        return wrong;
    }

    private double largestOpening(CaseAnswer answer) {
        double largest = 0;
        for (int c = 0; c < contacts; c++) {
            if (!answer.state().pressing(c)) {
                largest = Math.max(largest, Math.abs(answer.values()[c]));
            }
        }
        return largest;
    }
}
