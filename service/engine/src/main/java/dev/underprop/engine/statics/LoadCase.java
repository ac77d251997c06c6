package dev.underprop.engine.statics;

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
