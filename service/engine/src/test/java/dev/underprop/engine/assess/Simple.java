package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
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

/** The plainest plans: three joists over one span, or one beam on two posts. */
final class Simple {

    /** The joist in the middle, whose tributary width is the spacing. */
    static final String MIDDLE = "J2";

    private static final Citation STATED = Citation.read("example", "", "as the example states");

    private Simple() {}

    /** Floor of three joists on two bearings of the given length under each joist end. */
    static JobPlan floor(Member member, double spacing, double span, double seat, Intensity load) {
        List<Joist> joists = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            joists.add(new Joist("J" + (i + 1), i * spacing, 0, span, member));
        }
        Load area = new Load.Area("floor", load, -Plans.ANY, Plans.ANY, -Plans.ANY, Plans.ANY);
        Floor floor = new Floor(
                joists,
                List.of(seat("near", 0, seat), seat("far", span, seat)),
                List.of(area),
                Floor.JoistWeight.INCLUDED_IN_DEAD);
        return plan(floor, List.of(), new Ground.Unstated());
    }

    /** A bearing centred under the very end of the joists, so that half of it is under them. */
    private static Bearing seat(String name, double y, double length) {
        return new Bearing(name, y, 2 * length, Plans.RIGID, -Plans.ANY, Plans.ANY, new Fastening.Loose(), List.of());
    }

    /** A beam on two posts, reaching beyond both by the same length, with loads directly on it. */
    static JobPlan beam(Member member, double span, double beyond, double plate, List<Load> loads) {
        return beam(member, span, beyond, plate, loads, new Post.NoPad(), new Ground.Unstated());
    }

    static JobPlan beam(
            Member member, double span, double beyond, double plate, List<Load> loads, Post.Footing pad, Ground soil) {
        PostType type = new PostType(
                "post", new PostType.NotRated(), new PostType.Plate(plate, 1), new PostType.Plate(plate, 1));
        List<Post> posts = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Post.Stiffness rigid = Post.Stiffness.exactly(Plans.RIGID);
            posts.add(new Post("P" + (i + 1), i * span, 2, rigid, 0, 0, type, pad));
        }
        Shore shore = new Shore("A", 0, member, -beyond, span + 2 * beyond, List.of(), posts);
        Floor floor = new Floor(List.of(), List.of(), loads, Floor.JoistWeight.INCLUDED_IN_DEAD);
        return plan(floor, List.of(shore), soil);
    }

    static Load uniform(double dead, double live) {
        return new Load.OnShore("line", new Intensity(dead, live, 0, 0), 0, -Plans.ANY, Plans.ANY);
    }

    static Load point(double x, double dead) {
        return new Load.PointOnShore("point", new Intensity(dead, 0, 0, 0), 0, x);
    }

    static JobPlan plan(Floor floor, List<Shore> shores, Ground ground) {
        return new JobPlan(
                Basis.US_ASD,
                floor,
                shores,
                ground,
                List.of(new Situation("as it stands", List.of(), List.of())),
                Plans.EXACT);
    }

    static Member member(RectangularSection section, WoodGrade grade, double weight) {
        return new Member("member", section, 1, grade, true, Member.Moisture.DRY, weight);
    }

    /** A grade by the values an example states; what it leaves out is set to one that cannot govern. */
    static WoodGrade grade(double bending, double shear, double bearing, double modulus) {
        return new WoodGrade(
                "as stated",
                "as stated",
                bending,
                bending,
                shear,
                bearing,
                bending,
                modulus,
                modulus / 2,
                0.5,
                WoodGrade.Sizes.WESTERN_DIMENSION,
                STATED);
    }

    /** Dressed size of a nominal one (in), NDS Supplement 2018, Table 1A. */
    static double dressed(int nominal) {
        return nominal > 6 ? nominal - 0.75 : nominal - 0.5;
    }

    /** A dressed section from its nominal size; timbers are half an inch less than nominal. */
    static RectangularSection section(String size) {
        int breadth = Integer.parseInt(size.substring(0, size.indexOf('x')));
        int depth = Integer.parseInt(size.substring(size.indexOf('x') + 1));
        double high = breadth >= 5 ? depth - 0.5 : dressed(depth);
        return new RectangularSection((breadth - 0.5) * Plans.INCH, high * Plans.INCH);
    }

    static CheckResult check(JobPlan plan, CheckId id, String place) {
        return Assessor.assess(plan).checks().stream()
                .filter(r -> r.id() == id && r.place().equals(place))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + id.id() + " at " + place));
    }

    static double demand(JobPlan plan, CheckId id, String place) {
        return ((CheckResult.Judged) check(plan, id, place).finding()).demand();
    }

    static double sagging(JobPlan plan, String member) {
        return result(plan, member).sagging().value();
    }

    static double shear(JobPlan plan, String member) {
        return result(plan, member).shear().value();
    }

    private static SituationResult.MemberResult result(JobPlan plan, String member) {
        return Assessor.assess(plan).situations().get(0).members().stream()
                .filter(m -> m.name().equals(member))
                .findFirst()
                .orElseThrow();
    }

    /** Pad of one square metre that weighs nothing. */
    static Pad squareMetre() {
        return new Pad("pad", Pad.Kind.CONCRETE, 1, 1, 0.25, new Pad.Known(0, true));
    }
}
