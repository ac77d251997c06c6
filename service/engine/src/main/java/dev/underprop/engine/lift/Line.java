package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Values read at points near a line along x, straight between neighbours; beyond the outer ones nothing is known. */
final class Line {

    /** A point counts for a line as near as this, 6 in (m): common practice, no source. */
    static final double NEAR = 6 * 0.0254;

    private final List<double[]> along = new ArrayList<>();

    /** @param values by point, NaN where a point has none */
    Line(List<LiftRequest.Point> points, double y, List<Double> values) {
        for (int i = 0; i < points.size(); i++) {
            if (Math.abs(points.get(i).y() - y) <= NEAR && !Double.isNaN(values.get(i))) {
                along.add(new double[] {points.get(i).x(), values.get(i)});
            }
        }
        along.sort(Comparator.comparingDouble(p -> p[0]));
    }

    OptionalDouble at(double x) {
        for (int i = 0; i + 1 < along.size(); i++) {
            double[] left = along.get(i);
            double[] right = along.get(i + 1);
            if (x >= left[0] && x <= right[0] && right[0] > left[0]) {
                double part = (x - left[0]) / (right[0] - left[0]);
                return OptionalDouble.of(left[1] + part * (right[1] - left[1]));
            }
        }
        return nearest(x);
    }

    private OptionalDouble nearest(double x) {
        double[] best = {Double.POSITIVE_INFINITY, Double.NaN};
        for (double[] one : along) {
            best = Math.abs(one[0] - x) < Math.abs(best[0] - x) ? one : best;
        }
        return Math.abs(best[0] - x) <= NEAR ? OptionalDouble.of(best[1]) : OptionalDouble.empty();
    }
}
