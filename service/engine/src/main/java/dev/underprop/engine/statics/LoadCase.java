package dev.underprop.engine.statics;

import java.util.Arrays;

/**
 * A case: which unit loads act, and by what factor.
 *
 * @param units numbers of the units
 * @param factors factor of each
 */
public record LoadCase(int[] units, double[] factors) {

    public LoadCase {
        if (units.length != factors.length) {
            throw new IllegalArgumentException("a factor for every unit");
        }
        for (double factor : factors) {
            if (!Double.isFinite(factor)) {
                throw new IllegalArgumentException("factors must be finite");
            }
        }
        units = units.clone();
        factors = factors.clone();
    }

    /** This case with one more unit acting, after the others. */
    public LoadCase with(int unit, double factor) {
        int[] more = Arrays.copyOf(units, units.length + 1);
        double[] with = Arrays.copyOf(factors, more.length);
        more[units.length] = unit;
        with[units.length] = factor;
        return new LoadCase(more, with);
    }

    /** What acts in this case beyond what acts in another, less where negative. */
    public LoadCase minus(LoadCase other) {
        double[] less = new double[other.factors.length];
        for (int i = 0; i < less.length; i++) {
            less[i] = -other.factors[i];
        }
        return plus(new LoadCase(other.units, less));
    }

    /** This case with more of some units acting, whether they act already or not; a unit of which nothing is left acts no more. */
    LoadCase plus(LoadCase more) {
        int[] all = Arrays.copyOf(units, units.length + more.units.length);
        double[] sums = Arrays.copyOf(factors, all.length);
        int n = units.length;
        for (int i = 0; i < more.units.length; i++) {
            int at = 0;
            while (at < n && all[at] != more.units[i]) {
                at++;
            }
            all[at] = more.units[i];
            sums[at] += more.factors[i];
            n = Math.max(n, at + 1);
        }
        int kept = 0;
        for (int i = 0; i < n; i++) {
            all[kept] = all[i];
            sums[kept] = sums[i];
            kept += sums[i] == 0 ? 0 : 1;
        }
        return new LoadCase(Arrays.copyOf(all, kept), Arrays.copyOf(sums, kept));
    }

    /** How many units act. */
    public int size() {
        return units.length;
    }

    /** Number of the i-th acting unit. */
    public int unit(int i) {
        return units[i];
    }

    /** Factor of the i-th acting unit. */
    public double factor(int i) {
        return factors[i];
    }
}
