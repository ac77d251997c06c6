package dev.underprop.engine.load;

import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** Irregular floors from a seed: trimmed and lapped joists, uneven spacing, shores, and every kind of load. */
final class RandomFloors {

    private final Random random;
    private final List<Joist> joists = new ArrayList<>();

    private RandomFloors(long seed) {
        this.random = new Random(seed);
    }

    static JobPlan of(long seed) {
        return new RandomFloors(seed).make();
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private JobPlan make() {
        addJoists();
        double last = joists.get(joists.size() - 1).x();
        List<Shore> shores = new ArrayList<>();
        for (int s = 0; s < random.nextInt(3); s++) {
            double[] posts = new double[1 + random.nextInt(4)];
            for (int p = 0; p < posts.length; p++) {
                posts[p] = (p + random.nextDouble()) * last / posts.length;
            }
            shores.add(LoadPlans.shore("S" + s, 0.8 + s * between(0.5, 1), -between(0, 0.4), last + 0.3, posts));
        }
        List<Load> loads = new ArrayList<>();
        int count = 1 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            loads.add(load("load " + i, last, shores));
        }
        return LoadPlans.plan(joists, List.of(LoadPlans.bearing("wall", 0.1)), shores, loads);
    }

    private void addJoists() {
        int count = 2 + random.nextInt(8);
        double x = 0;
        for (int i = 0; i < count; i++) {
            double near = random.nextDouble() < 0.2 ? between(0.5, 1.5) : 0;
            double far = random.nextDouble() < 0.2 ? between(3, 3.8) : 4;
            if (random.nextDouble() < 0.25) {
                double cut = between(1.8, 2.6);
                joists.add(LoadPlans.joist(x, near, cut + 0.15));
                joists.add(LoadPlans.joist(x + (random.nextBoolean() ? 0.04 : 0), cut - 0.15, far));
            } else {
                joists.add(LoadPlans.joist(x, near, far));
            }
            x += between(0.25, 0.65);
        }
        joists.sort(Comparator.comparingDouble(Joist::x).thenComparingDouble(Joist::start));
    }

    private Intensity intensity() {
        return new Intensity(
                between(0, 2000),
                random.nextBoolean() ? between(0, 2000) : 0,
                random.nextBoolean() ? between(0, 500) : 0,
                random.nextBoolean() ? between(0, 900) : 0);
    }

    private Load load(String name, double last, List<Shore> shores) {
        double[] x = limits(-0.6, last + 0.6);
        double[] y = limits(0, 4);
        switch (random.nextInt(shores.isEmpty() ? 4 : 6)) {
            case 0:
                return new Load.Area(name, intensity(), x[0], x[1], y[0], y[1]);
            case 1:
                return new Load.Across(name, intensity(), between(0, 4), x[0], x[1]);
            case 2:
                return new Load.Along(name, intensity(), between(-0.2, last + 0.2), y[0], y[1]);
            case 3:
                return new Load.Point(name, intensity(), between(-0.2, last + 0.2), between(0, 4));
            case 4:
                int on = random.nextInt(shores.size());
                double[] along = limits(shores.get(on).start(), shores.get(on).end());
                return new Load.OnShore(name, intensity(), on, along[0], along[1]);
            default:
                int under = random.nextInt(shores.size());
                Shore shore = shores.get(under);
                return new Load.PointOnShore(name, intensity(), under, between(shore.start(), shore.end()));
        }
    }

    /** Two places in order, either of them perhaps left open. */
    private double[] limits(double low, double high) {
        double a = between(low, high);
        double b = between(low, high);
        double from = random.nextDouble() < 0.3 ? Double.NEGATIVE_INFINITY : Math.min(a, b);
        double to = random.nextDouble() < 0.3 ? Double.POSITIVE_INFINITY : Math.max(a, b) + 1e-3 * (high - low);
        return new double[] {from, Math.min(to, Double.isInfinite(to) ? to : high)};
    }
}
