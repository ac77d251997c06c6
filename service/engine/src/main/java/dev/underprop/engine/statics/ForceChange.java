package dev.underprop.engine.statics;

import java.util.Arrays;

/**
 * What a change of the forces at the contacts does to members whose loads stay as they are: moment and shear change by those
 * of the changed forces alone, which are straight between contacts, so their extremes lie at contacts.
 */
public final class ForceChange {

    private final int[][] contacts;
    private final double[][] places;
    private final boolean[][] presses;
    private final double[] change;
    private double imbalance;
    private final double[] sagging;
    private final double[] hogging;
    private final double[] shear;

    ForceChange(FieldLayout layout, int members, int contactCount) {
        this.contacts = new int[members][];
        this.places = new double[members][];
        this.presses = new boolean[members][];
        this.change = new double[contactCount];
        this.sagging = new double[members];
        this.hogging = new double[members];
        this.shear = new double[members];
        for (int m = 0; m < members; m++) {
            Stations stations = layout.stations(m);
            int[] order = stations.contactsAlong();
            contacts[m] = new int[order.length];
            places[m] = new double[order.length];
            presses[m] = new boolean[order.length];
            for (int i = 0; i < order.length; i++) {
                contacts[m][i] = stations.contact(order[i]);
                places[m][i] = stations.contactAt(order[i]);
                presses[m][i] = stations.presses(order[i]);
            }
        }
    }

    /** Takes the change from one case to another of the same loads. */
    public void between(Solution from, Solution to) {
        Arrays.fill(change, 0);
        to.addForces(1, change);
        from.addForces(-1, change);
        trace();
    }

    /**
     * Follows one member through cases of a block that have been changed.
     *
     * @param sagging receives the greatest sagging moment of the change (N·m), never negative, a place a case
     * @param hogging receives the greatest hogging moment (N·m), never negative
     * @param shear receives the greatest shear (N)
     */
    public void along(int member, CaseGroup group, double[] sagging, double[] hogging, double[] shear) {
        int n = group.size();
        double[] v = new double[n];
        double[] moment = new double[n];
        Arrays.fill(sagging, 0, n, 0);
        Arrays.fill(hogging, 0, n, 0);
        Arrays.fill(shear, 0, n, 0);
        double before = 0;
        for (int i = 0; i < contacts[member].length; i++) {
            double step = places[member][i] - before;
            before = places[member][i];
            for (int r = 0; r < n; r++) {
                moment[r] += v[r] * step;
                sagging[r] = Math.max(sagging[r], moment[r]);
                hogging[r] = Math.max(hogging[r], -moment[r]);
            }
            addForces(contacts[member][i], presses[member][i] ? -1 : 1, group, v);
            for (int r = 0; r < n; r++) {
                shear[r] = Math.max(shear[r], Math.abs(v[r]));
            }
        }
    }

    private static void addForces(int contact, double sign, CaseGroup group, double[] v) {
        for (int r = 0; r < group.size(); r++) {
            v[r] -= sign * group.before(contact, r);
        }
        if (group.closed(contact)) {
            double[] now = group.values(contact);
            for (int r = 0; r < group.size(); r++) {
                v[r] += sign * now[r];
            }
        }
    }

    /** Takes forces (N) by contact that should hold each other in balance on every member. */
    void of(double[] forces) {
        System.arraycopy(forces, 0, change, 0, change.length);
        trace();
    }

    private void trace() {
        imbalance = 0;
        for (int m = 0; m < contacts.length; m++) {
            double most = 0;
            double least = 0;
            double steepest = 0;
            double v = 0;
            double moment = 0;
            double before = 0;
            for (int i = 0; i < contacts[m].length; i++) {
                moment += v * (places[m][i] - before);
                before = places[m][i];
                most = Math.max(most, moment);
                least = Math.min(least, moment);
                double force = change[contacts[m][i]];
                v += presses[m][i] ? -force : force;
                steepest = Math.max(steepest, Math.abs(v));
            }
            double length = before - (places[m].length > 0 ? places[m][0] : 0);
            imbalance = Math.max(imbalance, Math.max(Math.abs(v), length > 0 ? Math.abs(moment) / length : 0));
            sagging[m] = most;
            hogging[m] = -least;
            shear[m] = steepest;
        }
    }

    /** Greatest force (N) by which any member is out of balance, moments by the distance of its outer contacts. */
    double imbalance() {
        return imbalance;
    }

    /** Greatest sagging moment of the change (N·m), never negative. */
    public double sagging(int member) {
        return sagging[member];
    }

    /** Greatest hogging moment of the change (N·m), as a number never negative. */
    public double hogging(int member) {
        return hogging[member];
    }

    /** Greatest shear of the change (N). */
    public double shear(int member) {
        return shear[member];
    }
}
