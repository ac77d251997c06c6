package dev.underprop.engine.assess;

import dev.underprop.engine.check.Bound;

/**
 * How things are taken to be, where nobody knows.
 *
 * @param history how the load came onto the shores
 * @param give how stiff posts and ground are
 * @param fit which post is out of line
 * @param ties whether fastenings hold
 */
record Setting(History history, Give give, Fit fit, Ties ties) {

    /** How the load came onto the shores. */
    enum History {
        /** The floor hung as it was found; the shores were set snug under it. */
        AS_FOUND("as found"),
        /** The shores were there before any load. */
        WISHED("wished in place");

        private final String words;

        History(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** How stiff posts and ground are. */
    enum Give {
        RIGID,
        SOFT,
        STIFF;

        String words() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Whether fastenings hold. */
    enum Ties {
        /** All of them, described or not. */
        HOLD("as described"),
        /** Those whose strength is described. */
        DESCRIBED("undescribed ones released"),
        /** None. */
        RELEASED("released");

        private final String words;

        Ties(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * One post out of line by the fit-up tolerance, or none.
     *
     * @param words empty when none is
     * @param unit unit of changed gaps in statics
     * @param factor 1 when the post is low, -1 when it is high
     */
    record Fit(String words, int unit, double factor) {
        static final Fit TRUE = new Fit("", -1, 0);

        boolean isTrue() {
            return words.isEmpty();
        }
    }

    Bound bound() {
        return new Bound(history.words(), give.words(), fit.words(), ties.words());
    }
}
