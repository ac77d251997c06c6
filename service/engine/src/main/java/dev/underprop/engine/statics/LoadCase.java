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
