package dev.underprop.engine.statics;

/**
 * LDLᵗ factor of a symmetric banded matrix, every number kept as a {@link Twofold}. Cost grows with size times bandwidth
 * squared, which is what keeps a long floor linear in its joists. Method: G. H. Golub, C. F. Van Loan, Matrix
 * Computations, section 4.3.5 (from memory).
 */
final class TwofoldBands implements Bands {

    private final int n;
    private final int band;
    private final double[] a;
    private final double[] low;

    /** @param n size; @param band half bandwidth (0 = diagonal) */
    TwofoldBands(int n, int band) {
        this.n = n;
        this.band = band;
        this.a = new double[n * (band + 1)];
        this.low = new double[n * (band + 1)];
    }

    private TwofoldBands(TwofoldBands other) {
        this.n = other.n;
        this.band = other.band;
        this.a = other.a.clone();
        this.low = other.low.clone();
    }

    @Override
    public TwofoldBands copy() {
        return new TwofoldBands(this);
    }

    @Override
    public int numbers() {
        return 2 * a.length;
    }

    @Override
    public void add(int i, int j, double value) {
        add(i, j, new Twofold().set(value, 0));
    }

    /** Adds to entry (i, j) and, being symmetric, (j, i). */
    void add(int i, int j, Twofold value) {
        int at = i >= j ? place(i, j) : place(j, i);
        put(at, value.add(a[at], low[at]));
    }

    private int place(int i, int j) {
        return i * (band + 1) + j - i + band;
    }

    private void put(int at, Twofold value) {
        a[at] = value.hi();
        low[at] = value.lo();
    }

    @Override
    public void prescribe(int i) {
        Twofold value = new Twofold();
        for (int j = Math.max(0, i - band); j < i; j++) {
            put(place(i, j), value);
        }
        for (int k = i + 1; k <= Math.min(n - 1, i + band); k++) {
            put(place(k, i), value);
        }
        put(place(i, i), value.set(1, 0));
    }

    @Override
    public void subtractProduct(double[] x, double[] xLow, double[] out, double[] outLow) {
        Twofold sum = new Twofold();
        for (int i = 0; i < n; i++) {
            sum.set(out[i], outLow[i]);
            for (int j = Math.max(0, i - band); j <= Math.min(n - 1, i + band); j++) {
                int at = j <= i ? place(i, j) : place(j, i);
                sum.subtractProduct(a[at], low[at], x[j], xLow[j]);
            }
            out[i] = sum.hi();
            outLow[i] = sum.lo();
        }
    }

    /** Factorises in place. @param scale stiffness used where nothing resists (N/m) */
    public void factor(double scale) {
        Twofold sum = new Twofold();
        Twofold l = new Twofold();
        for (int i = 0; i < n; i++) {
            int first = Math.max(0, i - band);
            for (int j = first; j < i; j++) {
                int at = place(i, j);
                sum.set(a[at], low[at]);
                for (int k = Math.max(first, j - band); k < j; k++) {
                    int left = place(i, k);
                    int right = place(j, k);
                    sum.subtractProduct(a[left], low[left], a[right], low[right]);
                }
                put(at, sum);
            }
            int pivot = place(i, i);
            double diagonal = a[pivot];
            sum.set(diagonal, low[pivot]);
            for (int k = first; k < i; k++) {
                int at = place(i, k);
                int other = place(k, k);
                l.set(a[at], low[at]).divide(a[other], low[other]);
                sum.subtractProduct(a[at], low[at], l.hi(), l.lo());
                put(at, l);
            }
            if (!(sum.hi() > Tolerance.TWOFOLD_PIVOT * diagonal)) {
                sum.set(Tolerance.PERTURBED_PIVOT * scale, 0);
            }
            put(pivot, sum);
        }
    }

    @Override
    public void solve(double[] b, double[] bLow) {
        Twofold sum = new Twofold();
        for (int i = 0; i < n; i++) {
            sum.set(b[i], bLow[i]);
            for (int k = Math.max(0, i - band); k < i; k++) {
                int at = place(i, k);
                sum.subtractProduct(a[at], low[at], b[k], bLow[k]);
            }
            b[i] = sum.hi();
            bLow[i] = sum.lo();
        }
        for (int i = n - 1; i >= 0; i--) {
            int pivot = place(i, i);
            sum.set(b[i], bLow[i]).divide(a[pivot], low[pivot]);
            for (int k = i + 1; k <= Math.min(n - 1, i + band); k++) {
                int at = place(k, i);
                sum.subtractProduct(a[at], low[at], b[k], bLow[k]);
            }
            b[i] = sum.hi();
            bLow[i] = sum.lo();
        }
    }
}
