package dev.underprop.engine.lift;

/**
 * From the least to the greatest over all bounds.
 *
 * @param least SI, NaN where nothing is known
 * @param greatest not less
 */
public record Span(double least, double greatest) {

    /** Nothing is known. */
    public static final Span UNKNOWN = new Span(Double.NaN, Double.NaN);

    static final Span NOTHING = new Span(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

    public boolean known() {
        return !Double.isNaN(least);
    }

    Span with(double value) {
        return new Span(Math.min(least, value), Math.max(greatest, value));
    }

    Span plus(double value) {
        return new Span(least + value, greatest + value);
    }
}
