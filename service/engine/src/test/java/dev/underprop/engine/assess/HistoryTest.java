package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Ground;
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
import org.junit.jupiter.api.Test;

/** As found and onward, against closed forms of single joists: a rigid post stands under each, so that none acts on another. */
class HistoryTest {

    private static final double SPAN = 4;
    private static final double SPACING = 0.4;
    private static final double DEAD = 600;
    private static final double LIVE = 1900;
    private static final double RIGIDITY = TimberCapacity.rigidity(Plans.twoByTen(1, 0));

    /** Next to nothing, so that the beam lies on its posts (N/m). */
    private static final double LIGHT = 1e-3;

    private static Bearing wall(String name, double y) {
        return new Bearing(name, y, 0.1, Plans.RIGID, -Plans.ANY, Plans.ANY, new Fastening.Loose(), List.of());
    }

    private static JobPlan floor(double shoreAt, double live, Situation... situations) {
        List<Joist> joists = new ArrayList<>();
        List<Post> posts = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            joists.add(new Joist("J" + (i + 1), i * SPACING, 0, SPAN, Plans.twoByTen(1, 0)));
            posts.add(new Post("P" + (i + 1), i * SPACING, 2, new Post.Rigid(), 0, 0, Plans.SCREW_POST, Plans.CAST));
        }
        Shore shore = new Shore("A", shoreAt, Plans.twoByTen(2, LIGHT), -0.1, 2 * SPACING + 0.2, List.of(), posts);
        Load area =
                new Load.Area("floor", new Intensity(DEAD, live, 0, 0), -Plans.ANY, Plans.ANY, -Plans.ANY, Plans.ANY);
        Floor floor = new Floor(
                joists, List.of(wall("near", 0), wall("far", SPAN)), List.of(area), Floor.JoistWeight.INCLUDED_IN_DEAD);
        return new JobPlan(Basis.US_ASD, floor, List.of(shore), Plans.SILTY_SAND, List.of(situations), Plans.EXACT);
    }

    private static Situation shored() {
        return new Situation("shored", List.of(), List.of());
    }

    private static Situation farOut(double lift) {
        List<Situation.PostLift> lifts = new ArrayList<>();
        for (int p = 0; p < 3; p++) {
            lifts.add(new Situation.PostLift(0, p, lift));
        }
        return new Situation("far wall out", List.of(1), lifts);
    }

    /** Set snug, the shore carries 10/8 of half the live load; there from the start, also of the dead load. */
    @Test
    void aSnugShoreCarriesNoDeadLoad() {
        SituationResult result =
                Assessor.assess(floor(SPAN / 2, LIVE, shored())).situations().get(0);
        SituationResult.PostResult middle = result.posts().get(1);
        double tributary = SPACING * SPAN * 10 / 16;

        assertThat(middle.asFound()).isCloseTo(LIVE * tributary, within(0.02));
        assertThat(middle.wished()).isCloseTo((DEAD + LIVE) * tributary, within(0.02));
        assertThat(middle.greatest().value()).isEqualTo(middle.wished());
        assertThat(middle.greatest().bound().history()).isEqualTo("wished in place");
    }

    @Test
    void aDifferenceOfMoreThanAFifthIsSaidInWords() {
        double light = LIVE / 10;

        assertThat(Assessor.assess(floor(SPAN / 2, light, shored())).advisories())
                .filteredOn(a -> a.code().equals("history-matters"))
                .extracting(Assessment.Advisory::place)
                .containsExactly("P1", "P2", "P3");
        assertThat(Assessor.assess(floor(SPAN / 2, 40 * LIVE, shored())).advisories())
                .noneMatch(a -> a.code().equals("history-matters"));
    }

    /** Deflection of a simple span under uniform load at x (m); statics of structures, closed form. */
    private static double sag(double w, double x) {
        return w * x * (SPAN * SPAN * SPAN - 2 * SPAN * x * x + x * x * x) / (24 * RIGIDITY);
    }

    /** The joist leans on the near wall and on the shore, which stays where it was snug, and hangs over it. */
    @Test
    void aWallTakenAwayLetsTheJoistDownAsTheClosedFormSays() {
        double a = 3;
        double c = SPAN - a;
        double w = DEAD * SPACING;
        double level = sag(w, a);
        double bends = w * c * (3 * c * c * c + 4 * a * c * c - a * a * a) / (24 * RIGIDITY);
        double falls = level * SPAN / a + bends;
        double lift = level + bends * a / SPAN;

        SituationResult.Transfer out = Assessor.assess(floor(a, LIVE, shored(), farOut(0)))
                .situations()
                .get(1)
                .whatIf()
                .transfers()
                .get(0);

        assertThat(out.name()).isEqualTo("far");
        assertThat(out.load()).isCloseTo(DEAD * SPAN * 2 * SPACING / 2, within(1e-3));
        assertThat(out.seat()).isCloseTo(w * SPAN / 2, within(1e-3));
        assertThat(out.movement()).isCloseTo(falls, within(1e-7));
        assertThat(out.allowed()).isCloseTo(c / 500, within(1e-12));
        assertThat(out.lift()).isCloseTo(lift, within(1e-6));
    }

    @Test
    void preloadedByThatLiftTheWallGoesWithoutMovement() {
        JobPlan snug = floor(3, LIVE, shored(), farOut(0));
        double lift = transfer(snug).lift();
        JobPlan raised = floor(3, LIVE, shored(), farOut(lift));

        assertThat(transfer(raised).load()).isLessThan(1.0);
        assertThat(Math.abs(transfer(raised).movement())).isLessThan(1e-5);
        assertThat(Simple.check(snug, CheckId.BEARING_TRANSFER, "far").verdict())
                .isEqualTo(transfer(snug).movement() > 1.0 / 500 ? Verdict.FAIL : Verdict.PASS);
        assertThat(Simple.check(raised, CheckId.BEARING_TRANSFER, "far").verdict())
                .isEqualTo(Verdict.PASS);
    }

    private static SituationResult.Transfer transfer(JobPlan plan) {
        return Assessor.assess(plan).situations().get(1).whatIf().transfers().get(0);
    }

    /** A wall rebuilt snug carries nothing of what hung on the shore meanwhile. */
    @Test
    void aRebuiltWallCarriesNoDeadLoad() {
        Assessment assessment =
                Assessor.assess(floor(3, LIVE, shored(), farOut(0), new Situation("rebuilt", List.of(), List.of())));
        SituationResult.BearingLoad far =
                assessment.situations().get(2).whatIf().bearings().get(1);

        assertThat(far.name()).isEqualTo("far");
        assertThat(far.asFound()).isCloseTo(DEAD * SPAN * 2 * SPACING / 2, within(1e-3));
        assertThat(far.dead()).isCloseTo(0, within(1e-3));
    }

    /** Without the far wall the floor never stood: what it carried before cannot be followed, and that is said. */
    @Test
    void whatDoesNotStandAsFoundIsNotFollowed() {
        JobPlan whole = floor(3, LIVE, shored());
        Floor oneWall = new Floor(
                whole.floor().joists(),
                whole.floor().bearings().subList(0, 1),
                whole.floor().loads(),
                whole.floor().joistWeight());
        JobPlan plan = new JobPlan(
                whole.basis(), oneWall, whole.shores(), whole.ground(), whole.situations(), whole.circumstances());
        CheckResult result = Simple.check(plan, CheckId.BEARING_TRANSFER, "plan");

        assertThat(result.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(Assessor.assess(plan).situations().get(0).posts().get(1).asFound())
                .isNaN();
    }

    /** Two spans of a girder under its own weight become one of twice the length: statics of structures, closed form. */
    @Test
    void aPierTakenOutMakesTwoSpansOne() {
        double span = 2;
        double weight = 3000;
        List<Girder.Pier> piers = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            piers.add(new Girder.Pier("K" + (i + 1), i * span, 0.1, Plans.RIGID, new Fastening.Loose()));
        }
        Girder girder = new Girder(Plans.twoByTen(3, weight), 0, 2 * span, piers);
        List<Joist> joists = List.of(
                new Joist("J1", span / 2, 0, SPAN, Plans.twoByTen(1, 0)),
                new Joist("J2", span, 0, SPAN, Plans.twoByTen(1, 0)));
        Bearing onPiers =
                new Bearing("girder", SPAN, 0.1, Plans.RIGID, 0, 2 * span, new Fastening.Loose(), List.of(), girder);
        Load light = new Load.Area("floor", new Intensity(1e-3, 0, 0, 0), -Plans.ANY, Plans.ANY, -Plans.ANY, Plans.ANY);
        Floor floor = new Floor(
                joists, List.of(wall("wall", 0), onPiers), List.of(light), Floor.JoistWeight.INCLUDED_IN_DEAD);
        Situation out = new Situation(
                "pier out", List.of(), List.of(), List.of(), List.of(new Situation.PierOut(1, 1)), List.of());
        JobPlan plan =
                new JobPlan(Basis.US_ASD, floor, List.of(), new Ground.Unstated(), List.of(shored(), out), Plans.EXACT);
        Assessment assessment = Assessor.assess(plan);

        SituationResult.MemberResult two = girder(assessment, 0);
        SituationResult.MemberResult one = girder(assessment, 1);
        assertThat(two.hogging().value()).isCloseTo(weight * span * span / 8, within(0.01));
        assertThat(one.sagging().value()).isCloseTo(weight * 4 * span * span / 8, within(0.01));
        assertThat(one.hogging().value()).isZero();
        SituationResult.Transfer transfer =
                assessment.situations().get(1).whatIf().transfers().get(0);
        double stiff = TimberCapacity.rigidity(girder.member());
        double sag = 5 * weight * Math.pow(2 * span, 4) / (384 * stiff);
        assertThat(transfer.name()).isEqualTo("K2");
        assertThat(transfer.load()).isCloseTo(1.25 * weight * span, within(0.01));
        assertThat(transfer.movement()).isCloseTo(sag, within(1e-6));
        assertThat(transfer.lift()).isNaN();
    }

    /** A girder taken away with its piers is one transfer, that of the joists which lay on it. */
    @Test
    void aGirderGoesWithItsPiers() {
        JobPlan plan = floor(3, LIVE, shored());
        List<Girder.Pier> piers = List.of(
                new Girder.Pier("K1", 0, 0.1, Plans.RIGID, new Fastening.Loose()),
                new Girder.Pier("K2", 0.8, 0.1, Plans.RIGID, new Fastening.Loose()));
        Bearing far = new Bearing(
                "far",
                SPAN,
                0.1,
                Plans.RIGID,
                0,
                0.8,
                new Fastening.Loose(),
                List.of(),
                new Girder(Plans.twoByTen(2, 90), 0, 0.8, piers));
        Floor floor = new Floor(
                plan.floor().joists(),
                List.of(wall("near", 0), far),
                plan.floor().loads(),
                plan.floor().joistWeight());
        JobPlan girder = new JobPlan(
                plan.basis(), floor, plan.shores(), plan.ground(), List.of(shored(), farOut(0)), plan.circumstances());
        List<SituationResult.Transfer> transfers =
                Assessor.assess(girder).situations().get(1).whatIf().transfers();

        assertThat(transfers).extracting(SituationResult.Transfer::name).containsExactly("far");
        assertThat(transfers.get(0).allowed()).isFinite().isPositive();
    }

    private static SituationResult.MemberResult girder(Assessment assessment, int situation) {
        return assessment.situations().get(situation).members().stream()
                .filter(m -> m.kind() == SituationResult.MemberKind.GIRDER)
                .findFirst()
                .orElseThrow();
    }

    /** Three feet of joist before the shore against the rest and the ties behind it, by hand in inches and pounds. */
    @Test
    void tippingIsMomentsAboutTheShore() {
        JobPlan plan = Plans.reference(new Fastening.Held(300 * Plans.POUND, "ties"), Plans.RIGID);
        double tips = 2 * (310 + 0.75 * 180) * (42 - 1.75) + 2 * (12 + 0.75 * 40) * 42 / 12 * 21;
        double holds = 0.6 * 2 * 12 * 11.5 * 69 + 300 * 132;
        SituationResult.Tipping lowest =
                Assessor.assess(plan).situations().get(1).whatIf().tipping().get(0);
        CheckResult result = Simple.check(plan, CheckId.TIPPING, "J3 over J3 on A");

        assertThat(lowest.factor()).isCloseTo(holds / tips, within(1e-9));
        assertThat(lowest.factor()).isBetween(1.0, 1.5);
        assertThat(result.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(result.ratio()).isCloseTo(1.5 * tips / holds, within(1e-9));
    }

    /** Above a factor of 1.5 it passes: ties of 500 lb. */
    @Test
    void heldDownFirmlyItPasses() {
        JobPlan plan = Plans.reference(new Fastening.Held(500 * Plans.POUND, "ties"), Plans.RIGID);

        assertThat(Simple.check(plan, CheckId.TIPPING, "J3 over J3 on A").verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void whatIsHeldByTiesAloneIsSaid() {
        Assessment tied = Assessor.assess(Plans.reference(new Fastening.Held(500 * Plans.POUND, "ties"), Plans.RIGID));
        Assessment undescribed = Assessor.assess(Plans.reference(new Fastening.Undescribed("nails"), Plans.RIGID));

        assertThat(tied.situations().get(1).whatIf().hangsOnTies()).isTrue();
        assertThat(tied.advisories()).anyMatch(a -> a.code().equals("stands-by-its-fastenings"));
        assertThat(undescribed.situations().get(1).stands()).isFalse();
    }

    /** What the floor is raised clear of on purpose is not a failure; what is tied to it pulls, and is judged all the same. */
    @Test
    void raisedClearOnPurposeButNotOffItsTies() {
        assertThat(farSeat(new Fastening.Loose(), List.of())).isEqualTo(Verdict.FAIL);
        assertThat(farSeat(new Fastening.Loose(), List.of(1))).isEqualTo(Verdict.NOT_APPLICABLE);
        assertThat(farSeat(new Fastening.Held(1, "a thread"), List.of(1))).isEqualTo(Verdict.FAIL);
        assertThat(farSeat(new Fastening.Undescribed("nails"), List.of(1))).isEqualTo(Verdict.NOT_CHECKED);
    }

    private static Verdict farSeat(Fastening fastening, List<Integer> clear) {
        JobPlan plan = floor(3, LIVE, shored());
        Bearing far = new Bearing("far", SPAN, 0.1, Plans.RIGID, -Plans.ANY, Plans.ANY, fastening, List.of());
        Floor floor = new Floor(
                plan.floor().joists(),
                List.of(wall("near", 0), far),
                plan.floor().loads(),
                plan.floor().joistWeight());
        List<Situation.PostLift> lifts = farOut(0.03).lifts();
        Situation raised = new Situation("raised", List.of(), lifts, List.of(), List.of(), clear);
        JobPlan lifted =
                new JobPlan(plan.basis(), floor, plan.shores(), plan.ground(), List.of(raised), plan.circumstances());
        return Simple.check(lifted, CheckId.BEARING_UPLIFT, "J2 on far").verdict();
    }
}
