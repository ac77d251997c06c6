package dev.underprop.engine.lift;

import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * How far bearings and piers have come down, by the survey. It matters only where a joist rests on more than two bearings or
 * a girder on more than two piers: there the share that has not crept carries stress. A level on two supports only turns what
 * lies on them.
 */
final class Sag {

    private final List<UnitLoad.Offset> down = new ArrayList<>();
    private final Set<String> unknown = new TreeSet<>();
    private boolean matters;

    Sag(StudiedFloor floor, LiftRequest.Survey survey) {
        List<Double> levels =
                survey.points().stream().map(LiftRequest.Point::level).toList();
        double top = levels.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        for (int c = 0; c < floor.places().size(); c++) {
            ContactPlace place = floor.places().get(c);
            if (place instanceof ContactPlace.OnBearing seat && onGround(floor, seat.bearing())) {
                Bearing bearing = floor.plan().floor().bearings().get(seat.bearing());
                double x = floor.plan().floor().joists().get(seat.joist()).x();
                boolean held = seats(floor, seat.joist()) > 2;
                add(c, new Line(survey.points(), bearing.y(), levels).at(x), top, held, bearing.name());
            } else if (place instanceof ContactPlace.OnPier head) {
                Bearing bearing = floor.plan().floor().bearings().get(head.bearing());
                Girder girder = (Girder) bearing.body();
                double x = girder.piers().get(head.pier()).x();
                boolean held = girder.piers().size() > 2;
                add(c, new Line(survey.points(), bearing.y(), levels).at(x), top, held, floor.name(c));
            }
        }
        matters |= floor.plan().floor().joists().size() > 0 && anyOverGirder(floor);
        if (!matters || !unknown.isEmpty()) {
            down.clear();
        }
    }

    /** A joist over more than two bearings, a girder among them, feels what the girder does. */
    private static boolean anyOverGirder(StudiedFloor floor) {
        for (int j = 0; j < floor.plan().floor().joists().size(); j++) {
            if (seats(floor, j) > 2) {
                return true;
            }
        }
        return false;
    }

    private static boolean onGround(StudiedFloor floor, int bearing) {
        return !(floor.plan().floor().bearings().get(bearing).body() instanceof Girder);
    }

    private static int seats(StudiedFloor floor, int joist) {
        return (int) floor.places().stream()
                .filter(p -> p instanceof ContactPlace.OnBearing seat && seat.joist() == joist)
                .count();
    }

    private void add(int contact, OptionalDouble level, double top, boolean held, String name) {
        matters |= held;
        if (level.isPresent()) {
            down.add(new UnitLoad.Offset(contact, top - level.getAsDouble()));
        } else if (held) {
            unknown.add(name);
        }
    }

    /** Supports whose level would have to be known and is not, in the plan's names. */
    List<String> unknown() {
        return List.copyOf(unknown);
    }

    /** The shares to be looked at: both ends of the range and the middle, or one where the share changes nothing. */
    double[] shares(LiftRequest.Crept crept) {
        if (down.isEmpty()) {
            return new double[] {crept.most()};
        }
        return crept.least() == crept.most()
                ? new double[] {crept.least()}
                : new double[] {crept.least(), (crept.least() + crept.most()) / 2, crept.most()};
    }

    /** What of it still carries stress where a share has crept. */
    List<UnitLoad.Offset> left(double share) {
        return share == 1
                ? List.of()
                : down.stream()
                        .map(o -> new UnitLoad.Offset(o.contact(), (1 - share) * o.size()))
                        .toList();
    }
}
