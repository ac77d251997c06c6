package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Fit;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import java.util.Arrays;

/** Posts in line or one out of it, in one history and stiffness, and the numbers of its settings. */
final class Variant {

    private final Occurrences occurrences;
    private final History history;
    private final Give give;
    private final Fit fit;
    private final int[] numbers = new int[Ties.values().length];

    Variant(Occurrences occurrences, History history, Give give, Fit fit) {
        this.occurrences = occurrences;
        this.history = history;
        this.give = give;
        this.fit = fit;
        Arrays.fill(numbers, -1);
    }

    Fit fit() {
        return fit;
    }

    Setting setting(Ties ties) {
        return new Setting(history, give, fit, ties);
    }

    /** Number of a case, registered when it is first asked for. */
    int number(Ties ties, int caseIndex) {
        int place = ties.ordinal();
        if (numbers[place] < 0) {
            numbers[place] = occurrences.add(setting(ties));
        }
        return numbers[place] + caseIndex;
    }
}
