package dev.underprop.engine.assess;

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
import java.util.List;

/** Plans for tests, in customary units turned to SI here. */
final class Plans {

    static final double INCH = 0.0254;
    static final double FOOT = 0.3048;
    static final double POUND = 4.4482216152605;
    static final double PSI = POUND / (INCH * INCH);
    static final double PSF = POUND / (FOOT * FOOT);
    static final double PLF = POUND / FOOT;
    static final double ANY = Double.POSITIVE_INFINITY;
    static final double RIGID = Double.POSITIVE_INFINITY;

    /** NDS Supplement 2018, Table 4A, Hem-Fir No.2. */
    static final WoodGrade HEM_FIR_2 = new WoodGrade(
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

    static final PostType SCREW_POST = new PostType(
            "screw post",
            new PostType.Table(
                    "test",
                    1,
                    false,
                    List.of(new PostType.Row(6 * FOOT, 16000 * POUND), new PostType.Row(7 * FOOT, 12500 * POUND))),
            new PostType.Plate(7 * INCH, 5 * INCH),
            new PostType.Plate(6 * INCH, 6 * INCH));

    static final Pad CAST = new Pad(
            "cast",
            Pad.Kind.CONCRETE,
            20 * INCH,
            20 * INCH,
            10 * INCH,
            new Pad.Known(150 * POUND / (FOOT * FOOT * FOOT), true));

    static final Ground SILTY_SAND = new Ground.Presumptive(
            "silty sand",
            Section1806.pressure(Section1806.SoilClass.SAND).value(),
            Section1806.pressure(Section1806.SoilClass.SAND).citation(),
            Ground.Condition.UNDISTURBED,
            12 * INCH);

    /** Posts in line to the last bit: for closed forms, and where all forces scale with the loads. */
    static final Circumstances EXACT = new Circumstances(
            Circumstances.UNSTATED.floorRestraint(),
            Circumstances.UNSTATED.lateral(),
            Circumstances.UNSTATED.excavation(),
            Circumstances.UNSTATED.intake(),
            new Limits(new Limits.FitUp(0, true), Limits.DEFAULT.transfer()));

    private Plans() {}

    static JobPlan exact(JobPlan plan) {
        return with(plan, EXACT);
    }

    static JobPlan with(JobPlan plan, Circumstances circumstances) {
        return new JobPlan(plan.basis(), plan.floor(), plan.shores(), plan.ground(), plan.situations(), circumstances);
    }

    static Member twoByTen(int plies, double weight) {
        return new Member(
                plies + "-2x10",
                new RectangularSection(1.5 * INCH, 9.25 * INCH),
                plies,
                HEM_FIR_2,
                true,
                Member.Moisture.DRY,
                weight);
    }

    static List<Joist> row(int count, double spacing, double length) {
        List<Joist> joists = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            joists.add(new Joist("J" + (i + 1), i * spacing, 0, length, twoByTen(1, 3 * PLF)));
        }
        return joists;
    }

    static Bearing bearing(String name, double y, Fastening fastening) {
        return new Bearing(name, y, 3.5 * INCH, RIGID, -ANY, ANY, fastening, List.of());
    }

    static Post post(String name, double x, double stiffness) {
        return new Post(name, x, 6.75 * FOOT, Post.Stiffness.exactly(stiffness), 0, 0, SCREW_POST, CAST);
    }

    static Load area(double dead, double live) {
        return new Load.Area("floor", new Intensity(dead * PSF, live * PSF, 0, 0), -ANY, ANY, -ANY, ANY);
    }

    static Load wall(double y, double dead, double snow) {
        return new Load.Across("wall", new Intensity(dead * PLF, 0, 0, snow * PLF), y, -ANY, ANY);
    }

    /** Eight joists over a rear sill, a shore of four posts and a girder; the sill goes out in the second situation. */
    static JobPlan reference(Fastening girder, double postStiffness) {
        List<Post> posts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            posts.add(post("A" + (i + 1), i * 56 * INCH, postStiffness));
        }
        Shore shore = new Shore("A", 3.5 * FOOT, twoByTen(3, 9 * PLF), -6 * INCH, 15 * FOOT, List.of(), posts);
        Floor floor = new Floor(
                row(8, 2 * FOOT, 15 * FOOT),
                List.of(
                        bearing("rear sill", 1.75 * INCH, new Fastening.Loose()),
                        bearing("girder", 14.5 * FOOT, girder)),
                List.of(area(12, 40), wall(1.75 * INCH, 310, 180)),
                Floor.JoistWeight.INCLUDED_IN_DEAD);
        return new JobPlan(
                Basis.US_ASD,
                floor,
                List.of(shore),
                SILTY_SAND,
                List.of(
                        new Situation("shored", List.of(), List.of()),
                        new Situation("sill out", List.of(0), List.of())));
    }
}
