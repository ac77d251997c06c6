package dev.underprop.engine.lift;

import dev.underprop.engine.plan.Pad;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What a request does not state, so that something cannot be checked: each by name. */
final class Unstated {

    private final LiftRequest request;
    private final Sag sag;

    Unstated(LiftRequest request, Sag sag) {
        this.request = request;
        this.sag = sag;
    }

    List<String> open() {
        List<String> open = new ArrayList<>();
        if (Double.isNaN(request.limits().slope().value())) {
            open.add("change of slope: no limit is stated (declare: slope)");
        }
        if (Double.isNaN(request.limits().total())) {
            open.add("total raise: no limit is stated (declare: total)");
        }
        if (any(s -> Double.isNaN(s.travel()))) {
            open.add("screw travel: how far the screws can still be raised is not stated (declare: travel)");
        }
        if (any(s -> !s.thread().stated())) {
            open.add("torque, and whether screws stay where they are left: thread, friction or collar is not stated"
                    + " (declare: meanDiameter, threadAngle, friction, collar)");
        }
        if (!request.byJacks() && any(s -> Double.isNaN(s.wrench()) || Double.isNaN(s.pull()))) {
            open.add("wrench pull: length of the wrench or what one person may pull is not stated (declare: wrench,"
                    + " greatestPull)");
        }
        for (LiftRequest.Jack jack : request.jacks()) {
            if (!(jack.stand().footing() instanceof Pad)) {
                open.add("pad of " + jack.stand().name() + ": none is named (declare: pad)");
            }
        }
        if (!sag.unknown().isEmpty()) {
            open.add("stress from what bearings have come down: no level was read at "
                    + String.join(", ", sag.unknown()));
        }
        return open;
    }

    private boolean any(Predicate<LiftScrew> test) {
        return request.screws().stream().anyMatch(test);
    }
}
