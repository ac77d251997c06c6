package dev.underprop.engine.statics;

import dev.underprop.engine.Halt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    /** Numbers that all kept states may hold, their rows and ways to neighbours aside: 16 MB a solver. What is dropped is factorised again. */
    private static final int MEMORY = 2_000_000;

    /** States kept however large they are. */
    private static final int FEWEST = 8;

    /** States tried by the fast rule before the sure one takes over; floors settle in two to six. */
    private static final int FAST_CHANGES = 30;

    /** A contact force beyond this many times the load comes of a very short lever, or of a lift. */
    private static final double LEVERAGE = 10;

    /** Openings beyond this part of the shortest member are looked at more closely; a floor's are millimetres. */
    private static final double WIDE = 0.01;

    /** Contacts in which a neighbour may differ from the state that answers for it; beyond, a state of its own costs less. */
    private static final int NEAR = 16;

    /** Part of the load by which rounding may leave a neighbour's answer out of balance. */
    static final double BALANCE = 1e-11;

    /** No contact is wrong; never changed. */
    static final BitSet NONE = new BitSet();

    private final Assembly assembly;
    private final Props props;
    private final Map<Closure, ContactState> states = new LinkedHashMap<>(16, 0.75f, true);
    private final Kept.Parts parts = new Kept.Parts();
    private final Map<Rules, Recall> recalls = new HashMap<>();
    private final Rules own;
    private Rules lastRules;
    private Recall lastRecall;
    private final int contacts;
    private int solves;
    private int oneByOne;

    /**
     * @param frame the structure
     * @param units the loads and changes of gaps that cases combine
     */
    public ContactSolver(Frame frame, List<UnitLoad> units) {
        this(frame, units, Halt.NEVER);
    }

    /**
     * @param frame the structure
     * @param units the loads and changes of gaps that cases combine
     * @param halt asked while units are set up, before every case, every answer to a unit, and in long searches
     */
    public ContactSolver(Frame frame, List<UnitLoad> units, Halt halt) {
        this(new Assembly(frame, units, halt));
    }

    private ContactSolver(Assembly assembly) {
        this(assembly, assembly.props());
    }

    private ContactSolver(Assembly assembly, Props props) {
        this.assembly = assembly;
        this.props = props;
        this.own = Rules.of(assembly.frame());
        this.contacts = assembly.frame().contacts().size();
        this.lastRules = own;
        this.lastRecall = newRecall(own);
        recalls.put(own, lastRecall);
    }

    /**
     * A solver of the same structure and units on props of other stiffness. Whatever does not depend on the props is
     * shared, groups among it: a group made by either is known to both by one number.
     *
     * @param stiffnessByContact stiffness (N/m) of each contact that is a prop, infinite when rigid; NaN where it stays
     *     as it is here, as it must for what is no prop
     */
    public ContactSolver withProps(double[] stiffnessByContact) {
        if (stiffnessByContact.length != contacts) {
            throw new IllegalArgumentException("a stiffness, or NaN, for every contact");
        }
        return new ContactSolver(assembly, props.with(stiffnessByContact));
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

    /**
     * Adds a unit of changed gaps alone, once it is known: the shape in which a floor was found, a post out of line.
     *
     * @return the unit's number, known to all solvers that share the assembly
     */
    public int addOffsets(List<UnitLoad.Offset> offsets) {
        return assembly.addOffsets(offsets);
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

    /** A place to work out what a change of forces does to all members. */
    public ForceChange forceChange() {
        return assembly.forceChange();
    }

    void writeForces(CaseAnswer answer, LoadCase loadCase, int member, double[] row) {
        answer.writeForces(assembly, loadCase, member, row);
    }

    /** Number of contact states factorised so far. */
    public int factorised() {
        return solves;
    }

    int contacts() {
        return contacts;
    }

    Assembly assembly() {
        return assembly;
    }

    /** The state near which cases by these rules end. */
    ContactState base(Rules rules) {
        return state(recall(rules).base());
    }

    /** Number of cases for which the fast rule met a state again, so that the sure one took over. */
    int oneByOne() {
        return oneByOne;
    }

    /** Solves one case by the frame's own rules: nothing absent, fastened as the frame says. */
    public Solution solve(LoadCase loadCase) {
        return solve(loadCase, own);
    }

    /**
     * Solves one case. It is tried in the contacts in which the last case by the same rules with the same final unit ended,
     * then in those of the first case solved by these rules; where neither will do, the search begins.
     *
     * @param rules which contacts are absent and which can pull
     */
    public Solution solve(LoadCase loadCase, Rules rules) {
        Recall recall = recall(rules);
        Question question = recall.question(loadCase, assembly.loadings());
        Closure base = recall.base();
        Closure likely = recall.likely(loadCase);
        CaseAnswer answer = ask(state(likely), loadCase);
        BitSet wrong = wrong(answer, question);
        if (!wrong.isEmpty() && !likely.equals(base)) {
            answer = ask(state(base), loadCase);
            wrong = wrong(answer, question);
        }
        Solution solution = wrong.isEmpty() ? accept(question, answer, 0) : search(question, answer, wrong);
        if (solution.outcome() == Solution.Outcome.SETTLED) {
            recall.settled(loadCase, solution.answer().closure());
        }
        return solution;
    }

    /**
     * Solves a case that differs from a solved one by one more unit, such as a post out by its fit-up tolerance. Where the
     * contacts stay as they are this costs one addition and one verification, and {@link Solution#changes} is 0;
     * otherwise the search begins from them.
     *
     * @param from a solution of this solver, or of one that shares its assembly
     * @param unit the unit added
     * @param factor its factor
     * @param rules which contacts are absent and which can pull
     */
    public Solution shifted(Solution from, int unit, double factor, Rules rules) {
        Recall recall = recall(rules);
        Question question = from.rules() == rules
                ? from.question().with(assembly.loadings(), unit, factor)
                : recall.question(from.loadCase().with(unit, factor), assembly.loadings());
        LoadCase loadCase = question.loadCase();
        CaseAnswer own = from.answer().state().of(props)
                ? from.answer().shifted(loadCase, unit, factor)
                : ask(state(recall.base()), loadCase);
        Closure start = from.rules() == rules ? from.answer().closure() : recall.start(from.closed());
        CaseAnswer answer = in(start, own, question);
        BitSet wrong = wrong(answer, question);
        if (wrong.isEmpty()) {
            return accept(question, answer, 0);
        }
        Closure likely = recall.likelyShifted(unit, factor < 0);
        if (!likely.equals(answer.closure())) {
            CaseAnswer again = in(likely, own, question);
            if (wrong(again, question).isEmpty()) {
                return accept(question, again, 1);
            }
        }
        Solution solution = search(question, answer, wrong);
        if (solution.outcome() == Solution.Outcome.SETTLED) {
            recall.settledShifted(unit, factor < 0, solution.answer().closure());
        }
        return solution;
    }

    /**
     * Solves a case in which more of some units acts than in a solved one, or less: a turn of a screw, other loads on the same
     * screws. The search begins from the contacts of the solved case; where they stay, it costs an addition a unit.
     *
     * @param from a settled solution of this solver, by whose rules the case is solved
     * @param more what acts more
     */
    public Solution varied(Solution from, LoadCase more) {
        Recall recall = recall(from.rules());
        LoadCase loadCase = from.loadCase().plus(more);
        boolean gap = more.size() == 1 && assembly.loadings().total(more.unit(0)) == 0;
        Question question = gap ? from.question().regapped(loadCase) : recall.question(loadCase, assembly.loadings());
        CaseAnswer before = from.answer();
        if (!before.state().of(props)) {
            throw new IllegalArgumentException("a solution on other props");
        }
        CaseAnswer own = before.fresh() ? before.varied(loadCase, more) : before;
        own = own.fresh() ? own : ask(before.state(), loadCase);
        CaseAnswer answer = in(before.closure(), own, question);
        BitSet wrong = wrong(answer, question);
        Solution solution = wrong.isEmpty() ? accept(question, answer, 0) : search(question, answer, wrong);
        return solution.outcome() == Solution.Outcome.SETTLED ? solution : solve(loadCase, from.rules());
    }

    /**
     * Solves the case of a solution again by other rules, such as with fastenings released; the search begins from its contacts.
     */
    public Solution again(Solution from, Rules rules) {
        Recall recall = recall(rules);
        Question question = recall.question(from.loadCase(), assembly.loadings());
        CaseAnswer own =
                from.answer().state().of(props) ? from.answer().own() : ask(state(recall.base()), from.loadCase());
        CaseAnswer answer = in(recall.start(from.closed()), own, question);
        BitSet wrong = wrong(answer, question);
        return wrong.isEmpty() ? accept(question, answer, 0) : search(question, answer, wrong);
    }

    /** The case with the given contacts closed: as a neighbour of the state that was asked, or in a state of its own. */
    private CaseAnswer in(Closure closure, CaseAnswer asked, Question question) {
        ContactState near = asked.state();
        if (closure.equals(near.closure())) {
            return asked.own();
        }
        if (near.firm() && near.closure().away().equals(closure.away())) {
            BitSet flipped = (BitSet) closure.closed().clone();
            flipped.xor(near.closed());
            if (flipped.cardinality() <= NEAR) {
                CaseAnswer answer = flipped(closure, flipped, asked, question);
                if (answer.closure().equals(closure)) {
                    return answer;
                }
            }
        }
        return ask(state(closure), question.loadCase());
    }

    /** The neighbour's answer where the way there keeps its digits; else what was asked. */
    private CaseAnswer flipped(Closure closure, BitSet contacts, CaseAnswer asked, Question question) {
        ContactState near = asked.state();
        Flips flips = near.flips(contacts);
        if (!flips.fit()) {
            return asked.own();
        }
        CaseAnswer answer = asked.flipped(assembly, question.loadCase(), flips, closure);
        if (!near.twofold() && !assembly.roundingIsSmall(question.total(), answer.furthest())) {
            near.keepMoreDigits();
            return flipped(closure, contacts, ask(near, question.loadCase()), question);
        }
        return answer.imbalance() <= BALANCE * question.total() ? answer : asked.own();
    }

    Recall recall(Rules rules) {
        assembly.halt().check();
        if (rules != lastRules) {
            lastRecall = recalls.computeIfAbsent(rules, this::newRecall);
            lastRules = rules;
        }
        return lastRecall;
    }

    private Recall newRecall(Rules rules) {
        BitSet touching = new BitSet();
        for (int c = 0; c < contacts; c++) {
            touching.set(c, assembly.frame().contacts().get(c).gap() <= 0);
        }
        return new Recall(touching, assembly.away(rules), rules, contacts);
    }

    private CaseAnswer ask(ContactState state, LoadCase loadCase) {
        return CaseAnswer.of(assembly, state, loadCase);
    }

    private Solution search(Question question, CaseAnswer from, BitSet firstWrong) {
        CaseAnswer answer = from;
        BitSet wrong = firstWrong;
        // Few, so that looking through them costs less than places by hash.
        List<BitSet> seen = new ArrayList<>();
        int changes = 0;
        while (changes < FAST_CHANGES && !seen.contains(answer.closure().closed())) {
            seen.add(answer.closure().closed());
            BitSet next = (BitSet) answer.closure().closed().clone();
            next.xor(wrong);
            answer = in(answer.closure().with(next), from, question);
            changes++;
            wrong = wrong(answer, question);
            if (wrong.isEmpty()) {
                return accept(question, answer, changes);
            }
        }
        return searchOneByOne(question, answer.closure(), changes);
    }

    private Solution searchOneByOne(Question question, Closure from, int before) {
        oneByOne++;
        Closure closure = from;
        int bound = 200 + 40 * contacts;
        for (int changes = before + 1; changes <= bound; changes++) {
            CaseAnswer held = ask(ContactState.onWeakSprings(assembly, props, closure), question.loadCase());
            solves++;
            BitSet wrong = wrong(held, question);
            if (wrong.isEmpty()) {
                return judge(question, held, changes);
            }
            BitSet next = (BitSet) closure.closed().clone();
            next.flip(wrong.nextSetBit(0));
            closure = closure.with(next);
        }
        CaseAnswer last = ask(state(closure), question.loadCase());
        return new Solution(this, Solution.Outcome.NOT_SETTLED, question, last, last.loose(), bound, false);
    }

    /** What contacts that agree on weak springs mean for the true structure. */
    private Solution judge(Question question, CaseAnswer held, int changes) {
        CaseAnswer answer = ask(state(held.closure()), question.loadCase());
        if (wrong(answer, question).isEmpty()) {
            return accept(question, answer, changes);
        }
        BitSet loose = answer.loose();
        if (loose.isEmpty()) {
            loose = assembly.adrift(held, question);
        }
        Solution.Outcome outcome = loose.isEmpty() ? Solution.Outcome.NOT_SETTLED : Solution.Outcome.MECHANISM;
        return new Solution(this, outcome, question, answer, loose, changes, false);
    }

    private Solution accept(Question question, CaseAnswer answer, int changes) {
        BitSet loose = answer.loose();
        boolean near = !far(question, answer);
        if (loose.isEmpty() && !near) {
            loose = assembly.adrift(answer, question);
        }
        Solution.Outcome outcome = loose.isEmpty() ? Solution.Outcome.SETTLED : Solution.Outcome.MECHANISM;
        return new Solution(this, outcome, question, answer, loose, changes, near);
    }

    /** Whether forces or openings are so large that some member may have gone adrift: a cheap look before the full one. */
    private boolean far(Question question, CaseAnswer answer) {
        double strongest = 0;
        double widest = 0;
        double[] values = answer.values();
        boolean[] pressing = answer.pressing();
        for (int c = 0; c < contacts; c++) {
            if (pressing[c]) {
                strongest = Math.max(strongest, Math.abs(values[c]));
            } else if (!question.absent()[c]) {
                widest = Math.max(widest, Math.abs(values[c]));
            }
        }
        return far(strongest, widest, question.total());
    }

    /**
     * The same from greatest force (N) and opening (m).
     *
     * @param total sum of the magnitudes of all loads (N)
     */
    boolean far(double strongest, double widest, double total) {
        return strongest > LEVERAGE * total || widest > WIDE * assembly.shortest();
    }

    ContactState state(Closure closure) {
        ContactState known = states.get(closure);
        if (known == null) {
            makeRoom();
            known = new ContactState(assembly, props, closure, parts);
            states.put(closure, known);
            solves++;
        }
        return known;
    }

    /** Drops the states asked for longest ago where all of them hold too much. */
    private void makeRoom() {
        long held = 0;
        for (ContactState state : states.values()) {
            held += state.numbers();
        }
        Iterator<ContactState> eldest = states.values().iterator();
        while (held > MEMORY && states.size() > FEWEST) {
            ContactState state = eldest.next();
            held -= state.numbers();
            parts.dropAll(state);
            eldest.remove();
        }
    }

    private BitSet wrong(CaseAnswer answer, Question question) {
        return doubtful(answer, question) ? certain(answer, question) : NONE;
    }

    /** Whether anything is below zero that should not be; only then tolerances matter. */
    private boolean doubtful(CaseAnswer answer, Question question) {
        double[] values = answer.values();
        boolean[] pressing = answer.pressing();
        boolean[] pulls = question.pulls();
        for (int c = 0; c < contacts; c++) {
            if (!(values[c] >= 0) && !question.absent()[c] && !(pressing[c] && pulls[c] && values[c] < 0)) {
                return true;
            }
        }
        return false;
    }

    private BitSet certain(CaseAnswer answer, Question question) {
        return certain(answer.values(), answer.pressing(), question);
    }

    /** Contacts that are wrong beyond rounding. */
    BitSet certain(double[] values, boolean[] pressing, Question question) {
        double largest = 0;
        double strongest = 0;
        for (int c = 0; c < contacts; c++) {
            if (pressing[c]) {
                strongest = Math.max(strongest, Math.abs(values[c]));
            } else if (!question.absent()[c]) {
                largest = Math.max(largest, Math.abs(values[c]));
            }
        }
        double pull = -pull(question, strongest) * Math.max(1, largest / assembly.longest());
        double overlap = -Tolerance.PENETRATION_FLOOR - Tolerance.PENETRATION * largest;
        BitSet wrong = NONE;
        for (int c = 0; c < contacts; c++) {
            boolean bad = pressing[c] ? values[c] < pull && !question.pulls()[c] : values[c] < overlap;
            if ((bad || Double.isNaN(values[c])) && !question.absent()[c]) {
                wrong = wrong == NONE ? new BitSet(contacts) : wrong;
                wrong.set(c);
            }
        }
        return wrong;
    }

    /** Tension that counts as none (N). Where gaps and lifts act the forces need not be of the size of the loads. */
    private double pull(Question question, double strongest) {
        if (!question.offset()) {
            return Tolerance.TENSION * question.total();
        }
        double load =
                Math.max(question.total(), Tolerance.LIGHT * assembly.loadings().heaviest());
        return Math.max(Tolerance.TENSION * load, Tolerance.TENSION * Tolerance.FAR_BELOW * strongest);
    }
}
