package dev.underprop.engine.lift;

import dev.underprop.engine.clause.powerscrew.Screw;
import dev.underprop.engine.clause.powerscrew.Thread;
import dev.underprop.engine.standard.Outcome;
import java.util.List;

/** The screws of a lift: how much they may be turned, and what that asks of an arm. */
final class Screws {

    /** Slack for sums of converted lengths, as part of a step. */
    private static final double ROUNDING = 1e-6;

    private final List<LiftScrew> screws;
    private final LiftLimits limits;

    Screws(List<LiftScrew> screws, LiftLimits limits) {
        this.screws = screws;
        this.limits = limits;
    }

    LiftScrew of(int post) {
        return screws.get(post);
    }

    double step(int post) {
        return screws.get(post).step();
    }

    /** Smallest turns that a length allows. */
    int within(int post, double length) {
        return (int) Math.floor(length / step(post) + ROUNDING);
    }

    /** Smallest turns nearest to a length; halves go up. */
    int nearest(int post, double length) {
        return (int) Math.floor(length / step(post) + 0.5 + ROUNDING);
    }

    /** Smallest turns in one turn. */
    int atOnce(int post) {
        return within(post, atMost());
    }

    /** Greatest raise by one turn (m). */
    double atMost() {
        return Double.isNaN(limits.perTurn()) ? limits.stage() : Math.min(limits.perTurn(), limits.stage());
    }

    /** Smallest turns in one stage. */
    int inStage(int post) {
        return within(post, limits.stage());
    }

    /** Whether a single smallest turn is within the limits of a turn and of a stage. */
    boolean fineEnough(int post) {
        return atOnce(post) > 0;
    }

    /** Torque over the range of load and friction (N·m); unknown where not enough is stated, or the screw binds. */
    Span torque(int post, Span load, boolean down) {
        LiftScrew screw = screws.get(post);
        if (!screw.thread().stated()) {
            return Span.UNKNOWN;
        }
        LiftScrew.Rubbing rubbing = screw.thread();
        Thread thread = new Thread(rubbing.mean(), screw.lead(), rubbing.halfAngle());
        double least = on(thread, Math.max(0, load.least()), rubbing.least(), down);
        double most = on(thread, Math.max(0, load.greatest()), rubbing.most(), down)
                + collar(rubbing, Math.max(0, load.greatest()));
        return Double.isNaN(least + most) ? Span.UNKNOWN : new Span(least, most);
    }

    private static double on(Thread thread, double load, double friction, boolean down) {
        if (down) {
            return thread.lowering(load, friction).value();
        }
        return thread.raising(load, friction) instanceof Outcome.Value value
                ? value.cited().value()
                : Double.NaN;
    }

    private static double collar(LiftScrew.Rubbing rubbing, double load) {
        return rubbing.collarFriction() == 0
                ? 0
                : Screw.collar(load, rubbing.collarFriction(), rubbing.collarRadius())
                        .value();
    }

    Span pull(int post, Span torque) {
        double wrench = screws.get(post).wrench();
        return Double.isNaN(wrench) || !torque.known()
                ? Span.UNKNOWN
                : new Span(
                        Screw.pull(torque.least(), wrench).value(),
                        Screw.pull(torque.greatest(), wrench).value());
    }
}
