package dev.underprop.engine.assess;

import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.standard.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Plans from a seed, without gaps or lifts; most of them stand. */
final class RandomPlans {

    private final Random random;

    private RandomPlans(long seed) {
        this.random = new Random(seed);
    }

    static JobPlan of(long seed) {
        return new RandomPlans(seed).make();
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private JobPlan make() {
        List<Joist> joists = new ArrayList<>();
        int count = 3 + random.nextInt(4);
        double x = 0;
        for (int j = 0; j < count; j++) {
            double start = random.nextDouble() < 0.2 ? between(0.3, 0.6) : 0;
            joists.add(new Joist("J" + (j + 1), x, start, between(4.3, 4.9) - start, Plans.twoByTen(1, 40)));
            x += between(0.3, 0.6);
        }
        double last = joists.get(count - 1).x();
        List<Shore> shores = new ArrayList<>();
        for (int s = 0; s < 1 + random.nextInt(2); s++) {
            shores.add(shore("S" + (s + 1), between(1, 1.5) + s * between(0.9, 1.6), last, joists));
        }
        Fastening far = random.nextBoolean() ? new Fastening.Held(between(500, 5000), "ties") : new Fastening.Loose();
        List<Bearing> bearings = List.of(
                Plans.bearing("sill", between(0.05, 0.2), new Fastening.Loose()),
                Plans.bearing("girder", between(4, 4.25), far));
        Floor floor = new Floor(joists, bearings, loads(last), Floor.JoistWeight.ADDED);
        List<Situation> situations = List.of(
                new Situation("shored", List.of(), List.of()), new Situation("sill out", List.of(0), List.of()));
        return new JobPlan(Basis.US_ASD, floor, shores, Plans.SILTY_SAND, situations);
    }

    private Shore shore(String name, double y, double last, List<Joist> joists) {
        double start = -between(0.05, 0.4);
        double length = last + between(0.05, 0.4) - start;
        int count = 2 + random.nextInt(3);
        List<Post> posts = new ArrayList<>();
        for (int p = 0; p < count; p++) {
            double at = clear(start + length * (p + between(0.2, 0.8)) / count, joists);
            double stiffness = random.nextBoolean() ? Plans.RIGID : Math.pow(10, between(6, 8));
            posts.add(Plans.post(name + "-" + (p + 1), at, stiffness));
        }
        return new Shore(name, y, Plans.twoByTen(2 + random.nextInt(2), 90), start, length, List.of(), posts);
    }

    /** Places nearer than a millimetre are one place to statics, the lower of the two, which a mirror would turn round. */
    private static double clear(double at, List<Joist> joists) {
        boolean close = joists.stream().anyMatch(j -> Math.abs(j.x() - at) < 0.003);
        return close ? at + 0.006 : at;
    }

    private List<Load> loads(double last) {
        List<Load> loads = new ArrayList<>();
        Intensity area = new Intensity(between(300, 900), between(1000, 2500), 0, 0);
        loads.add(new Load.Area("floor", area, -Plans.ANY, Plans.ANY, -Plans.ANY, Plans.ANY));
        if (random.nextBoolean()) {
            Intensity wall = new Intensity(between(500, 3000), 0, 0, between(0, 2000));
            loads.add(new Load.Across("wall", wall, between(0.65, 4.2), -Plans.ANY, Plans.ANY));
        }
        if (random.nextBoolean()) {
            Intensity partition = new Intensity(between(300, 1200), between(0, 500), 0, 0);
            loads.add(new Load.Along("partition", partition, between(0, last), 1, between(2, 4)));
        }
        if (random.nextBoolean()) {
            Intensity tub = new Intensity(between(100, 900), between(500, 3000), 0, 0);
            loads.add(new Load.Point("tub", tub, between(0, last), between(0.7, 4.2)));
        }
        return loads;
    }
}
