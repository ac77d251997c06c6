package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Contact states in which cases by the same rules ended, to begin the next from. */
final class Recall {

    private Closure base;
    private boolean first = true;

    private final Map<Integer, Closure> shifted = new HashMap<>();

    /** By final unit; the first place is for cases without any. */
    private Closure[] lastOf = {};

    private final Rules rules;
    private final boolean[] absent;
    private final boolean[] pulls;

    Recall(Closure base, Rules rules, int contacts) {
        this.base = base;
        this.rules = rules;
        this.absent = new boolean[contacts];
        this.pulls = new boolean[contacts];
        for (int c = 0; c < contacts; c++) {
            absent[c] = rules.isAbsent(c);
            pulls[c] = rules.canPull(c);
        }
    }

    /** A case to be solved by these rules. */
    Question question(LoadCase loadCase, Loadings loadings) {
        return new Question(loadCase, rules, absent, pulls, loadings.total(loadCase), loadings.offset(loadCase));
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
        if (place >= lastOf.length) {
            int known = lastOf.length;
            lastOf = Arrays.copyOf(lastOf, place + 1);
            Arrays.fill(lastOf, known, lastOf.length, base);
        }
        lastOf[place] = state;
        if (first) {
            first = false;
            base = state;
        }
    }

    /** The state in which the last case shifted by a unit in one sense ended that had to be searched for. */
    Closure likelyShifted(int unit, boolean turned) {
        return shifted.getOrDefault(2 * unit + (turned ? 1 : 0), base);
    }

    void settledShifted(int unit, boolean turned, Closure state) {
        shifted.put(2 * unit + (turned ? 1 : 0), state);
    }

    private static int place(LoadCase loadCase) {
        return loadCase.size() == 0 ? 0 : 1 + loadCase.unit(loadCase.size() - 1);
    }
}
