package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.BitSet;

/** Contact states in which cases by the same rules ended, to begin the next from. */
final class Recall {

    private Closure base;
    private boolean first = true;

    /** By twice the unit, and one more where it is turned. */
    private Closure[] lastShifted = {};

    /** By final unit; the first place is for cases without any. */
    private Closure[] lastOf = {};

    private final Rules rules;
    private final boolean[] absent;
    private final boolean[] pulls;
    private final BitSet there;
    private final BitSet fastened;
    private final BitSet away;

    /**
     * @param touching contacts without clear space before anything acts
     * @param away carriers that are not there by these rules
     */
    Recall(BitSet touching, BitSet away, Rules rules, int contacts) {
        this.rules = rules;
        this.away = away;
        this.absent = new boolean[contacts];
        this.pulls = new boolean[contacts];
        this.there = new BitSet(contacts);
        this.fastened = new BitSet(contacts);
        for (int c = 0; c < contacts; c++) {
            absent[c] = rules.isAbsent(c);
            pulls[c] = rules.canPull(c);
            there.set(c, !absent[c]);
            fastened.set(c, pulls[c]);
        }
        this.base = start(touching);
    }

    /** A state to begin from: the given contacts and all fastened ones closed, those that are absent not. */
    Closure start(BitSet closed) {
        BitSet start = (BitSet) closed.clone();
        start.and(there);
        start.or(fastened);
        return new Closure(start, away);
    }

    /** A case to be solved by these rules. */
    Question question(LoadCase loadCase, Loadings loadings) {
        return new Question(loadCase, rules, absent, pulls, loadings.total(loadCase), loadings.offset(loadCase));
    }

    /** What is asked of a case solved before, of the same loads, by these rules and with gaps changed. */
    Question regapped(Question other) {
        return new Question(other.loadCase(), rules, absent, pulls, other.total(), true);
    }

    /** By contact, whether it is not there; not to be changed. */
    boolean[] absent() {
        return absent;
    }

    /** By contact, whether it can pull; not to be changed. */
    boolean[] pulls() {
        return pulls;
    }

    /** The state of the first case that settled, or the one guessed before. */
    Closure base() {
        return base;
    }

    /** The state of the last case with the same final unit. */
    Closure likely(LoadCase loadCase) {
        int place = place(loadCase);
        return place < lastOf.length ? lastOf[place] : base;
    }

    void settled(LoadCase loadCase, Closure state) {
        int place = place(loadCase);
        lastOf = upTo(lastOf, place);
        lastOf[place] = state;
        if (first) {
            first = false;
            base = state;
        }
    }

    /** The state in which the last case shifted by a unit in one sense ended that had to be searched for. */
    Closure likelyShifted(int unit, boolean turned) {
        int place = place(unit, turned);
        return place < lastShifted.length ? lastShifted[place] : base;
    }

    void settledShifted(int unit, boolean turned, Closure state) {
        int place = place(unit, turned);
        lastShifted = upTo(lastShifted, place);
        lastShifted[place] = state;
    }

    private static int place(int unit, boolean turned) {
        return 2 * unit + (turned ? 1 : 0);
    }

    private Closure[] upTo(Closure[] known, int place) {
        if (place < known.length) {
            return known;
        }
        Closure[] more = Arrays.copyOf(known, place + 1);
        Arrays.fill(more, known.length, more.length, base);
        return more;
    }

    private static int place(LoadCase loadCase) {
        return loadCase.size() == 0 ? 0 : 1 + loadCase.unit(loadCase.size() - 1);
    }
}
