package dev.underprop.engine.lift;

import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.Frame;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Levels of the surveyed points under dead load. The loads stay as they are, so what a joist bends further is straight in
 * moment between its contacts, and its shape is exact; between joists the floor is taken as straight.
 */
final class Levels {

    private final LiftFloor floor;
    private final List<LiftRequest.Point> points;
    private final List<List<Stop>> stops = new ArrayList<>();

    /** A contact under a joist. */
    private record Stop(int contact, double at) {}

    Levels(LiftFloor floor, List<LiftRequest.Point> points) {
        this.floor = floor;
        this.points = points;
        StudiedFloor study = floor.study();
        for (int j = 0; j < study.frame().joists().size(); j++) {
            stops.add(stops(study.frame(), j));
        }
    }

    private static List<Stop> stops(Frame frame, int joist) {
        List<Stop> stops = new ArrayList<>();
        for (int c = 0; c < frame.contacts().size(); c++) {
            Contact contact = frame.contacts().get(c);
            if (contact instanceof Contact.OnGround seat && seat.joist() == joist) {
                stops.add(new Stop(c, seat.y()));
            } else if (contact instanceof Contact.OnCarrier seat && seat.joist() == joist) {
                stops.add(new Stop(c, frame.carriers().get(seat.carrier()).y()));
            }
        }
        stops.sort(Comparator.comparingDouble(Stop::at));
        return stops;
    }

    /** Whether a place lies on the floor: between two joists that pass it, or near one. */
    static boolean onFloor(JobPlan plan, double x, double y) {
        return left(plan, x, y) >= 0 || right(plan, x, y) >= 0;
    }

    private static int left(JobPlan plan, double x, double y) {
        int left = nearest(plan, x, y, -1);
        return nearest(plan, x, y, 1) >= 0 || near(plan, left, x) ? left : -1;
    }

    private static int right(JobPlan plan, double x, double y) {
        int right = nearest(plan, x, y, 1);
        return nearest(plan, x, y, -1) >= 0 || near(plan, right, x) ? right : -1;
    }

    private static boolean near(JobPlan plan, int joist, double x) {
        return joist >= 0 && Math.abs(plan.floor().joists().get(joist).x() - x) <= Line.NEAR;
    }

    private static int nearest(JobPlan plan, double x, double y, int side) {
        int best = -1;
        double distance = Double.POSITIVE_INFINITY;
        for (int j = 0; j < plan.floor().joists().size(); j++) {
            Joist joist = plan.floor().joists().get(j);
            double off = (joist.x() - x) * side;
            if (joist.crosses(y) && off >= 0 && off < distance) {
                best = j;
                distance = off;
            }
        }
        return best;
    }

    /** Level of every point over all bounds that are as the readings say (m). */
    List<Span> at(Shape shape) {
        return at(shape, false);
    }

    /** The same over all bounds, whatever the readings say (m). */
    List<Span> whatever(Shape shape) {
        return at(shape, true);
    }

    private List<Span> at(Shape shape, boolean whatever) {
        List<Span> levels = new ArrayList<>();
        for (LiftRequest.Point point : points) {
            Span span = Span.NOTHING;
            for (int b = 0; b < shape.bounds(); b++) {
                if (whatever || floor.bounds().get(b).doubt().read()) {
                    span = span.with(point.level() - sunk(shape, b, point));
                }
            }
            levels.add(span);
        }
        return levels;
    }

    private double sunk(Shape shape, int bound, LiftRequest.Point point) {
        JobPlan plan = floor.study().plan();
        int left = left(plan, point.x(), point.y());
        int right = right(plan, point.x(), point.y());
        if (left < 0 || right < 0 || left == right) {
            return sunk(shape, bound, Math.max(left, right), point.y());
        }
        double from = plan.floor().joists().get(left).x();
        double to = plan.floor().joists().get(right).x();
        double part = (point.x() - from) / (to - from);
        return (1 - part) * sunk(shape, bound, left, point.y()) + part * sunk(shape, bound, right, point.y());
    }

    /** How far a joist has come down from as found at a place (m). */
    private double sunk(Shape shape, int bound, int joist, double y) {
        List<Stop> on = stops.get(joist);
        double[] moved = new double[on.size()];
        double[] moment = new double[on.size()];
        double shear = 0;
        for (int i = 0; i < moved.length; i++) {
            int c = on.get(i).contact();
            moved[i] = shape.dead(bound).movement(c) - floor.found(bound).movement(c);
            moment[i] = i == 0
                    ? 0
                    : moment[i - 1] + shear * (on.get(i).at() - on.get(i - 1).at());
            shear += shape.dead(bound).force(c) - floor.found(bound).force(c);
        }
        return on.size() < 2 ? moved[0] : bent(on, moved, moment, joist, y);
    }

    private double bent(List<Stop> on, double[] moved, double[] moment, int joist, double y) {
        double rigidity = floor.study().frame().joists().get(joist).rigidity();
        int i = 0;
        while (i < on.size() - 2 && y > on.get(i + 1).at()) {
            i++;
        }
        double length = on.get(i + 1).at() - on.get(i).at();
        double s = y - on.get(i).at();
        double chord = (moved[i + 1] - moved[i]) / length;
        double one = moment[i] / rigidity;
        double other = moment[i + 1] / rigidity;
        if (s < 0) {
            return moved[i] + s * (chord + length * (2 * one + other) / 6);
        }
        if (s > length) {
            return moved[i + 1] + (s - length) * (chord - length * (one + 2 * other) / 6);
        }
        double cube = s * s * s / (6 * length);
        return moved[i] + chord * s - one * (s * s / 2 - cube - s * length / 3) - other * (cube - s * length / 6);
    }
}
