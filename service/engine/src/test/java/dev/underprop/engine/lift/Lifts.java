package dev.underprop.engine.lift;

import dev.underprop.engine.clause.ibc2021.Section1806;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Basis;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Plans and requests for tests of lifts. Invented. */
final class Lifts {

    static final double INCH = 0.0254;
    static final double FOOT = 0.3048;
    static final double POUND = 4.4482216152605;
    static final double PSI = POUND / (INCH * INCH);
    static final double PSF = POUND / (FOOT * FOOT);
    static final double PLF = POUND / FOOT;
    static final double ANY = Double.POSITIVE_INFINITY;

    /** The near wall is out: the joists turn about the far one. */
    static final Situation NEAR_OUT = new Situation("near wall out", List.of(0), List.of());

    static final Situation SHORED = new Situation("shored", List.of(), List.of());

    private static final WoodGrade HEM_FIR_2 = new WoodGrade(
            "Hem-Fir",
            "No.2",
            850 * PSI,
            525 * PSI,
            150 * PSI,
            405 * PSI,
            1300 * PSI,
            1.3e6 * PSI,
            0.47e6 * PSI,
            0.43,
            WoodGrade.Sizes.WESTERN_DIMENSION,
            Citation.read("NDS Supplement", "2018", "Table 4A"));

    static final LiftScrew ACME = new LiftScrew(
            0.25 * INCH,
            0.125,
            new LiftScrew.Rubbing(1.375 * INCH, StrictMath.toRadians(14.5), 0.1, 0.2, 0.15, 0.9 * INCH),
            24 * INCH,
            100 * POUND,
            6 * INCH);

    private Lifts() {}

    static PostType type(double capacity) {
        return new PostType(
                "screw post",
                new PostType.Table(
                        "test",
                        1,
                        false,
                        List.of(
                                new PostType.Row(6 * FOOT, 1.2 * capacity),
                                new PostType.Row(7 * FOOT, capacity),
                                new PostType.Row(8 * FOOT, 0.8 * capacity))),
                new PostType.Plate(7 * INCH, 5 * INCH),
                new PostType.Plate(6 * INCH, 6 * INCH));
    }

    static Member member(int plies, double depth) {
        return new Member(
                plies + " plies",
                new RectangularSection(1.5 * INCH, depth * INCH),
                plies,
                HEM_FIR_2,
                true,
                Member.Moisture.DRY,
                3 * PLF * plies);
    }

    static final Pad PAD = new Pad(
            "cast",
            Pad.Kind.CONCRETE,
            24 * INCH,
            24 * INCH,
            10 * INCH,
            new Pad.Known(150 * POUND / (FOOT * FOOT * FOOT), true));

    static final Ground GROUND = new Ground.Presumptive(
            "silty sand",
            Section1806.pressure(Section1806.SoilClass.SAND).value(),
            Section1806.pressure(Section1806.SoilClass.SAND).citation(),
            Ground.Condition.UNDISTURBED,
            12 * INCH);

    static Post post(String name, double x, Post.Stiffness stiffness, double capacity) {
        return new Post(name, x, 6.75 * FOOT, stiffness, 0, 0, type(capacity), PAD);
    }

    /** A row of joists over two walls, a shore of posts 4 ft apart between them. */
    static JobPlan row(int posts, Post.Stiffness stiffness, double capacity, double at) {
        List<Post> all = new ArrayList<>();
        for (int p = 0; p < posts; p++) {
            all.add(post("A" + (p + 1), p * 4 * FOOT, stiffness, capacity));
        }
        double width = (posts - 1) * 4 * FOOT;
        List<Joist> joists = new ArrayList<>();
        int count = (int) StrictMath.round(width / (2 * FOOT)) + 1;
        for (int j = 0; j < count; j++) {
            joists.add(new Joist("J" + (j + 1), j * 2 * FOOT, 0, 16 * FOOT, member(1, 9.25)));
        }
        Shore shore = new Shore("A", at, member(3, 9.25), -6 * INCH, width + 1 * FOOT, List.of(), all);
        Floor floor = new Floor(
                joists,
                List.of(bearing("near wall", 2 * INCH), bearing("far wall", 15.8 * FOOT)),
                List.of(
                        new Load.Area("floor", new Intensity(15 * PSF, 20 * PSF, 0, 0), -ANY, ANY, -ANY, ANY),
                        new Load.Across("wall", new Intensity(100 * PLF, 0, 0, 0), 2 * INCH, -ANY, ANY)),
                Floor.JoistWeight.ADDED);
        return plan(floor, List.of(shore));
    }

