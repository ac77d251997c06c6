package dev.underprop.wire.meaning;

import dev.underprop.engine.lift.LiftLimits;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.engine.lift.LiftScrew;
import dev.underprop.engine.lift.Lifter;
import dev.underprop.engine.lift.Misfit;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.quantity.Kind;
import dev.underprop.wire.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** A lift as far as it was understood without the whole plan; asked for a request only where nothing was faulty. */
record LiftDraft(
        Spot spot,
        int during,
        double tolerance,
        List<LiftPointDraft> points,
        LiftRequest.Target target,
        LiftLimits limits,
        List<LiftScrew> screws,
        LiftRequest.Order order,
        LiftRequest.Crept crept,
        LiftRequest.Progress progress,
        List<Integer> onto,
        List<LiftJacksReader.Draft> jacks) {

    /** The request, after whatever does not fit the plan was reported. */
    LiftRequest request(JobPlan plan) {
        Situation stated = plan.situations().get(during);
        Situation situation = new Situation(
                stated.name(), stated.removed(), List.of(), stated.parts(), stated.piers(), stated.clear());
        List<LiftRequest.Point> placed = new ArrayList<>();
        for (LiftPointDraft point : points) {
            placed.add(point.point(plan));
        }
        LiftRequest request = new LiftRequest(
                situation,
                new LiftRequest.Survey(placed, tolerance),
                target,
                limits,
                screws,
                order,
                crept,
                progress,
                new LiftRequest.After(onto),
                jacks.stream().map(LiftJacksReader.Draft::jack).toList());
        Lifter.misfits(plan, request).forEach(misfit -> report(misfit, placed));
        return request;
    }

    private void report(Misfit misfit, List<LiftRequest.Point> placed) {
        if (misfit instanceof Misfit.OffFloor off) {
            String name = placed.get(off.point()).name();
            spot.member("levels").element(off.point()).report(Messages.POINT_OFF_FLOOR, name, Fault.shown(name));
        } else if (misfit instanceof Misfit.NoLevel none) {
            Messages message = none.reading() ? Messages.LIFT_READING_MISSING : Messages.LIFT_LEVEL_MISSING;
            spot.member(none.reading() ? "readings" : "levels").report(message, none.name(), Fault.shown(none.name()));
        } else if (misfit instanceof Misfit.TooCoarse coarse) {
            spot.member("screws")
                    .report(
                            Messages.TURN_TOO_COARSE,
                            coarse.name(),
                            Fault.shown(coarse.name()),
                            length(coarse.step()),
                            length(coarse.allowed()));
        } else if (misfit instanceof Misfit.NoJack none) {
            spot.member("jacks").report(Messages.JACK_MISSING, none.name(), Fault.shown(none.name()));
        } else if (misfit instanceof Misfit.JackOffBeam off) {
            jack(off.jack()).report(Messages.JACK_OFF_BEAM, off.name(), Fault.shown(off.name()));
        } else if (misfit instanceof Misfit.JackInTheWay over) {
            jack(over.jack())
                    .report(Messages.JACK_IN_THE_WAY, over.name(), Fault.shown(over.name()), Fault.shown(over.post()));
        } else {
            spot.member("target").report(Messages.LIFT_WITHOUT_TARGET, "");
        }
    }

    private Spot jack(int index) {
        return jacks.get(index).spot().member("at");
    }

    private static String length(double metres) {
        return Kind.DEFLECTION.planText(metres, UnitSystem.US);
    }

    /**
     * A surveyed point.
     *
     * @param over the post over which it lies, counted over all shores; -1 where it is placed by x and y
     */
    record LiftPointDraft(String name, int over, double x, double y, double level, double target) {

        LiftRequest.Point point(JobPlan plan) {
            if (over < 0) {
                return new LiftRequest.Point(name, x, y, level, target);
            }
            int left = over;
            for (Shore shore : plan.shores()) {
                if (left < shore.posts().size()) {
                    Post post = shore.posts().get(left);
                    return new LiftRequest.Point(name, post.x(), shore.y(), level, target);
                }
                left -= shore.posts().size();
            }
            throw new IllegalStateException("a point lies over a post that is not there");
        }
    }
}
