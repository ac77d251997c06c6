package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.statics.CaseGroup;
import dev.underprop.engine.statics.Solution;
import java.util.Arrays;

/** What the contacts of a situation met over all its cases and settings. */
final class Met {

    private final int[] shoreOf;
    private final int[] bearingOf;
    private final double[] onShore;
    private final double[] onBearing;
    private final Peaks greatest;
    private final Peaks least;
    private final Peaks lift;
    private final Peaks strength;
    private final Peaks shores;
    private final Peaks bearings;
    private final double[][] byHistory;
    private final boolean[] everOpen;
    private final boolean[] everClosed;
    private final int[] openIn;
    private final double[] greatestOpening;
    private double penetration;

    Met(PlanFrame frame) {
        this.onShore = new double[frame.plan().shores().size()];
        this.onBearing = new double[frame.plan().floor().bearings().size()];
        this.shoreOf = new int[frame.contacts()];
        this.bearingOf = new int[frame.contacts()];
        for (int c = 0; c < frame.contacts(); c++) {
            ContactPlace place = frame.places().get(c);
            shoreOf[c] = place instanceof ContactPlace.OnPost head ? head.shore() : -1;
            bearingOf[c] = place instanceof ContactPlace.OnBearing seat ? seat.bearing() : -1;
        }
        int contacts = frame.contacts();
        this.greatest = new Peaks(contacts);
        this.least = new Peaks(contacts);
        this.lift = new Peaks(contacts);
        this.strength = new Peaks(contacts);
        this.shores = new Peaks(frame.plan().shores().size());
        this.bearings = new Peaks(frame.plan().floor().bearings().size());
        this.byHistory = new double[History.values().length][contacts];
        this.everOpen = new boolean[contacts];
        this.everClosed = new boolean[contacts];
        this.openIn = new int[contacts];
        this.greatestOpening = new double[contacts];
    }

    /** Takes one settled case of allowable stress. */
    void allowable(Solution solution, Setting setting, int occurrence) {
        double[] here = byHistory[setting.history().ordinal()];
        Arrays.fill(onShore, 0);
        Arrays.fill(onBearing, 0);
        for (int c = 0; c < everOpen.length; c++) {
            double force = solution.force(c);
            greatest.note(c, force, Double.NaN, occurrence);
            least.note(c, -force, Double.NaN, occurrence);
            lift.note(c, -force, Double.NaN, occurrence);
            here[c] = Math.max(here[c], force);
            if (setting.fit().isTrue()) {
                noteState(c, solution, occurrence);
            }
            if (shoreOf[c] >= 0) {
                onShore[shoreOf[c]] += force;
            } else if (bearingOf[c] >= 0) {
                onBearing[bearingOf[c]] += force;
            }
        }
        note(onShore, shores, occurrence);
        note(onBearing, bearings, occurrence);
    }

    /**
     * Takes settled cases of allowable stress with a post out of line, which ended in one contact state.
     *
     * @param index number of a case by its place in its block
     * @param number to be added to it
     */
    void allowable(CaseGroup group, Setting setting, int[] index, int number) {
        double[] here = byHistory[setting.history().ordinal()];
        double[][] onShores = new double[onShore.length][group.size()];
        double[][] onBearings = new double[onBearing.length][group.size()];
        double[] none = new double[group.size()];
        for (int c = 0; c < everOpen.length; c++) {
            double[] forces = group.closed(c) ? group.values(c) : none;
            Peaks.note(c, forces, group, index, number, greatest, least);
            lift.note(c, least.value(c), Double.NaN, least.caseOf(c));
            here[c] = Math.max(here[c], greatest(forces, group.size()));
            if (shoreOf[c] >= 0) {
                add(forces, onShores[shoreOf[c]]);
            } else if (bearingOf[c] >= 0) {
                add(forces, onBearings[bearingOf[c]]);
            }
        }
        for (int s = 0; s < onShores.length; s++) {
            noteGreatest(s, onShores[s], shores, group, index, number);
        }
        for (int b = 0; b < onBearings.length; b++) {
            noteGreatest(b, onBearings[b], bearings, group, index, number);
        }
    }

    private static double greatest(double[] values, int count) {
        double most = values[0];
        for (int r = 1; r < count; r++) {
            most = Math.max(most, values[r]);
        }
        return most;
    }

    private static void add(double[] more, double[] sum) {
        for (int r = 0; r < sum.length; r++) {
            sum[r] += more[r];
        }
    }

    private static void noteGreatest(int slot, double[] values, Peaks peaks, CaseGroup group, int[] index, int number) {
        int highest = 0;
        for (int r = 1; r < group.size(); r++) {
            highest = values[r] > values[highest] ? r : highest;
        }
        peaks.note(slot, values[highest], Double.NaN, number + index[group.place(highest)]);
    }

    private void noteState(int c, Solution solution, int occurrence) {
        boolean closed = solution.closed(c);
        if (!closed && !everOpen[c]) {
            openIn[c] = occurrence;
        }
        everOpen[c] |= !closed;
        everClosed[c] |= closed;
        greatestOpening[c] = Math.max(greatestOpening[c], solution.opening(c));
        if (!solution.absent(c)) {
            penetration = Math.max(penetration, -solution.opening(c));
        }
    }

    private static void note(double[] sums, Peaks peaks, int occurrence) {
        for (int i = 0; i < sums.length; i++) {
            peaks.note(i, sums[i], Double.NaN, occurrence);
        }
    }

    /** Takes one settled case of strength. */
    void strength(Solution solution, int occurrence) {
        for (int c = 0; c < everOpen.length; c++) {
            strength.note(c, solution.force(c), Double.NaN, occurrence);
        }
    }

    /** Takes settled cases of strength with a post out of line, which ended in one contact state. */
    void strength(CaseGroup group, int[] index, int number) {
        double[] none = new double[group.size()];
        for (int c = 0; c < everOpen.length; c++) {
            noteGreatest(c, group.closed(c) ? group.values(c) : none, strength, group, index, number);
        }
    }

    /** Takes one settled case of stability: what holds down may be pulled harder by it. */
    void stability(Solution solution, int occurrence) {
        for (int c = 0; c < everOpen.length; c++) {
            lift.note(c, -solution.force(c), Double.NaN, occurrence);
        }
    }

    /** Greatest force at each contact (N), allowable stress. */
    Peaks greatest() {
        return greatest;
    }

    /** Least force at each contact (N), its sign turned, allowable stress. */
    Peaks least() {
        return least;
    }

    /** Greatest pull at each contact (N), cases of stability among them. */
    Peaks lift() {
        return lift;
    }

    /** Greatest force at each contact (N), strength. */
    Peaks factored() {
        return strength;
    }

    /** Greatest sum of the post loads of each shore (N). */
    Peaks shores() {
        return shores;
    }

    /** Greatest sum of the seat loads of each bearing (N). */
    Peaks bearings() {
        return bearings;
    }

    /** Greatest force at a contact (N) in one history. */
    double greatest(int contact, History history) {
        return byHistory[history.ordinal()][contact];
    }

    /** Whether a contact was ever open with all posts in line. */
    boolean everOpen(int contact) {
        return everOpen[contact];
    }

    /** The first case in which a contact was open with all posts in line; only where there was one. */
    int openIn(int contact) {
        return openIn[contact];
    }

    boolean everClosed(int contact) {
        return everClosed[contact];
    }

    double greatestOpening(int contact) {
        return greatestOpening[contact];
    }

    double penetration() {
        return penetration;
    }
}
