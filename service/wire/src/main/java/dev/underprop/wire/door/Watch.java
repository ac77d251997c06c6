package dev.underprop.wire.door;

/** Follows one answer in the making, and may give it up. Called by the thread that makes the answer; changes nothing in it. */
public interface Watch {

    /** What is being done. */
    enum Stage {
        /** From text to a plan that makes sense, or to its faults. */
        PARSE,
        /** Contacts, forces, checks. */
        SOLVE,
        /** Words and numbers. */
        WRITE
    }

    /** Told of nobody, and giving nothing up. */
    Watch NONE = new Watch() {
        @Override
        public void begins(Stage stage) {
            // Nobody is to be told.
        }

        @Override
        public boolean isOver() {
            return false;
        }
    };

    /** A stage begins, and the one before it ends; a stage may come more than once. */
    void begins(Stage stage);

    /** Whether nobody wants the answer any more; asked often, so it must be cheap. The answer then ends in an exception. */
    boolean isOver();
}
