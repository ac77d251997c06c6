package dev.underprop.engine.statics;

/**
 * LDLᵗ factor of a symmetric banded matrix. Cost grows with size times bandwidth squared, which is what keeps a long
 * floor linear in its joists. Method: G. H. Golub, C. F. Van Loan, Matrix Computations, section 4.3.5 (from memory).
 */
final class Banded {

    private final int n;
    private final int band;
    private final double[] a;
    private final boolean[] loose;

    /** @param n size; @param band half bandwidth (0 = diagonal) */
    Banded(int n, int band) {
        this.n = n;
        this.band = band;
        this.a = new double[n * (band + 1)];
        this.loose = new boolean[n];
    }

    private Banded(Banded other) {
        this.n = other.n;
        this.band = other.band;
        this.a = other.a.clone();
        this.loose = new boolean[n];
    }

    Banded copy() {
        return new Banded(this);
    }

    int size() {
        return n;
    }

    /** Adds to entry (i, j) and, being symmetric, (j, i). */
    void add(int i, int j, double value) {
        if (i >= j) {
            a[i * (band + 1) + j - i + band] += value;
        } else {
            a[j * (band + 1) + i - j + band] += value;
        }
    }

    /** Makes freedom i a prescribed one: its row and column become those of the identity. */
    void prescribe(int i) {
        int row = i * (band + 1) + band - i;
        for (int j = Math.max(0, i - band); j < i; j++) {
            a[row + j] = 0;
        }
        a[row + i] = 1;
        for (int k = i + 1; k <= Math.min(n - 1, i + band); k++) {
            a[k * (band + 1) + i - k + band] = 0;
        }
    }

    /** out -= this times x (before {@link #factor}). */
    void subtractProduct(double[] x, double[] out) {
        for (int i = 0; i < n; i++) {
            int row = i * (band + 1) + band - i;
            for (int j = Math.max(0, i - band); j < i; j++) {
                out[i] -= a[row + j] * x[j];
                out[j] -= a[row + j] * x[i];
            }
            out[i] -= a[row + i] * x[i];
        }
    }

    /** Factorises in place. @param scale stiffness used where a diagonal is zero (N/m) */
    void factor(double scale) {
        for (int i = 0; i < n; i++) {
            int row = i * (band + 1) + band - i;
            int low = Math.max(0, i - band);
            double diagonal = a[row + i];
            for (int j = low; j < i; j++) {
                int other = j * (band + 1) + band - j;
                double sum = a[row + j];
                for (int k = Math.max(low, j - band); k < j; k++) {
                    sum -= a[row + k] * a[other + k];
                }
                a[row + j] = sum;
            }
            double pivot = diagonal;
            for (int k = low; k < i; k++) {
                double l = a[row + k] / a[k * (band + 1) + band];
                pivot -= a[row + k] * l;
                a[row + k] = l;
            }
            if (!(pivot > Tolerance.PIVOT * diagonal)) {
                loose[i] = true;
                pivot = Tolerance.PERTURBED_PIVOT * Math.max(diagonal, scale);
            }
            a[row + i] = pivot;
        }
    }

    /** Whether nothing resisted freedom i. */
    boolean loose(int i) {
        return loose[i];
    }

    /** Solves in place after {@link #factor}. */
    void solve(double[] b) {
        for (int i = 0; i < n; i++) {
            int row = i * (band + 1) + band - i;
            double sum = b[i];
            for (int k = Math.max(0, i - band); k < i; k++) {
                sum -= a[row + k] * b[k];
            }
            b[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double value = b[i] / a[i * (band + 1) + band];
            for (int k = i + 1; k <= Math.min(n - 1, i + band); k++) {
                value -= a[k * (band + 1) + i - k + band] * b[k];
            }
            b[i] = value;
        }
    }
}
