package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a lift begins: nothing turned yet, or as far as it was turned and read. Where the floor over a post was read lower
 * than any bound would have it, what the post stands on has come down by the difference, for all that can be told; from
 * there the plan goes on.
 */
final class Begun {

    private final double[] turned;
    private final double[] raised;
    private final double[] sunk;
    private final List<LiftPlan.Reading> readings = new ArrayList<>();
    private final List<LiftPlan.Remark> remarks = new ArrayList<>();

    Begun(LiftFloor floor, Levels levels, LiftRequest request, Wanted wanted) {
        int posts = wanted.posts().size();
        this.turned = new double[posts];
        this.raised = new double[posts];
        this.sunk = new double[posts];
        for (int p = 0; p < posts; p++) {
            turned[p] = request.progress().begun() ? request.progress().turned().get(p) : 0;
            raised[p] = turned[p] - wanted.posts().get(p).post().gap();
        }
        if (request.progress().begun()) {
            Shape expected = floor.at(raised);
            if (expected.stands()) {
                compare(levels.at(expected), request, wanted, floor);
            }
        }
    }

    private void compare(List<Span> expected, LiftRequest request, Wanted wanted, LiftFloor floor) {
        double tolerance = request.survey().tolerance();
        List<LiftRequest.Point> points = request.survey().points();
        for (int i = 0; i < points.size(); i++) {
            double read = request.progress().readings().get(i);
            double off = Double.isNaN(read) ? 0 : off(read, expected.get(i), tolerance);
            readings.add(new LiftPlan.Reading(read, off));
            if (off != 0) {
                remarks.add(new LiftPlan.Remark(
                        LiftPlan.Remark.Kind.READING, points.get(i).name(), words(off)));
            }
        }
        for (int p = 0; p < raised.length; p++) {
            Wanted.OfPost post = wanted.posts().get(p);
            double y = floor.heads().get(p).y();
            Line least = new Line(points, y, expected.stream().map(Span::least).toList());
            double low = least.at(post.post().x()).orElse(Double.NaN) - post.now();
            if (low > tolerance) {
                sunk[p] = low;
                raised[p] -= low;
                remarks.add(new LiftPlan.Remark(
                        LiftPlan.Remark.Kind.READING,
                        post.name(),
                        "the floor over it is lower than its screw would have it: its pad has settled, or the post is"
                                + " slack or leans; the plan goes on as if it had come down by the difference"));
            }
        }
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

    /** How far each head is raised beyond snug (m). */
    double[] raised() {
        return raised;
    }

    /** How far what each post stands on has come down (m). */
    double[] sunk() {
        return sunk;
    }

    List<LiftPlan.Reading> readings() {
        return readings;
    }

    List<LiftPlan.Remark> remarks() {
        return remarks;
    }
}
