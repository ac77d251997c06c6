package dev.underprop.engine.sizing;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.soil.BearingMethod;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random stocks of pads and posts that want one; the same seed gives the same ones. */
final class Offers {

    static final PostType.Plate BASE = new PostType.Plate(0.15, 0.15);

    private final Random random;

    Offers(long seed) {
        this.random = new Random(seed);
    }

    double between(double from, double to) {
        return from + random.nextDouble() * (to - from);
    }

    /** A post of so much (N), dead and live half each. */
    static Loaded post(String name, double x, double load) {
        PostType type = new PostType("type", new PostType.NotRated(), BASE, BASE);
        Post post = new Post(name, x, 2, new Post.NoStiffness(), 0, 0, type, new Post.NoPad());
        return new Loaded(post, "S", 0, new PadLoad(load, 1.4 * load, 0.025, new PadLoad.Foot(0, true)), load / 2);
    }

    static Ground ground(double pressure) {
        return new Ground.Given(
                pressure, "report", Ground.Condition.UNDISTURBED, new Ground.Modulus(30e6, 90e6, "plate test"));
    }

    /** Dry ground of a strength, pads founded 0.3 m deep, factor of safety 3. */
    static Ground strength(BearingMethod method, Ground.Shear shear) {
        return new Ground.Strength(
                method,
                shear,
                new Ground.Weight(18_000, 20_000, 50),
                new Ground.Founding(0.3, false),
                3,
                "report",
                Ground.Condition.UNDISTURBED,
                new Ground.Modulus(30e6, 90e6, "plate test"));
    }

    static PadChecks.Site site(Ground ground) {
        return new PadChecks.Site(ground, new Excavation.None(), new Limits.Settles(0.02, 0.01, "agreed"));
    }

    /** Cast pads, rated blocks, mats with a steel plate, and cribs. */
    List<Candidate> stock(int ofEach) {
        List<Candidate> stock = new ArrayList<>();
        for (int i = 0; i < ofEach; i++) {
            stock.add(cast(i));
            stock.add(block(i));
            stock.add(mat(i));
            stock.add(crib(i));
        }
        return stock;
    }

    private Candidate cast(int i) {
        Pad pad = new Pad(
                "cast " + i,
                Pad.Kind.CONCRETE,
                between(0.3, 1),
                between(0.3, 1),
                between(0.2, 0.5),
                new Pad.Known(23_500, true),
                new Pad.Cast(20e6),
                new Pad.Within(0.01));
        return Candidate.of(pad, between(5, 80));
    }

    private Candidate block(int i) {
        Pad pad = new Pad(
                "block " + i,
                Pad.Kind.CONCRETE,
                between(0.3, 0.7),
                between(0.3, 0.7),
                between(0.1, 0.2),
                new Pad.Known(23_500, true),
                new Pad.Rated(between(5_000, 40_000), "sheet", 25e6),
                new Pad.Within(0.01));
        return Candidate.of(pad, between(5, 30));
    }

    private Candidate mat(int i) {
        int sleepers = 2 + random.nextInt(3);
        Pad.Mat make = new Pad.Mat(timber(), sleepers, 1, true, new Pad.SpreadPlate(0.22, 0.22, 0.015, 250e6));
        Pad pad = new Pad(
                "mat " + i,
                Pad.Kind.TIMBER,
                between(0.4, 1),
                sleepers * 0.285,
                0.14,
                new Pad.Known(5_500, true),
                make,
                new Pad.Within(0.005));
        return Candidate.of(pad, between(5, 40));
    }

    private static Member timber() {
        WoodGrade grade = new WoodGrade(
                "Douglas Fir-Larch",
                "No.1",
                6.9e6,
                4.6e6,
                1.24e6,
                4.3e6,
                10e6,
                11e9,
                4e9,
                0.5,
                WoodGrade.Sizes.WESTERN_DIMENSION,
                Citation.read("NDS Supplement", "2018", "Table 4A"));
        Member.Details details = new Member.Details(new Member.Stamped(), new Member.Whole(), Member.Treated.UNTREATED);
        return new Member(
                "3x12", new RectangularSection(0.07, 0.285), 1, grade, false, Member.Moisture.WET, 0, details);
    }

    private Candidate crib(int i) {
        double side = between(0.42, 0.6);
        Pad.Stack make = new Pad.Stack(2, 0.14, 2.3e6, "sheet", true);
        Pad pad = new Pad(
                "crib " + i, Pad.Kind.CRIB, side, side, 0.28, new Pad.Known(5_500, true), make, new Pad.Within(0.005));
        return Candidate.of(pad, between(20, 60));
    }
}
