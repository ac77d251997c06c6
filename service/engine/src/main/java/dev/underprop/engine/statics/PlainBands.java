package dev.underprop.engine.statics;

/**
 * LDLᵗ factor of a symmetric banded matrix in ordinary doubles. Cost grows with size times bandwidth squared, which is what
 * keeps a long floor linear in its joists. Method: G. H. Golub, C. F. Van Loan, Matrix Computations, section 4.3.5 (from
 * memory).
 */
final class PlainBands implements Bands {

    private final int n;
    private final int band;
    private final double[] a;

    /** @param n size; @param band half bandwidth (0 = diagonal) */
    PlainBands(int n, int band) {
        this.n = n;
        this.band = band;
        this.a = new double[n * (band + 1)];
    }

    private PlainBands(PlainBands other) {
        this.n = other.n;
        this.band = other.band;
        this.a = other.a.clone();
    }

    @Override
    public PlainBands copy() {
        return new PlainBands(this);
    }

    @Override
    public int numbers() {
        return a.length;
    }

    private int row(int i) {
        return i * (band + 1) + band - i;
    }

    @Override
    public void add(int i, int j, double value) {
        a[i >= j ? row(i) + j : row(j) + i] += value;
    }

    /** Greatest magnitude on the diagonal. */
    double greatest() {
        double greatest = 0;
        for (int i = 0; i < n; i++) {
            greatest = Math.max(greatest, Math.abs(a[row(i) + i]));
        }
        return greatest;
    }

    @Override
    public void prescribe(int i) {
        for (int j = Math.max(0, i - band); j < i; j++) {
            a[row(i) + j] = 0;
        }
        for (int k = i + 1; k <= Math.min(n - 1, i + band); k++) {
            a[row(k) + i] = 0;
        }
        a[row(i) + i] = 1;
    }

    @Override
    public void subtractProduct(double[] x, double[] xLow, double[] out, double[] outLow) {
        for (int i = 0; i < n; i++) {
            int row = row(i);
            for (int j = Math.max(0, i - band); j < i; j++) {
                out[i] -= a[row + j] * x[j];
                out[j] -= a[row + j] * x[i];
            }
            out[i] -= a[row + i] * x[i];
        }
    }

    @Override
    public void factor(double scale) {
        for (int i = 0; i < n; i++) {
            int row = row(i);
            int low = Math.max(0, i - band);
            double diagonal = a[row + i];
            for (int j = low; j < i; j++) {
                int other = row(j);
                double sum = a[row + j];
                for (int k = Math.max(low, j - band); k < j; k++) {
                    sum -= a[row + k] * a[other + k];
                }
                a[row + j] = sum;
            }
            double pivot = diagonal;
            for (int k = low; k < i; k++) {
                double l = a[row + k] / a[row(k) + k];
                pivot -= a[row + k] * l;
                a[row + k] = l;
            }
            a[row + i] = pivot > Tolerance.PIVOT * diagonal ? pivot : Tolerance.PERTURBED_PIVOT * scale;
        }
    }

    @Override
    public void solve(double[] b, double[] bLow) {
        for (int i = 0; i < n; i++) {
            int row = row(i);
            double sum = b[i];
            for (int k = Math.max(0, i - band); k < i; k++) {
                sum -= a[row + k] * b[k];
            }
            b[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double value = b[i] / a[row(i) + i];
            for (int k = i + 1; k <= Math.min(n - 1, i + band); k++) {
                value -= a[row(k) + i] * b[k];
            }
            b[i] = value;
        }
    }
}