    /** The same on another shore beam. */
    static JobPlan onBeam(JobPlan plan, Member beam) {
        Shore shore = plan.shores().get(0);
        return plan(
                plan.floor(),
                List.of(new Shore(
                        shore.name(),
                        shore.y(),
                        beam,
                        shore.start(),
                        shore.length(),
                        shore.gaps(),
                        shore.posts(),
                        shore.bracing())));
    }

    /** The same with next to no weight of its own. */
    static Member weightless(Member beam) {
        return new Member(beam.label(), beam.ply(), beam.plies(), beam.grade(), beam.nominal(), beam.moisture(), 1e-3);
    }

    static JobPlan plan(Floor floor, List<Shore> shores) {
        return new JobPlan(Basis.US_ASD, floor, shores, GROUND, List.of(SHORED, NEAR_OUT), EXACT);
    }

    static final Circumstances EXACT = new Circumstances(
            Circumstances.UNSTATED.floorRestraint(),
            Circumstances.UNSTATED.lateral(),
            Circumstances.UNSTATED.excavation(),
            Circumstances.UNSTATED.intake(),
            new Limits(new Limits.FitUp(0, true), Limits.DEFAULT.transfer()));

    static Bearing bearing(String name, double y) {
        return new Bearing(name, y, 3.5 * INCH, ANY, -ANY, ANY, new Fastening.Loose(), List.of());
    }

    static LiftLimits limits(double perStage, double slope) {
        return new LiftLimits(
                Double.NaN,
                perStage,
                Double.NaN,
                3 * INCH,
                24 * 3600,
                Double.isNaN(slope) ? LiftLimits.Slope.UNSTATED : new LiftLimits.Slope(slope, "test"),
                LiftLimits.Ratios.WHOLE,
                List.of());
    }

    /** A point over every post, each with its raise; the floor as found lies that much below a level target. */
    static LiftRequest.Survey survey(JobPlan plan, double... raise) {
        List<LiftRequest.Point> points = new ArrayList<>();
        int n = 0;
        for (Shore shore : plan.shores()) {
            for (Post post : shore.posts()) {
                points.add(new LiftRequest.Point(
                        "over " + post.name(), post.x(), shore.y(), -raise[n++ % raise.length], Double.NaN));
            }
        }
        return new LiftRequest.Survey(points, INCH / 32);
    }

    /** The same floor under other loads. */
    static JobPlan loaded(JobPlan plan, double dead, double live, double wall) {
        Floor floor = new Floor(
                plan.floor().joists(),
                plan.floor().bearings(),
                List.of(
                        new Load.Area("floor", new Intensity(dead * PSF, live * PSF, 0, 0), -ANY, ANY, -ANY, ANY),
                        new Load.Across("wall", new Intensity(wall * PLF, 0, 0, 0), 2 * INCH, -ANY, ANY)),
                Floor.JoistWeight.ADDED);
        return plan(floor, plan.shores());
    }

    /** The same floor on posts that are fastened at both ends. */
    static JobPlan fastened(JobPlan plan) {
        Post.Ends held =
                new Post.Ends(new Post.Fastened("screws", Double.NaN), new Post.Fastened("screws", Double.NaN));
        List<Shore> shores = plan.shores().stream()
                .map(s -> new Shore(
                        s.name(),
                        s.y(),
                        s.beam(),
                        s.start(),
                        s.length(),
                        s.gaps(),
                        s.posts().stream()
                                .map(p -> new Post(
                                        p.name(),
                                        p.x(),
                                        p.height(),
                                        p.stiffness(),
                                        p.gap(),
                                        p.lift(),
                                        p.type(),
                                        p.footing(),
                                        held))
                                .toList()))
                .toList();
        return plan(plan.floor(), shores);
    }

    /** The same request in another situation, with something read and something to follow. */
    static LiftRequest with(
            LiftRequest asked, Situation during, LiftRequest.Progress progress, LiftRequest.After after) {
        return new LiftRequest(
                during,
                asked.survey(),
                asked.target(),
                asked.limits(),
                asked.screws(),
                asked.order(),
                asked.crept(),
                progress,
                after);
    }

    static LiftRequest request(JobPlan plan, LiftLimits limits, LiftScrew screw, double... raise) {
        int posts = plan.shores().stream().mapToInt(s -> s.posts().size()).sum();
        return new LiftRequest(
                NEAR_OUT,
                survey(plan, raise),
                new LiftRequest.Target(new LiftRequest.Plane(0, 0, 0), false),
                limits,
                Collections.nCopies(posts, screw),
                LiftRequest.Order.MOST_TO_GO_FIRST,
                LiftRequest.Crept.UNKNOWN,
                LiftRequest.Progress.NONE,
                LiftRequest.After.POSTS_STAY);
    }
}
