package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Solved cases that are all changed alike, such as by a post out of line or by other rules, and solved again side by side: what one
 * state answers to all of them are rows of numbers, a row a contact. Cases that are thought to end in one contact state
 * are looked at together; those in which contacts are wrong change them and are looked at again in the state they lead to, as
 * {@link ContactSolver} has it. A case that does not come to rest so, or needs a closer look, is left to be solved alone.
 *
 * <p>Not safe for use by several threads at once.
 */
public final class CaseBlock {

    /** States looked at for a case before it is left to be solved alone. */
    private static final int MOST_ROUNDS = 12;

    private final ContactSolver solver;
    private final Assembly assembly;
    private final List<Solution> solved;
    private final ContactState near;
    private final int contacts;
    private final double[][] own;
    private final double[][] forces;
    private final double[] total;
    private final double[] furthest;
    private final CaseRows rows;

    /** Who takes what was found. */
    public interface Taker {
        /**
         * Takes cases that ended in one contact state. What is given is valid only during the call. Where something is loose in
         * that state, the contacts agree and the forces are those of balance.
         */
        void together(CaseGroup group);

        /** Takes a case in whose contact state something is loose and drifts off: a mechanism. */
        void adrift(int place);

        /** Solves a case alone and takes it. */
        Solution alone(int place);
    }

    /** Contact states in which the cases of a block ended when they were changed in one way, to begin with at the next time. */
    public static final class Guess {
        private final KnownState[] states;

        /** @param cases how many cases there are in the blocks for which this is kept */
        public Guess(int cases) {
            this.states = new KnownState[cases];
            Arrays.fill(states, KnownState.NONE);
        }

        /** Begins where others ended, where nothing better is known. */
        public void or(Guess other) {
            for (int i = 0; i < states.length; i++) {
                states[i] = states[i] == KnownState.NONE ? other.states[i] : states[i];
            }
        }
    }

    /**
     * @param solver by which the cases were solved
     * @param rules by which they were solved
     * @param solved the cases
     */
    public CaseBlock(ContactSolver solver, Rules rules, List<Solution> solved) {
        this.solver = solver;
        this.assembly = solver.assembly();
        this.solved = solved;
        this.near = solver.base(rules);
        this.contacts = solver.contacts();
        this.own = new double[contacts][solved.size()];
        this.forces = new double[contacts][solved.size()];
        this.total = new double[solved.size()];
        this.furthest = new double[solved.size()];
        this.rows = new CaseRows(contacts);
        for (int i = 0; i < total.length; i++) {
            total[i] = solved.get(i).question().total();
            for (int c = 0; c < contacts; c++) {
                forces[c][i] = solved.get(i).force(c);
            }
        }
        sum();
    }

    /** What the state near all of them answers to each. */
    private void sum() {
        ContactState.Response offsets = near.response(near.offsetsUnit());
        for (int i = 0; i < total.length; i++) {
            LoadCase loadCase = solved.get(i).loadCase();
            furthest[i] = offsets.furthest();
            for (int c = 0; c < contacts; c++) {
                own[c][i] = offsets.values()[c];
            }
            for (int u = 0; u < loadCase.size(); u++) {
                ContactState.Response response = near.response(loadCase.unit(u));
                double factor = loadCase.factor(u);
                furthest[i] += Math.abs(factor) * response.furthest();
                for (int c = 0; c < contacts; c++) {
                    own[c][i] += factor * response.values()[c];
                }
            }
        }
    }

    /** Force (N) at a contact in every case as it was solved, 0 where open; not to be changed. */
    double[] forces(int contact) {
        return forces[contact];
    }

    /**
     * Solves cases with one more unit acting.
     *
     * @param unit the unit added, of changed gaps alone
     * @param factor its factor
     * @param rules which contacts are absent, as in the rules the cases were solved by, and which can pull
     * @param which places of the cases in the block
     * @param guess where to begin and what is remembered
     * @return how many states were looked at beyond the first of each case
     */
    public int changed(int unit, double factor, Rules rules, int[] which, Guess guess, Taker taker) {
        Recall recall = solver.recall(rules);
        Round round = new Round(unit, factor, recall, guess, taker);
        int[] left = which;
        int again = 0;
        for (int i : which) {
            if (guess.states[i] == KnownState.NONE) {
                guess.states[i] = assembly.known(
                        recall.start(solved.get(i).answer().closure().closed()));
            }
        }
        for (int k = 0; left.length > 0 && k < MOST_ROUNDS && near.firm(); k++) {
            left = round.go(left);
            again += left.length;
            if (k == 0) {
                left = round.likely(left);
            }
        }
        for (int i : left) {
            round.leave(i);
        }
        return again;
    }

