package dev.underprop.engine.assess;

import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.statics.Deflections;
import dev.underprop.engine.statics.Diagram;
import dev.underprop.engine.statics.Frame;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.List;

/** One member through all cases of a situation: its extremes, and the worst of each check. */
final class MemberRun {

    static final int SAGGING = 0;
    static final int HOGGING = 1;
    static final int SHEAR = 2;
    static final int DEFLECTION = 3;

    static final int BENDING_CHECK = 0;
    static final int SHEAR_CHECK = 1;
    static final int DEAD_AND_LIVE_CHECK = 2;
    static final int LIVE_CHECK = 3;

    private final MemberLimits limits;
    private final Diagram diagram;
    private final Diagram dead;
    private final Diagram added;
    private final Deflections total;
    private final Deflections live;
    private final Peaks extremes = new Peaks(4);
    private final Peaks checks = new Peaks(4);
    private final double[] place = new double[1];
    private double residual;

    MemberRun(Frame frame, List<UnitLoad> units, int member, MemberLimits limits) {
        this.limits = limits;
        this.diagram = new Diagram(frame, units, member);
        this.dead = new Diagram(frame, units, member);
        this.added = new Diagram(frame, units, member);
        this.total = new Deflections(diagram);
        this.live = new Deflections(added);
    }

    /** Sets what dead load alone does, from which the effect of other loads is measured. */
    void setDead(Solution solution) {
        dead.set(solution);
    }

    /**
     * Takes one more case.
     *
     * @param duration index of the case's load duration in the limits
     * @param deadOnly whether only dead load acts
     */
    void take(Solution solution, int caseIndex, int duration, boolean deadOnly) {
        diagram.set(solution);
        residual = Math.max(residual, diagram.residual());
        takeMoments(caseIndex, duration);
        double shear = diagram.shear(place);
        extremes.note(SHEAR, shear, place[0], caseIndex);
        checks.note(SHEAR_CHECK, limits.shearStress(shear), limits.shear(duration), place[0], caseIndex);
        takeDeflections(solution, caseIndex, deadOnly);
    }

    private void takeMoments(int caseIndex, int duration) {
        double sagging = diagram.sagging(place);
        extremes.note(SAGGING, sagging, place[0], caseIndex);
        checks.note(BENDING_CHECK, limits.bendingStress(sagging), limits.sagging(duration), place[0], caseIndex);
        double hogging = diagram.hogging(place);
        extremes.note(HOGGING, hogging, place[0], caseIndex);
        checks.note(BENDING_CHECK, limits.bendingStress(hogging), limits.hogging(duration), place[0], caseIndex);
    }

    private void takeDeflections(Solution solution, int caseIndex, boolean deadOnly) {
        int[] supports = diagram.supports(solution);
        double known = checks.met(DEAD_AND_LIVE_CHECK) ? checks.value(DEAD_AND_LIVE_CHECK) / limits.totalDivisor() : 0;
        double part = total.search(supports, known);
        if (part > known) {
            note(DEAD_AND_LIVE_CHECK, part, total, limits.totalDivisor(), caseIndex);
            extremes.note(DEFLECTION, Math.abs(total.size()), total.place(), caseIndex);
        }
        if (!deadOnly) {
            added.setDifference(diagram, dead);
            known = checks.met(LIVE_CHECK) ? checks.value(LIVE_CHECK) / limits.liveDivisor() : 0;
            part = live.search(supports, known);
            if (part > known) {
                note(LIVE_CHECK, part, live, limits.liveDivisor(), caseIndex);
            }
        }
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
