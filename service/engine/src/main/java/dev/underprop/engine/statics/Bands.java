package dev.underprop.engine.statics;

/**
 * A symmetric banded matrix that can be factorised and solved. Every vector comes with an array of low parts, which only
 * {@link TwofoldBands} reads and writes.
 */
sealed interface Bands permits PlainBands, TwofoldBands {

    Bands copy();

    /** How many numbers it holds. */
    int numbers();

    /** Adds to entry (i, j) and, being symmetric, (j, i). */
    void add(int i, int j, double value);

    /** Makes freedom i a prescribed one: its row and column become those of the identity. */
    void prescribe(int i);

    /** out -= this times x (before {@link #factor}). */
    void subtractProduct(double[] x, double[] xLow, double[] out, double[] outLow);

    /** Factorises in place. @param scale stiffness used where nothing resists (N/m) */
    void factor(double scale);

    /** Solves in place after {@link #factor}. */
    void solve(double[] b, double[] bLow);
}
