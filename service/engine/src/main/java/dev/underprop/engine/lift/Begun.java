package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a lift begins: nothing turned yet, or as far as it was turned and read. Readings as expected go on. One that is high,
 * or low where no post has come down, stops the crew. Where the floor over a post is low, what could have happened is
 * bounded: it has come down by the difference, it carries nothing, or the floor does not follow and it carries as if nothing
 * had been read.
 */
final class Begun {

    /** Posts that may be in doubt at once: each has three states, and all go together. */
    private static final int MOST = 2;

    private final double[] turned;
    private final double[] raised;
    private final double[] sunk;
    private final List<LiftPlan.Reading> readings = new ArrayList<>();
    private final List<LiftPlan.Remark> remarks = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private final List<Integer> low = new ArrayList<>();
    private final List<String> names;
    private List<Doubt> doubts = List.of();
    private String stop = "";

    Begun(LiftFloor floor, Levels levels, LiftRequest request, Wanted wanted) {
        int posts = wanted.posts().size();
        this.turned = new double[posts];
        this.raised = new double[posts];
        this.sunk = new double[posts];
        this.names = wanted.posts().stream().map(Wanted.OfPost::name).toList();
        for (int p = 0; p < posts; p++) {
            turned[p] = request.progress().begun() ? request.progress().turned().get(p) : 0;
            raised[p] = turned[p] - wanted.posts().get(p).post().gap();
        }
        if (request.progress().begun()) {
            Shape expected = floor.at(raised);
            if (expected.stands()) {
                compare(levels.at(expected), request);
                posts(levels.at(expected), request, wanted, floor);
                settle(floor, request);
            }
        }
    }

    private void compare(List<Span> expected, LiftRequest request) {
        double tolerance = request.survey().tolerance();
        List<LiftRequest.Point> points = request.survey().points();
        for (int i = 0; i < points.size(); i++) {
            String name = points.get(i).name();
            double read = request.progress().readings().get(i);
            if (Double.isNaN(read)) {
                readings.add(LiftPlan.Reading.NONE);
                open.add("level of " + name + ": it was not read");
            } else {
                double off = off(read, expected.get(i), tolerance);
                readings.add(new LiftPlan.Reading(read, expected.get(i), off));
                if (off != 0) {
                    open.add(name + " was read " + (off < 0 ? "lower" : "higher") + " than expected");
                    remarks.add(new LiftPlan.Remark(LiftPlan.Remark.Kind.READING, name, words(off)));
                }
                if (off > 0 && stop.isEmpty()) {
                    stop = name + " was read higher than expected, and nothing that was turned explains it: "
                            + words(off);
                }
            }
        }
    }

    private void posts(List<Span> expected, LiftRequest request, Wanted wanted, LiftFloor floor) {
        List<LiftRequest.Point> points = request.survey().points();
        for (int p = 0; p < raised.length; p++) {
            double x = wanted.posts().get(p).post().x();
            double y = floor.heads().get(p).y();
            Line least = new Line(points, y, expected.stream().map(Span::least).toList());
            Line read = new Line(points, y, request.progress().readings());
            double down = least.at(x).orElse(Double.NaN) - read.at(x).orElse(Double.NaN);
            if (Double.isNaN(down)) {
                open.add("whether " + names.get(p)
                        + " has come down: no level was read over it, or on either side of it");
            } else if (down > request.survey().tolerance()) {
                sunk[p] = down;
                low.add(p);
                remarks.add(
                        new LiftPlan.Remark(
                                LiftPlan.Remark.Kind.READING,
                                names.get(p),
                                "the floor over it is lower than its screw would have it: its pad has settled, or the post is"
                                        + " slack or leans, or the floor does not follow the beam; look before anything is turned"));
            }
        }
    }

    /** Whether posts that have come down explain every low reading, and how many there are. */
    private void settle(LiftFloor floor, LiftRequest request) {
        if (low.isEmpty()) {
            stopUnexplained(request, -1);
            return;
        }
        if (low.size() > MOST) {
            stop(low.size() + " posts stand lower than their screws would have them: that is more than can be bounded;"
                    + " find out what has come down, and survey the floor anew");
        }
        doubts = new Doubts(this).all();
        LiftFloor doubted = floor.doubting(doubts);
        Shape shape = doubted.at(raised);
        if (!shape.stands()) {
            stop("should posts that are low carry nothing, the floor does not stand: " + shape.moves());
            return;
        }
        List<Span> levels = new Levels(doubted, request.survey().points()).whatever(shape);
        for (int i = 0; i < levels.size(); i++) {
            double level = request.progress().readings().get(i);
            if (!Double.isNaN(level)
                    && off(level, levels.get(i), request.survey().tolerance()) != 0) {
                stopUnexplained(request, i);
            }
        }
    }

    private void stopUnexplained(LiftRequest request, int point) {
        for (int i = 0; i < readings.size(); i++) {
            if (point < 0 ? readings.get(i).off() < 0 : i == point) {
                stop(request.survey().points().get(i).name()
                        + " was read off what was expected, and no post that has come down explains it: "
                        + words(-1));
            }
        }
    }

    private void stop(String reason) {
        stop = stop.isEmpty() ? reason : stop;
    }

    private static double off(double read, Span expected, double tolerance) {
        if (read < expected.least() - tolerance) {
            return read - (expected.least() - tolerance);
        }
        return read > expected.greatest() + tolerance ? read - (expected.greatest() + tolerance) : 0;
    }

    private static String words(double off) {
        return off < 0
                ? "lower than expected: a pad may be settling, a post may be slack, or a joist may not follow the beam;"
                        + " look at all three before anything is turned"
                : "higher than expected: the datum may have moved, a turn may have been made twice, or something else"
                        + " lifts here; read again before anything is turned";
    }

    /** How far each screw was raised already (m). */
    double[] turned() {
        return turned;
    }

    /** How far each screw is raised beyond touching (m), as if nothing had come down. */
    double[] raised() {
        return raised;
    }

    /** How far what each post stands on has come down (m). */
    double[] sunk() {
        return sunk;
    }

    /** How far the head of a post stands clear, for all that can be told (m). */
    double slack(int post) {
        return Math.max(0, sunk[post] - raised[post]);
    }

    /** Posts over which the floor is low. */
    List<Integer> low() {
        return low;
    }

    String name(int post) {
        return names.get(post);
    }

    /** Ways to understand low readings, what they say first; empty where none is low. */
    List<Doubt> doubts() {
        return doubts;
    }

    /** Why no screw may be turned; empty where it may. */
    String stop() {
        return stop;
    }

    /** What readings leave open, in words. */
    List<String> open() {
        return open;
    }

    List<LiftPlan.Reading> readings() {
        return readings;
    }

    List<LiftPlan.Remark> remarks() {
        return remarks;
    }
}
