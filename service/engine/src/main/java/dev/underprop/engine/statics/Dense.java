package dev.underprop.engine.statics;

/**
 * Cholesky factor of a small symmetric matrix, row-major. A pivot that nothing resists is replaced by a small
 * one, so that the direction of a mechanism can still be followed.
 */
final class Dense {

    private final int n;
    private final double[] factor;

    /** @param matrix n by n, symmetric; not changed. @param scale stiffness used where a diagonal is zero (N/m) */
    Dense(double[] matrix, int n, double scale) {
        this.n = n;
        this.factor = matrix.clone();
        for (int i = 0; i < n; i++) {
            double diagonal = factor[i * n + i];
            for (int j = 0; j < i; j++) {
                double sum = factor[i * n + j];
                for (int k = 0; k < j; k++) {
                    sum -= factor[i * n + k] * factor[j * n + k];
                }
                factor[i * n + j] = sum / factor[j * n + j];
            }
            factor[i * n + i] = Math.sqrt(pivot(i, diagonal, scale));
        }
    }

    private double pivot(int i, double diagonal, double scale) {
        double pivot = diagonal;
        for (int k = 0; k < i; k++) {
            pivot -= factor[i * n + k] * factor[i * n + k];
        }
        if (pivot > Tolerance.PIVOT * diagonal) {
            return pivot;
        }
        return Tolerance.PERTURBED_PIVOT * Math.max(diagonal, scale);
    }

    /** Solves in place. */
    void solve(double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) {
                sum -= factor[i * n + k] * b[k];
            }
            b[i] = sum / factor[i * n + i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int k = i + 1; k < n; k++) {
                sum -= factor[k * n + i] * b[k];
            }
            b[i] = sum / factor[i * n + i];
        }
    }
}
