package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Basis;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Assumptions and advisories: there when their condition holds, and only then. */
class RemarksTest {

    private static final String DEAD = "The dead loads given include the joists themselves.";
    private static final String STIFFNESS =
            "Posts of whose stiffness nothing is stated are taken as rigid, and between the"
                    + " soft and stiff end of two ranges in series: adjustable steel post, 100 to 1000 kip/in at 7 ft, over its"
                    + " height (common practice, no source); widest range of Bowles Table 9-1, 4.8 to 128 MN/m3, since the ground is"
                    + " not known (Bowles, Foundation Analysis and Design 5th edition, Table 9-1 (read in a public copy)).";
    private static final String EDGE =
            "Loads across the joists without stated limits end at the first and the last joist.";
    private static final String CONCRETE = "Concrete pads weigh 150 pounds a cubic foot (common practice, no source).";

    private static JobPlan plan(Floor.JoistWeight weight, boolean stiffness, double fromX, double toX, Pad.Weight pad) {
        Pad footing = new Pad("pad", Pad.Kind.CONCRETE, 0.5, 0.5, 0.2, pad);
        Post.Stiffness stated = stiffness ? Post.Stiffness.exactly(1e7) : new Post.NoStiffness();
        Post a = new Post("A1", 0.2, 2, stated, 0, 0, Plans.SCREW_POST, footing);
        Post b = new Post("A2", 1, 2, Post.Stiffness.exactly(1e7), 0, 0, Plans.SCREW_POST, footing);
        Shore shore = new Shore("A", 1.5, Plans.twoByTen(2, 50), 0, 1.2, List.of(), List.of(a, b));
        Load load = new Load.Area("floor", new Intensity(500, 1900, 0, 0), fromX, toX, -Plans.ANY, Plans.ANY);
        Floor floor = new Floor(
                Plans.row(3, 0.6, 3),
                List.of(
                        Plans.bearing("near", 0.1, new Fastening.Loose()),
                        Plans.bearing("far", 2.9, new Fastening.Loose())),
                List.of(load),
                weight);
        return new JobPlan(
                Basis.US_ASD,
                floor,
                List.of(shore),
                new Ground.Unstated(),
                List.of(new Situation("shored", List.of(), List.of())));
    }

    private static List<String> assumptions(JobPlan plan) {
        return Assessor.assess(plan).assumptions();
    }

    @Test
    void everythingStatedLeavesWhatAlwaysHolds() {
        JobPlan plan = plan(Floor.JoistWeight.ADDED, true, 0, 1.2, new Pad.Known(23_000, true));

        assertThat(assumptions(plan)).hasSize(7).doesNotContain(DEAD, STIFFNESS, EDGE, CONCRETE);
        assertThat(assumptions(plan(Floor.JoistWeight.ADDED, true, 0, 1.2, new Pad.Unknown())))
                .isEqualTo(assumptions(plan));
    }

    @Test
    void eachAppearsByItself() {
        Pad.Weight known = new Pad.Known(23_000, true);
        List<String> base = assumptions(plan(Floor.JoistWeight.ADDED, true, 0, 1.2, known));

        assertOneMore(base, plan(Floor.JoistWeight.INCLUDED_IN_DEAD, true, 0, 1.2, known), DEAD);
        assertOneMore(base, plan(Floor.JoistWeight.ADDED, false, 0, 1.2, known), STIFFNESS);
        assertOneMore(base, plan(Floor.JoistWeight.ADDED, true, -Plans.ANY, 1.2, known), EDGE);
        assertOneMore(base, plan(Floor.JoistWeight.ADDED, true, 0, Plans.ANY, known), EDGE);
        assertOneMore(base, plan(Floor.JoistWeight.ADDED, true, 0, 1.2, new Pad.Known(23_000, false)), CONCRETE);
    }

    private static void assertOneMore(List<String> base, JobPlan plan, String wanted) {
        assertThat(assumptions(plan)).hasSize(base.size() + 1).containsAll(base).contains(wanted);
    }

