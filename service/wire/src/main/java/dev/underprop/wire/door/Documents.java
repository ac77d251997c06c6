package dev.underprop.wire.door;

/** Writes the contract's models as JSON: absent members left out, numbers with at most nine significant digits. */
public final class Documents {

    private Documents() {}

    /** UTF-8 JSON of a model, two-space indented if {@code pretty}, always the same bytes for the same model. */
    public static byte[] json(Object model, boolean pretty) {
        throw new UnsupportedOperationException("not built");
    }
}
