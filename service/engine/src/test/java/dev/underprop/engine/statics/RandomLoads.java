package dev.underprop.engine.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Own weight on every member, partial uniform loads, point loads and some uplift, with cases that combine them. */
final class RandomLoads {

    private final Random random;
    private final int joists;
    private final List<double[]> spans = new ArrayList<>();

    RandomLoads(Random random, List<Frame.Joist> joists, List<Frame.Carrier> carriers) {
        this.random = random;
        this.joists = joists.size();
        joists.forEach(j -> spans.add(new double[] {j.start(), j.end()}));
        carriers.forEach(c -> spans.add(new double[] {c.start(), c.end()}));
    }

    List<UnitLoad> units() {
        List<UnitLoad.Piece> own = new ArrayList<>();
        List<UnitLoad.Piece> part = new ArrayList<>();
        List<UnitLoad.Piece> point = new ArrayList<>();
        List<UnitLoad.Piece> uplift = new ArrayList<>();
        for (int m = 0; m < spans.size(); m++) {
            double start = spans.get(m)[0];
            double end = spans.get(m)[1];
            own.add(new UnitLoad.Uniform(m, start, end, m < joists ? between(100, 700) : between(100, 300)));
            double a = between(start, end);
            double b = between(start, end);
            if (random.nextBoolean() && Math.abs(a - b) > 1e-3) {
                part.add(new UnitLoad.Uniform(m, Math.min(a, b), Math.max(a, b), between(200, 3000)));
            }
            if (random.nextDouble() < 0.4) {
                point.add(new UnitLoad.Point(m, place(start, end), between(500, 8000)));
            }
            if (random.nextDouble() < 0.2) {
                uplift.add(new UnitLoad.Point(m, place(start, end), -between(50, 600)));
            }
        }
        return List.of(
                new UnitLoad("own weight", own),
                new UnitLoad("part", part),
                new UnitLoad("points", point),
                new UnitLoad("uplift", uplift));
    }

    List<LoadCase> cases() {
        return List.of(
                new LoadCase(new int[] {0}, new double[] {1}),
                new LoadCase(new int[] {0, 1, 2}, new double[] {1, between(0.2, 1.5), between(0.2, 1.5)}),
                new LoadCase(new int[] {0, 2, 3}, new double[] {0.6, between(0.2, 1.5), 1}));
    }

    private double place(double start, double end) {
        return random.nextDouble() < 0.2 ? start : between(start, end);
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }
}
