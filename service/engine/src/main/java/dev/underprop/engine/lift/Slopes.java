package dev.underprop.engine.lift;

import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.clause.distortion.AngularDistortion;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Change of slope from as found, under dead load: along every joist between the lines that cross it, and along every shore
 * between neighbouring posts. Not looked at where no limit is stated.
 */
final class Slopes {

    private final LiftFloor floor;
    private final double allowed;
    private final List<Pair> pairs = new ArrayList<>();

    /** Two contacts that hold up one member, and the distance between them (m). */
    private record Pair(int one, int other, double distance) {}

    /** A contact and where it stands along the member that it holds up. */
    private record Stop(int contact, double at) {}

    Slopes(LiftFloor floor, LiftLimits.Slope limit) {
        this.floor = floor;
        this.allowed = limit.value();
        if (!Double.isNaN(allowed)) {
            for (int m = 0; m < floor.study().frame().members(); m++) {
                addPairs(stops(floor.study(), m));
            }
        }
    }

    private static List<Stop> stops(StudiedFloor study, int member) {
        List<Stop> stops = new ArrayList<>();
        for (int c = 0; c < study.places().size(); c++) {
            Contact contact = study.frame().contacts().get(c);
            if (contact instanceof Contact.OnGround seat && seat.joist() == member) {
                stops.add(new Stop(c, seat.y()));
            } else if (contact instanceof Contact.OnCarrier seat && seat.joist() == member) {
                stops.add(
                        new Stop(c, study.frame().carriers().get(seat.carrier()).y()));
            } else if (contact instanceof Contact.OnProp prop
                    && study.frame().carrierMember(prop.carrier()) == member
                    && study.places().get(c) instanceof ContactPlace.OnPost
                    && !study.isJack(c)) {
                stops.add(new Stop(c, prop.x()));
            }
        }
        stops.sort(Comparator.comparingDouble(Stop::at));
        return stops;
    }

    private void addPairs(List<Stop> stops) {
        for (int i = 0; i + 1 < stops.size(); i++) {
            double distance = stops.get(i + 1).at() - stops.get(i).at();
            if (distance > 0) {
                pairs.add(new Pair(stops.get(i).contact(), stops.get(i + 1).contact(), distance));
            }
        }
    }

    void limits(List<Limit> into) {
        StudiedFloor study = floor.study();
        for (Pair pair : pairs) {
            String place = study.name(pair.one()) + " to " + study.name(pair.other());
            into.add(new Limit(Limit.Kind.SLOPE, place, allowed));
        }
    }

    int count() {
        return pairs.size();
    }

    void read(Shape shape, double[] values, int from) {
        for (int b = 0; b < shape.bounds() && !pairs.isEmpty(); b++) {
            double[] moved = moved(shape, b);
            for (int i = 0; i < pairs.size(); i++) {
                Pair pair = pairs.get(i);
                double slope = AngularDistortion.between(moved[pair.one()], moved[pair.other()], pair.distance());
                values[from + i] = Math.max(values[from + i], slope);
            }
        }
    }

    private double[] moved(Shape shape, int bound) {
        double[] moved = new double[floor.study().places().size()];
        Solution found = floor.found(bound);
        boolean[] done = new boolean[moved.length];
        for (Pair pair : pairs) {
            for (int c : new int[] {pair.one(), pair.other()}) {
                if (!done[c]) {
                    done[c] = true;
                    moved[c] = shape.dead(bound).movement(c) - found.movement(c);
                }
            }
        }
        return moved;
    }
}