    private static List<Assessment.Advisory> advisories(JobPlan plan, String code) {
        return Assessor.assess(plan).advisories().stream()
                .filter(a -> a.code().equals(code))
                .toList();
    }

    @Test
    void aBearingTakenAwayIsADanger() {
        JobPlan plan = Plans.reference(new Fastening.Held(4000, "ties"), 5e7);

        assertThat(advisories(plan, "bearing-taken-away"))
                .singleElement()
                .matches(a -> a.place().equals("sill out") && a.severity() == Assessment.Severity.DANGER);
        assertThat(advisories(plan, "block-over-the-shore"))
                .extracting(Assessment.Advisory::place)
                .containsExactly("shored", "sill out");
    }

    @Test
    void withNothingRemovedThereIsNoWordOfIt() {
        JobPlan both = Plans.reference(new Fastening.Held(4000, "ties"), 5e7);
        JobPlan shored = new JobPlan(
                both.basis(),
                both.floor(),
                both.shores(),
                both.ground(),
                both.situations().subList(0, 1));

        assertThat(advisories(shored, "bearing-taken-away")).isEmpty();
    }

    /** Beyond a tenth more than its tributary share: the middle one of three posts is, by a quarter; those of two are not. */
    @Test
    void moreThanTributaryIsSaidOfThatPostAlone() {
        JobPlan two = Simple.beam(Plans.twoByTen(2, 0), 2, 0, 0.1, List.of(Simple.uniform(1000, 0)));
        assertThat(advisories(two, "more-than-tributary")).isEmpty();

        List<Post> posts = List.of(
                Plans.post("P1", 0, Plans.RIGID), Plans.post("P2", 2, Plans.RIGID), Plans.post("P3", 4, Plans.RIGID));
        Shore shore = new Shore("A", 0, Plans.twoByTen(2, 0), 0, 4, List.of(), posts);
        Floor floor =
                new Floor(List.of(), List.of(), List.of(Simple.uniform(1000, 0)), Floor.JoistWeight.INCLUDED_IN_DEAD);
        assertThat(advisories(Simple.plan(floor, List.of(shore), new Ground.Unstated()), "more-than-tributary"))
                .singleElement()
                .matches(a -> a.place().equals("P2"));
    }

    @Test
    void timberOfPostsIsSpokenOf() {
        RectangularSection left = new RectangularSection(3 * Plans.INCH, 3 * Plans.INCH);
        Member.Details details = new Member.Details(
                new Member.Assumed("the carpenter"),
                new Member.Reduced(new RectangularSection(3.5 * Plans.INCH, 3.5 * Plans.INCH), "the surveyor"),
                Member.Treated.UNTREATED);
        Member stick = new Member("4x4", left, 1, Plans.HEM_FIR_2, true, Member.Moisture.DRY, 0, details);
        JobPlan bare = Simple.beam(Plans.twoByTen(2, 0), 2, 0, 0.1, List.of(Simple.uniform(1000, 0)));
        PostType type = new PostType(
                "timber",
                new PostType.NotRated(),
                Props.PLATE,
                Props.PLATE,
                new PostType.NoTube(),
                new PostType.NoClass(),
                new TimberPost(stick, 0, false, new TimberPost.Unjoined()));
        List<Post> posts = bare.shores().get(0).posts().stream()
                .map(p -> new Post(p.name(), p.x(), 2, p.stiffness(), 0, 0, type, p.footing()))
                .toList();
        Shore shore = new Shore("A", 0, Plans.twoByTen(2, 0), 0, 2, List.of(), posts);
        JobPlan plan = Simple.plan(bare.floor(), List.of(shore), bare.ground());

        assertThat(advisories(bare, "grade-assumed")).isEmpty();
        assertThat(advisories(plan, "grade-assumed"))
                .singleElement()
                .matches(a -> a.message().contains("the carpenter"));
        assertThat(advisories(plan, "section-reduced"))
                .singleElement()
                .matches(a -> a.message().contains("the surveyor"));
    }
}
