package dev.underprop.engine.assess;

import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.statics.Deflections;
import dev.underprop.engine.statics.Diagram;

/** One member through all cases of a situation: its extremes, and the worst of each check. */
final class MemberRun {

    static final int SAGGING = 0;
    static final int HOGGING = 1;
    static final int SHEAR = 2;
    static final int DEFLECTION = 3;

    static final int BENDING_CHECK = 0;
    static final int SHEAR_CHECK = 1;
    static final int TOTAL_CHECK = 2;
    static final int LIVE_CHECK = 3;

    /** A deflection that is greater by less than this part is the same one met again. */
    private static final double TIE = 1e-9;

    private final MemberLimits limits;
    private final Diagram all;
    private final Diagram added;
    private final Deflections total;
    private final Deflections live;
    private final Peaks extremes = new Peaks(4);
    private final Peaks checks = new Peaks(4);
    private double deadMoment;
    private Reach reach = Reach.NOTHING;
    private double residual;

    /**
     * @param all view on the rows of cases
     * @param added view on what cases add to dead load
     * @param limits what the member may bear
     */
    MemberRun(Diagram all, Diagram added, MemberLimits limits) {
        this.limits = limits;
        this.all = all;
        this.added = added;
        this.total = new Deflections(all);
        this.live = new Deflections(added);
    }

    /**
     * How far a case goes: bounds to which those of a change can be added.
     *
     * @param sagging greatest sagging moment (N·m)
     * @param hogging greatest hogging moment (N·m)
     * @param shear greatest shear (N)
     */
    record Reach(double sagging, double hogging, double shear) {
        static final Reach NOTHING = new Reach(0, 0, 0);
    }

    /** Reach of the last case taken whole. */
    Reach reach() {
        return reach;
    }

    /** Whether a case with so much more could bend or shear the member more than anything met; a false answer is certain. */
    boolean couldMatter(Reach base, double sagging, double hogging, double shear, int duration) {
        double sag = base.sagging + sagging;
        double hog = base.hogging + hogging;
        double cut = base.shear + shear;
        double bending = checks.value(BENDING_CHECK);
        return sag > extremes.value(SAGGING)
                || hog > extremes.value(HOGGING)
                || cut > extremes.value(SHEAR)
                || limits.bendingStress(sag) > bending * limits.sagging(duration)
                || limits.bendingStress(hog) > bending * limits.hogging(duration)
                || limits.shearStress(cut) > checks.value(SHEAR_CHECK) * limits.shear(duration);
    }

    /** Takes the bending and shear of one more case, and not its deflection. */
    void takeForces(double[] row, int caseIndex, int duration) {
        all.view(row);
        residual = Math.max(residual, all.residual());
        all.scan();
        noteMoment(SAGGING, all.sagging(), limits.sagging(duration), all.saggingAt(), caseIndex);
        noteMoment(HOGGING, all.hogging(), limits.hogging(duration), all.hoggingAt(), caseIndex);
        extremes.note(SHEAR, all.shear(), all.shearAt(), caseIndex);
        double stress = limits.shearStress(all.shear());
        checks.note(SHEAR_CHECK, stress, limits.shear(duration), all.shearAt(), caseIndex);
    }

    /**
     * Takes one more case.
     *
     * @param row of the case
     * @param difference what it adds to dead load; empty when only dead load acts
     * @param sampled whether the difference's deflection samples mean something: it is held at the same places
     * @param supports stations at which the member is held
     * @param duration index of the case's load duration in the limits
     */
    void take(double[] row, double[] difference, boolean sampled, int[] supports, int caseIndex, int duration) {
        takeForces(row, caseIndex, duration);
        reach = new Reach(all.sagging(), all.hogging(), all.shear());
        takeTotal(supports, caseIndex);
        if (difference.length == 0) {
            deadMoment = Math.max(deadMoment, greatestMoment());
        } else {
            takeLive(difference, sampled, supports, caseIndex);
        }
    }

    private void noteMoment(int extreme, double moment, double allowed, double at, int caseIndex) {
        extremes.note(extreme, moment, at, caseIndex);
        checks.note(BENDING_CHECK, limits.bendingStress(moment), allowed, at, caseIndex);
    }

    private void takeTotal(int[] supports, int caseIndex) {
        double known = known(TOTAL_CHECK, limits.totalDivisor());
        if (total.mayExceed(known, greatestMoment())) {
            double part = total.searchWhereSamplesAllow(supports, known);
            if (part > known) {
                note(TOTAL_CHECK, part, total, limits.totalDivisor(), caseIndex);
                extremes.note(DEFLECTION, Math.abs(total.size()), total.place(), caseIndex);
            }
        }
    }

    private void takeLive(double[] difference, boolean sampled, int[] supports, int caseIndex) {
        added.view(difference);
        double known = known(LIVE_CHECK, limits.liveDivisor());
        if (!sampled || live.mayExceed(known, greatestMoment() + deadMoment)) {
            double part = sampled ? live.searchWhereSamplesAllow(supports, known) : live.search(supports, known);
            if (part > known) {
                note(LIVE_CHECK, part, live, limits.liveDivisor(), caseIndex);
            }
        }
    }

    private double greatestMoment() {
        return Math.max(all.sagging(), all.hogging());
    }

    private double known(int check, double divisor) {
        return checks.met(check) ? checks.value(check) * (1 + TIE) / divisor : 0;
    }

    private void note(int check, double part, Deflections found, double divisor, int caseIndex) {
        double size = Math.abs(found.size());
        checks.note(check, size, size / part / divisor, found.place(), caseIndex);
    }

    Peaks extremes() {
        return extremes;
    }

    Peaks checks() {
        return checks;
    }

    MemberLimits limits() {
        return limits;
    }

    /** Greatest force (N) left over at the member's end in any case. */
    double residual() {
        return residual;
    }
}
