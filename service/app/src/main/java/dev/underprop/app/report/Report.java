package dev.underprop.app.report;

/** One way to tell what became of many plans. */
public interface Report extends AutoCloseable {

    /**
     * Renders one plan; called on any thread.
     *
     * @return what is left to be done, in the order of the input, on one thread
     */
    Runnable prepare(Judgement judgement);

    /**
     * Ends the report and puts it in its place.
     *
     * @param end how the run ended
     * @throws java.io.UncheckedIOException when it cannot be written
     */
    void complete(End end);

    /** Takes away what is not complete. */
    @Override
    void close();
}