    /** One change of all cases, on its way from state to state. */
    private final class Round {
        private final int unit;
        private final double factor;
        private final Recall recall;
        private final Guess guess;
        private final Taker taker;
        private ContactState.Response change;
        private int[] left = {};
        private int remaining;
        private KnownState good = KnownState.NONE;

        Round(int unit, double factor, Recall recall, Guess guess, Taker taker) {
            this.unit = unit;
            this.factor = factor;
            this.recall = recall;
            this.guess = guess;
            this.taker = taker;
            this.change = near.response(unit);
        }

        /** Cases that are not in the state thought of are next thought to be where others of the same change ended. */
        int[] likely(int[] which) {
            int from = 0;
            if (which.length > 0 && good == KnownState.NONE) {
                leave(which[from++]);
            }
            int[] rest = Arrays.copyOfRange(which, from, which.length);
            for (int i : rest) {
                guess.states[i] = good;
            }
            return rest;
        }

        /** Looks at cases in the states in which they are thought to end; answers with those that are to be looked at again. */
        int[] go(int[] which) {
            left = new int[which.length];
            remaining = 0;
            boolean[] done = new boolean[which.length];
            int[] together = new int[which.length];
            for (int first = 0; first < which.length; first++) {
                if (!done[first]) {
                    KnownState state = guess.states[which[first]];
                    int count = 0;
                    for (int i = first; i < which.length; i++) {
                        if (!done[i] && guess.states[which[i]] == state) {
                            done[i] = true;
                            together[count++] = which[i];
                        }
                    }
                    look(state, Arrays.copyOf(together, count));
                }
            }
            return Arrays.copyOf(left, remaining);
        }

        private void look(KnownState state, int[] cases) {
            assembly.halt().check();
            BitSet flipped = (BitSet) state.closure().closed().clone();
            flipped.xor(near.closed());
            Flips flips = near.flips(flipped);
            if (flips.fit() && near.closure().away().equals(state.closure().away())) {
                lookFromNear(state, flips, cases);
            } else {
                lookInside(state, cases);
            }
        }

        /** Asks a state itself, to which there is no good way from the near one: because something is loose in it, say. */
        private void lookInside(KnownState known, int[] cases) {
            ContactState state = solver.state(known.closure());
            rows.take(cases);
            for (int r = 0; r < cases.length; r++) {
                LoadCase loadCase = solved.get(cases[r]).loadCase().with(unit, factor);
                rows.put(r, CaseAnswer.of(assembly, state, loadCase).values());
            }
            rows.test(state.pressing(), recall.absent(), recall.pulls());
            sort(known, state.pressing(), state.loose());
        }

        private void lookFromNear(KnownState state, Flips flips, int[] cases) {
            rows.take(own, change.values(), factor, furthest, Math.abs(factor) * change.furthest(), cases);
            rows.flip(near, flips);
            rows.test(flips.pressing(), recall.absent(), recall.pulls());
            if (!near.twofold() && rows.lostDigits(assembly, total)) {
                near.keepMoreDigits();
                sum();
                change = near.response(unit);
                look(state, cases);
                return;
            }
            sort(state, flips.pressing(), ContactSolver.NONE);
        }

        /** Parts the cases in which all agrees from those to be looked at again or alone. */
        private void sort(KnownState state, boolean[] pressing, BitSet loose) {
            int kept = 0;
            for (int r = 0; r < rows.count(); r++) {
                int i = rows.caseAt(r);
                BitSet wrong =
                        rows.doubtful(r) ? solver.certain(rows.column(r), pressing, question(i)) : ContactSolver.NONE;
                if (!wrong.isEmpty()) {
                    BitSet next = (BitSet) state.closure().closed().clone();
                    next.xor(wrong);
                    guess.states[i] = assembly.known(state.closure().with(next));
                    left[remaining++] = i;
                } else if (rows.outOfBalance(r, total[i])) {
                    leave(i);
                } else if (solver.far(rows.strongest(r), rows.widest(r), total[i])) {
                    if (loose.isEmpty()) {
                        leave(i);
                    } else {
                        taker.adrift(i);
                    }
                } else {
                    rows.keep(r, kept++);
                }
            }
            rows.only(kept);
            if (kept > 0) {
                good = state;
                taker.together(new CaseGroup(CaseBlock.this, state.closure(), pressing, loose, rows));
            }
        }

        void leave(int i) {
            Solution solution = taker.alone(i);
            good = assembly.known(solution.answer().closure());
            guess.states[i] = good;
        }

        private Question question(int i) {
            return recall.regapped(solved.get(i).question());
        }
    }

    /** Writes shear, moment and load of one member of a case; added units of gaps alone put nothing on members. */
    void writeForces(int place, Closure closure, double[] values, int member, double[] row) {
        assembly.layout().writeForces(assembly.loadings(), solved.get(place).loadCase(), closure, values, member, row);
    }
}
