package dev.underprop.engine.load;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import java.util.stream.DoubleStream;

/** How much there is of a load: its geometry alone, without asking which joist takes it. */
final class Totals {

    private Totals() {}

    /** Area (m²), length (m) or 1. */
    static double extent(JobPlan plan, Load load) {
        List<Joist> joists = plan.floor().joists();
        if (load instanceof Load.Area area) {
            return area(joists, area);
        }
        if (load instanceof Load.Across line) {
            return width(joists, line.y(), line.from(), line.to());
        }
        if (load instanceof Load.Along line) {
            double near = joists.stream().mapToDouble(Joist::start).min().orElseThrow();
            double far = joists.stream().mapToDouble(Joist::end).max().orElseThrow();
            return Math.min(far, line.to()) - Math.max(near, line.from());
        }
        if (load instanceof Load.OnShore line) {
            Shore shore = plan.shores().get(line.shore());
            return Math.min(shore.end(), line.to()) - Math.max(shore.start(), line.from());
        }
        return 1;
    }

    private static double area(List<Joist> joists, Load.Area area) {
        double[] cuts = joists.stream()
                .flatMapToDouble(j -> DoubleStream.of(j.start(), j.end(), area.fromY(), area.toY()))
                .filter(Double::isFinite)
                .sorted()
                .distinct()
                .toArray();
        double sum = 0;
        for (int i = 0; i + 1 < cuts.length; i++) {
            double middle = (cuts[i] + cuts[i + 1]) / 2;
            if (middle > area.fromY() && middle < area.toY()) {
                sum += (cuts[i + 1] - cuts[i]) * width(joists, middle, area.fromX(), area.toX());
            }
        }
        return sum;
    }

    /** From edge to edge at y; an open edge is half-way to the floor's next joist, or the floor's outermost joist. */
    private static double width(List<Joist> joists, double y, double from, double to) {
        double[] there = joists.stream()
                .filter(j -> j.start() <= y && j.end() >= y)
                .mapToDouble(Joist::x)
                .toArray();
        double outerLeft = DoubleStream.of(there).min().orElseThrow();
        double outerRight = DoubleStream.of(there).max().orElseThrow();
        double before = joists.stream()
                .mapToDouble(Joist::x)
                .filter(x -> x < outerLeft)
                .max()
                .orElse(outerLeft);
        double beyond = joists.stream()
                .mapToDouble(Joist::x)
                .filter(x -> x > outerRight)
                .min()
                .orElse(outerRight);
        double first = (outerLeft + before) / 2;
        double last = (outerRight + beyond) / 2;
        return Math.max(0, (Double.isFinite(to) ? to : last) - (Double.isFinite(from) ? from : first));
    }
}
