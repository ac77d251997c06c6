package dev.underprop.engine.statics;

import java.util.BitSet;

/**
 * The way from one contact state to a neighbour in which a few contacts have changed, without factorising the neighbour: a
 * closed contact opens by as much clear space as takes its force away, an open one closes by as much force as takes its
 * opening away (the principal pivot of linear complementarity; R. W. Cottle, J.-S. Pang, R. E. Stone, The Linear
 * Complementarity Problem, 1992, ch. 2, from memory).
 */
final class Flips {

    /**
     * A pivot below this part of what it is made of has lost too many digits, or belongs to a mechanism; the neighbour must
     * be factorised then.
     */
    private static final double PIVOT = 1e-4;

    private final int[] contacts;
    private final boolean[] closes;
    private final double[][] columns;
    private final double[] imbalance;
    private final double[] scale;
    private final double[] factor;
    private final int[] order;
    private final boolean fit;
    private final boolean[] pressing;

    /**
     * @param state the state from which contacts change; nothing may be loose in it
     * @param flipped the contacts that change
     */
    Flips(ContactState state, BitSet flipped) {
        int n = flipped.cardinality();
        this.contacts = flipped.stream().toArray();
        this.closes = new boolean[n];
        this.columns = new double[n][];
        this.imbalance = new double[n];
        this.scale = new double[n];
        this.factor = new double[n * n];
        this.order = new int[n];
        this.pressing = state.pressing().clone();
        for (int k = 0; k < n; k++) {
            closes[k] = !state.pressing(contacts[k]);
            pressing[contacts[k]] = closes[k];
            columns[k] = state.changed(contacts[k]).values();
            imbalance[k] = state.imbalance(contacts[k]);
        }
        this.fit = assemble(state) && state.firm() && factorise() && state.firmWith(flipped);
    }

    private boolean assemble(ContactState state) {
        int n = contacts.length;
        for (int k = 0; k < n; k++) {
            double own = columns[k][contacts[k]] + (closes[k] ? state.flexibility(contacts[k]) : 0);
            scale[k] = Math.sqrt(Math.abs(own));
            if (!(Math.abs(own) > PIVOT * greatest(state, k)) || Double.isInfinite(scale[k])) {
                return false;
            }
            factor[k * n + k] = StrictMath.signum(own);
        }
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                if (i != k) {
                    factor[i * n + k] = columns[k][contacts[i]] / (scale[i] * scale[k]);
                }
            }
        }
        return true;
    }

    /** Greatest force that opening a contact calls up; what closing one does is measured by itself. */
    private double greatest(ContactState state, int k) {
        double greatest = 0;
        for (int c = 0; !closes[k] && c < columns[k].length; c++) {
            greatest = state.pressing(c) ? Math.max(greatest, Math.abs(columns[k][c])) : greatest;
        }
        return greatest;
    }

    private boolean factorise() {
        int n = contacts.length;
        for (int p = 0; p < n; p++) {
            int best = p;
            for (int i = p + 1; i < n; i++) {
                best = Math.abs(factor[i * n + p]) > Math.abs(factor[best * n + p]) ? i : best;
            }
            order[p] = best;
            swap(p, best);
            double pivot = factor[p * n + p];
            if (!(Math.abs(pivot) > PIVOT)) {
                return false;
            }
            for (int i = p + 1; i < n; i++) {
                double part = factor[i * n + p] / pivot;
                factor[i * n + p] = part;
                for (int k = p + 1; k < n; k++) {
                    factor[i * n + k] -= part * factor[p * n + k];
                }
            }
        }
        return true;
    }

    private void swap(int a, int b) {
        int n = contacts.length;
        for (int k = 0; a != b && k < n; k++) {
            double kept = factor[a * n + k];
            factor[a * n + k] = factor[b * n + k];
            factor[b * n + k] = kept;
        }
    }

    /** Whether the way can be gone without losing digits. */
    boolean fit() {
        return fit;
    }

    /** How far each contact changes: clear space (m) for one that opens, force (N) for one that closes. */
    double[] sizes(double[] values) {
        int n = contacts.length;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = -values[contacts[i]] / scale[i];
        }
        for (int p = 0; p < n; p++) {
            double here = x[order[p]];
            x[order[p]] = x[p];
            x[p] = here;
        }
        for (int p = 0; p < n; p++) {
            for (int i = p + 1; i < n; i++) {
                x[i] -= factor[i * n + p] * x[p];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= factor[i * n + k] * x[k];
            }
            x[i] /= factor[i * n + i];
        }
        for (int i = 0; i < n; i++) {
            x[i] /= scale[i];
        }
        return x;
    }

    /** The neighbour's values from the state's own: force where closed there, opening where open. */
    double[] apply(double[] values, double[] sizes) {
        double[] changed = values.clone();
        for (int k = 0; k < contacts.length; k++) {
            double size = sizes[k];
            double[] column = columns[k];
            for (int c = 0; c < changed.length; c++) {
                changed[c] += size * column[c];
            }
        }
        for (int k = 0; k < contacts.length; k++) {
            changed[contacts[k]] = closes[k] ? sizes[k] : -sizes[k];
        }
        return changed;
    }

    /**
     * The same for many cases at once.
     *
     * @param values the state's own, by contact and case; receives the neighbour's
     * @param sizes receives how far each contact changes, by change and case
     * @param count how many cases
     */
    void apply(double[][] values, double[][] sizes, int count) {
        int n = contacts.length;
        double[][] x = new double[n][];
        for (int i = 0; i < n; i++) {
            x[i] = sizes[i];
            divide(values[contacts[i]], -scale[i], x[i], count);
        }
        for (int p = 0; p < n; p++) {
            double[] here = x[order[p]];
            x[order[p]] = x[p];
            x[p] = here;
        }
        for (int p = 0; p < n; p++) {
            for (int i = p + 1; i < n; i++) {
                add(-factor[i * n + p], x[p], x[i], count);
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                add(-factor[i * n + k], x[k], x[i], count);
            }
            divide(x[i], factor[i * n + i], x[i], count);
        }
        for (int i = 0; i < n; i++) {
            divide(x[i], scale[i], x[i], count);
            sizes[i] = x[i];
        }
        for (int k = 0; k < n; k++) {
            for (int c = 0; c < values.length; c++) {
                add(columns[k][c], x[k], values[c], count);
            }
        }
        for (int k = 0; k < n; k++) {
            double sign = closes[k] ? 1 : -1;
            double[] changed = values[contacts[k]];
            for (int r = 0; r < count; r++) {
                changed[r] = sign * x[k][r];
            }
        }
    }

    private static void divide(double[] from, double by, double[] to, int count) {
        for (int r = 0; r < count; r++) {
            to[r] = from[r] / by;
        }
    }

    private static void add(double factor, double[] from, double[] to, int count) {
        for (int r = 0; r < count; r++) {
            to[r] += factor * from[r];
        }
    }

    /** A bound on the force (N) by which changes of these sizes leave any member out of balance. */
    double imbalance(double[] sizes) {
        double sum = 0;
        for (int k = 0; k < sizes.length; k++) {
            sum += Math.abs(sizes[k]) * imbalance[k];
        }
        return sum;
    }

    /** By contact, whether it is closed in the neighbour; not to be changed. */
    boolean[] pressing() {
        return pressing;
    }

    /** How many numbers it holds by itself. */
    int numbers() {
        return factor.length + 4 * contacts.length + pressing.length / 4;
    }

    int count() {
        return contacts.length;
    }

    int contact(int k) {
        return contacts[k];
    }
}
