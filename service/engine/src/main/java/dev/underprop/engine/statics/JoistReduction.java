package dev.underprop.engine.statics;

import java.util.stream.IntStream;

/**
 * A joist in one contact state: what it offers to the carriers it is tied to. Contacts are prescribed (closed on rigid
 * ground), tied (closed on a carrier) or eliminated (open, or closed on a spring).
 */
final class JoistReduction {

    private final CondensedJoist joist;
    private final double regular;
    private final int[] prescribed;
    private final int[] tied;
    private final int[] free;
    private final boolean[] closed;
    private final Dense factor;
    private final double[][] follow;
    private final double[] offered;

    JoistReduction(CondensedJoist joist, long mask, double regular) {
        this.joist = joist;
        this.regular = regular;
        int n = joist.size();
        this.closed = new boolean[n];
        for (int i = 0; i < n; i++) {
            closed[i] = (mask >> i & 1) != 0;
        }
        this.prescribed = IntStream.range(0, n)
                .filter(i -> closed[i] && joist.support(i) == CondensedJoist.Support.RIGID_GROUND)
                .toArray();
        this.tied = IntStream.range(0, n)
                .filter(i -> closed[i] && joist.support(i) == CondensedJoist.Support.CARRIER)
                .toArray();
        this.free = IntStream.range(0, n)
                .filter(i -> !closed[i] || joist.support(i) == CondensedJoist.Support.SPRING_GROUND)
                .toArray();
        this.factor = factorise();
        this.follow = new double[tied.length][];
        for (int t = 0; t < tied.length; t++) {
            follow[t] = column(tied[t]);
            factor.solve(follow[t]);
        }
        this.offered = offered();
    }

    private Dense factorise() {
        int m = free.length;
        double[] matrix = new double[m * m];
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                matrix[i * m + j] = k(free[i], free[j]);
            }
            matrix[i * m + i] += (closed[free[i]] ? joist.stiffness(free[i]) : 0);
        }
        return new Dense(matrix, m, joist.scale());
    }

    /** The joist's stiffness; its weak springs stand at every contact, open or closed, so that all states are of one structure. */
    private double k(int i, int j) {
        return joist.k(i, j) + (i == j ? regular : 0);
    }

    private double[] column(int of) {
        double[] column = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            column[i] = k(free[i], of);
        }
        return column;
    }

    private double[] offered() {
        int s = tied.length;
        double[] out = new double[s * s];
        for (int i = 0; i < s; i++) {
            for (int j = 0; j < s; j++) {
                double sum = k(tied[i], tied[j]);
                for (int e = 0; e < free.length; e++) {
                    sum -= k(free[e], tied[i]) * follow[j][e];
                }
                out[i * s + j] = sum;
            }
        }
        return out;
    }

    int ties() {
        return tied.length;
    }

    /** Number, along the joist, of the t-th tied contact. */
    int tie(int t) {
        return tied[t];
    }

    /** Stiffness (N/m) the joist lends its carriers between ties i and j. */
    double offered(int i, int j) {
        return offered[i * tied.length + j];
    }

    /** Deflections of the free contacts with the ties held at zero; load and gaps at each contact, empty when none. */
    double[] freeDeflections(double[] load, double[] gaps) {
        double[] b = new double[free.length];
        for (int e = 0; e < free.length; e++) {
            int i = free[e];
            b[e] = load.length == 0 ? 0 : load[i];
            if (gaps.length > 0) {
                b[e] += closed[i] ? joist.stiffness(i) * gaps[i] : 0;
                for (int p : prescribed) {
                    b[e] -= k(i, p) * gaps[p];
                }
            }
        }
        factor.solve(b);
        return b;
    }

    /** Force (N) on the t-th tie's carrier when that carrier stands still at zero deflection. */
    double heldForce(int t, double[] load, double[] freeDeflections, double[] gaps) {
        int i = tied[t];
        double force = load.length == 0 ? 0 : load[i];
        for (int e = 0; e < free.length; e++) {
            force -= k(i, free[e]) * freeDeflections[e];
        }
        if (gaps.length > 0) {
            for (int p : prescribed) {
                force -= k(i, p) * gaps[p];
            }
            for (int u = 0; u < tied.length; u++) {
                force -= offered(t, u) * gaps[tied[u]];
            }
        }
        return force;
    }

    /**
     * Recovers deflections and forces.
     *
     * @param carrier deflection of the carrier (m) at each contact of the joist that is on a carrier
     * @param deflection receives the joist's deflection at each contact (m)
     * @param force receives the contact force (N), zero where open
     */
    void recover(
            double[] load,
            double[] freeDeflections,
            double[] carrier,
            double[] gaps,
            double[] deflection,
            double[] force) {
        boolean offsets = gaps.length > 0;
        for (int p : prescribed) {
            deflection[p] = offsets ? gaps[p] : 0;
        }
        for (int i : tied) {
            deflection[i] = carrier[i] + (offsets ? gaps[i] : 0);
        }
        for (int e = 0; e < free.length; e++) {
            double v = freeDeflections[e];
            for (int t = 0; t < tied.length; t++) {
                v -= follow[t][e] * deflection[tied[t]];
            }
            deflection[free[e]] = v;
        }
        for (int i : free) {
            force[i] = closed[i] ? joist.stiffness(i) * (deflection[i] - (offsets ? gaps[i] : 0)) : 0;
        }
        recoverReactions(prescribed, load, deflection, force);
        recoverReactions(tied, load, deflection, force);
    }

    private void recoverReactions(int[] which, double[] load, double[] deflection, double[] force) {
        for (int i : which) {
            double sum = load.length == 0 ? 0 : load[i];
            for (int j = 0; j < joist.size(); j++) {
                sum -= k(i, j) * deflection[j];
            }
            force[i] = sum;
        }
    }
}
