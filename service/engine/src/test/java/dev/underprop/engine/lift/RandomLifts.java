package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ANY;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.PLF;
import static dev.underprop.engine.lift.Lifts.POUND;

import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Lifts from a seed, and the same lift seen in a mirror; two of three carry live load. */
final class RandomLifts {

    private final Random random;

    private RandomLifts(long seed) {
        this.random = new Random(seed);
    }

    /** A plan and what is asked of it. */
    record Lift(JobPlan plan, LiftRequest request) {

        Lift mirrored() {
            return new Lift(mirror(plan), mirror(request, plan));
        }

        Lift with(LiftLimits limits) {
            return new Lift(plan, request.with(limits));
        }
    }

    static Lift of(long seed) {
        return new RandomLifts(seed).make();
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private Lift make() {
        int count = 4 + random.nextInt(4);
        List<Joist> joists = new ArrayList<>();
        double x = 0;
        double length = between(4.3, 4.9);
        for (int j = 0; j < count; j++) {
            joists.add(new Joist("J" + (j + 1), x, 0, length, Lifts.member(1, 9.25)));
            x += between(0.3, 0.6);
        }
        double last = joists.get(count - 1).x();
        boolean out = random.nextInt(4) > 0;
        double at = out ? between(0.4, 0.8) : between(0.8, 1.2);
        Shore shore = shore(at, last, joists);
        List<Load> loads = new ArrayList<>();
        double dead = between(400, 900);
        loads.add(new Load.Area(
                "floor",
                new Intensity(dead, random.nextInt(3) > 0 ? between(200, 1500) : 0, 0, 0),
                -ANY,
                ANY,
                -ANY,
                ANY));
        Intensity wall = new Intensity(between(800, 3500), 0, 0, random.nextBoolean() ? between(500, 2000) : 0);
        loads.add(new Load.Across("wall", wall, 0.1, -ANY, ANY));
        List<Bearing> bearings = List.of(Lifts.bearing("near wall", 0.1), Lifts.bearing("far wall", between(4, 4.2)));
        Floor floor = new Floor(joists, bearings, loads, Floor.JoistWeight.ADDED);
        JobPlan plan = Lifts.plan(floor, List.of(shore));
        return new Lift(plan, request(plan, out));
    }

    private Shore shore(double y, double last, List<Joist> joists) {
        double start = -between(0.05, 0.3);
        double length = last + between(0.05, 0.3) - start;
        int count = 2 + random.nextInt(3);
        int kind = random.nextInt(3);
        List<Post> posts = new ArrayList<>();
        for (int p = 0; p < count; p++) {
            double at = start + length * (p + between(0.3, 0.7)) / count;
            boolean close = joists.stream().anyMatch(j -> Math.abs(j.x() - at) < 0.003);
            double soft = StrictMath.pow(10, between(6.7, 7.7));
            Post.Stiffness stiffness = kind == 0
                    ? new Post.Rigid()
                    : kind == 1 ? new Post.Between(soft, 3 * soft) : new Post.NoStiffness();
            double capacity = between(2000, 12000) * POUND;
            posts.add(Lifts.post("A" + (p + 1), close ? at + 0.006 : at, stiffness, capacity));
        }
        return new Shore("A", y, Lifts.member(2 + random.nextInt(2), 9.25), start, length, List.of(), posts);
    }

    private LiftRequest request(JobPlan plan, boolean out) {
        int posts = plan.shores().get(0).posts().size();
        double[] raise = new double[posts];
        double whole = between(0.1, out ? 0.9 : 0.3) * INCH;
        double tilt = between(-0.5, 0.5);
        for (int p = 0; p < posts; p++) {
            double part = 1 + tilt * (2.0 * p / (posts - 1) - 1) + between(-0.03, 0.03);
            raise[p] = whole * part;
        }
        LiftLimits limits = new LiftLimits(
                random.nextInt(3) == 0 ? INCH / 16 : Double.NaN,
                random.nextBoolean() ? INCH / 8 : INCH / 4,
                Double.NaN,
                2 * INCH,
                24 * 3600,
                random.nextInt(3) == 0
                        ? LiftLimits.Slope.UNSTATED
                        : new LiftLimits.Slope(1 / between(30, 300), "drawn"),
                new LiftLimits.Ratios(between(0.7, 1), 1, 1, 1),
                out ? List.of(0) : random.nextBoolean() ? List.of(0) : List.of());
        LiftRequest request = Lifts.request(plan, limits, Lifts.ACME, raise);
        Situation during = out ? Lifts.NEAR_OUT : Lifts.SHORED;
        return new LiftRequest(
                during,
                request.survey(),
                request.target(),
                limits,
                request.screws(),
                LiftRequest.Order.values()[random.nextInt(3)],
                request.crept(),
                request.progress(),
                request.after());
    }

    static JobPlan mirror(JobPlan plan) {
        List<Joist> joists = new ArrayList<>();
        plan.floor()
                .joists()
                .forEach(j -> joists.add(0, new Joist(j.name(), -j.x(), j.start(), j.length(), j.member())));
        List<Shore> shores = plan.shores().stream()
                .map(s -> {
                    List<Post> posts = new ArrayList<>(s.posts().stream()
                            .map(p ->
                                    new Post(p.name(), -p.x(), p.height(), p.stiffness(), 0, 0, p.type(), p.footing()))
                            .toList());
                    Collections.reverse(posts);
                    return new Shore(s.name(), s.y(), s.beam(), -s.end(), s.length(), List.of(), posts);
                })
                .toList();
        Floor floor = new Floor(
                joists,
                plan.floor().bearings(),
                plan.floor().loads(),
                plan.floor().joistWeight());
        return Lifts.plan(floor, shores);
    }

    private static LiftRequest mirror(LiftRequest r, JobPlan plan) {
        List<LiftRequest.Point> points = r.survey().points().stream()
                .map(p -> new LiftRequest.Point(p.name(), -p.x(), p.y(), p.level(), p.target()))
                .toList();
        List<LiftScrew> screws = new ArrayList<>(r.screws());
        Collections.reverse(screws);
        return new LiftRequest(
                r.during(),
                new LiftRequest.Survey(points, r.survey().tolerance()),
                r.target(),
                r.limits(),
                screws,
                r.order(),
                r.crept(),
                r.progress(),
                r.after());
    }

    static String mark(JobPlan plan) {
        return plan.floor().joists().size() + " joists, "
                + plan.shores().get(0).posts().size() + " posts, wall "
                + StrictMath.round(
                        ((Load.Across) plan.floor().loads().get(1)).intensity().dead() / PLF) + " plf";
    }
}
