package dev.underprop.engine.plan;

/** What holds a joist down on a bearing. */
public sealed interface Fastening {

    /** Nothing: the joist can lift off. */
    record Loose() implements Fastening {}

    /**
     * Fastened, by something whose strength is described.
     *
     * @param uplift allowable uplift for each joist (N), positive
     * @param by what it is
     */
    record Held(double uplift, String by) implements Fastening {
        public Held {
            Sense.positive(uplift, "uplift capacity");
        }
    }

    /**
     * Said to be fastened, strength not described: never relied upon.
     *
     * @param by what it is
     */
    record Undescribed(String by) implements Fastening {}
}
