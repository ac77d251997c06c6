package dev.underprop.engine;

/** Asked every few cases whether an answer in the making is still wanted. It never changes what the answer is. */
@FunctionalInterface
public interface Halt {

    /** Every answer is wanted, however long it takes. */
    Halt NEVER = () -> false;

    /** Whether nobody wants the answer any more; must be cheap, since it is asked once a case. */
    boolean isAsked();

    /**
     * Goes on, or leaves.
     *
     * @throws Halted when nobody wants the answer any more
     */
    default void check() {
        if (isAsked()) {
            throw new Halted();
        }
    }
}
