package dev.underprop.engine.statics;

import java.util.Arrays;

/**
 * What one contact state answers to several cases: a row a contact, a place in it a case, so that the same is done to all cases in
 * one go. Made once and filled again and again.
 */
final class CaseRows {

    private final int contacts;
    private final double[][] values;
    private double[][] sizes = {};
    private double[] lowest = {};
    private double[] strongest = {};
    private double[] widest = {};
    private double[] furthest = {};
    private double[] imbalance = {};
    private int[] cases = {};
    private int count;
    private int flips;

    CaseRows(int contacts) {
        this.contacts = contacts;
        this.values = new double[contacts][];
        Arrays.fill(values, lowest);
    }

    private void makeRoom(int size) {
        if (lowest.length < size) {
            for (int c = 0; c < contacts; c++) {
                values[c] = new double[size];
            }
            sizes = new double[0][];
            lowest = new double[size];
            strongest = new double[size];
            widest = new double[size];
            furthest = new double[size];
            imbalance = new double[size];
        }
    }

    /**
     * Takes what a state answers to cases, and to one more unit that acts in all of them.
     *
     * @param own by contact and case
     * @param more answer to the unit
     * @param factor of the unit
     * @param moved bound on the movements in each case (m)
     * @param movedMore what the unit adds to it
     * @param which cases
     */
    void take(double[][] own, double[] more, double factor, double[] moved, double movedMore, int[] which) {
        begin(which);
        for (int c = 0; c < contacts; c++) {
            double[] from = own[c];
            double[] to = values[c];
            double add = factor * more[c];
            for (int r = 0; r < which.length; r++) {
                to[r] = from[which[r]] + add;
            }
        }
        for (int r = 0; r < which.length; r++) {
            furthest[r] = moved[which[r]] + movedMore;
        }
    }

    private void begin(int[] which) {
        makeRoom(which.length);
        cases = which;
        count = which.length;
        flips = 0;
        Arrays.fill(imbalance, 0, count, 0);
    }

    /** Takes cases of which nothing is known so far. */
    void take(int[] which) {
        begin(which);
    }

    /** Puts in what was answered to the r-th case, by contact. */
    void put(int r, double[] answer) {
        for (int c = 0; c < contacts; c++) {
            values[c][r] = answer[c];
        }
    }

    /** Goes on to a neighbour of that state. */
    void flip(ContactState state, Flips way) {
        flips = way.count();
        if (sizes.length < flips) {
            double[][] more = Arrays.copyOf(sizes, flips);
            for (int k = sizes.length; k < flips; k++) {
                more[k] = new double[lowest.length];
            }
            sizes = more;
        }
        way.apply(values, sizes, count);
        for (int k = 0; k < flips; k++) {
            double far = state.changed(way.contact(k)).furthest();
            double unbalanced = state.imbalance(way.contact(k));
            double[] size = sizes[k];
            for (int r = 0; r < count; r++) {
                double magnitude = Math.abs(size[r]);
                furthest[r] += magnitude * far;
                imbalance[r] += magnitude * unbalanced;
            }
        }
    }

    /** Looks for what is below zero and for what is large. */
    void test(boolean[] pressing, boolean[] absent, boolean[] pulls) {
        Arrays.fill(lowest, 0, count, Double.POSITIVE_INFINITY);
        Arrays.fill(strongest, 0, count, 0);
        Arrays.fill(widest, 0, count, 0);
        for (int c = 0; c < contacts; c++) {
            if (!absent[c]) {
                double[] most = pressing[c] ? strongest : widest;
                double[] value = values[c];
                for (int r = 0; r < count; r++) {
                    most[r] = Math.max(most[r], Math.abs(value[r]));
                }
                if (!(pressing[c] && pulls[c])) {
                    for (int r = 0; r < count; r++) {
                        lowest[r] = Math.min(lowest[r], value[r]);
                    }
                }
            }
        }
    }

    /** Whether the way to a neighbour may have cost digits in some case. */
    boolean lostDigits(Assembly assembly, double[] total) {
        boolean lost = false;
        for (int r = 0; flips > 0 && r < count; r++) {
            lost |= !assembly.roundingIsSmall(total[cases[r]], furthest[r]);
        }
        return lost;
    }

    /** Whether anything is below zero, or no number, that should not be. */
    boolean doubtful(int r) {
        return !(lowest[r] >= 0);
    }

    boolean outOfBalance(int r, double total) {
        return !(imbalance[r] <= ContactSolver.BALANCE * total);
    }

    /** Greatest force at a closed contact (N), either sign. */
    double strongest(int r) {
        return strongest[r];
    }

    /** Greatest opening at an open contact (m), either sign. */
    double widest(int r) {
        return widest[r];
    }

    /** All contacts of one case. */
    double[] column(int r) {
        double[] column = new double[contacts];
        for (int c = 0; c < contacts; c++) {
            column[c] = values[c][r];
        }
        return column;
    }

    /** Moves a case to a place at or before its own. */
    void keep(int r, int place) {
        if (r != place) {
            for (int c = 0; c < contacts; c++) {
                values[c][place] = values[c][r];
            }
            cases[place] = cases[r];
        }
    }

    /** Leaves the first so many cases. */
    void only(int kept) {
        count = kept;
    }

    int count() {
        return count;
    }

    int caseAt(int r) {
        return cases[r];
    }

    /** Force (N) at a closed contact, opening (m) at an open one, a place a case; not to be changed. */
    double[] values(int contact) {
        return values[contact];
    }
}
