package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.SeatGap;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What counts as holding a member, and what a joist near a seat does: cases in which a careless count would pass. */
class HeldAndRisingTest {

    private static final double LENGTH = 15 * Plans.FOOT;

    private static JobPlan plan(List<Joist> joists, List<Bearing> bearings, List<Shore> shores, Load... loads) {
        return new JobPlan(
                dev.underprop.engine.standard.Basis.US_ASD,
                new Floor(joists, bearings, List.of(loads), Floor.JoistWeight.INCLUDED_IN_DEAD),
                shores,
                Plans.SILTY_SAND,
                List.of(new Situation("shored", List.of(), List.of())));
    }

    private static Bearing bearing(String name, double y, Fastening fastening, double gap, int joists) {
        List<SeatGap> gaps = new ArrayList<>();
        for (int j = 0; j < joists; j++) {
            gaps.add(new SeatGap(j, gap));
        }
        return new Bearing(name, y, 3.5 * Plans.INCH, Plans.RIGID, -Plans.ANY, Plans.ANY, fastening, gaps);
    }

    private static Shore shore(double... posts) {
        List<Post> list = new ArrayList<>();
        for (double x : posts) {
            list.add(Plans.post("A" + (list.size() + 1), x, Plans.RIGID));
        }
        return new Shore("A", 5 * Plans.FOOT, Plans.twoByTen(3, 90), -0.3, 3.1, List.of(), list);
    }

    private static CheckResult at(JobPlan plan, CheckId id, String place) {
        return Simple.check(plan, id, place);
    }

    private static double hoggingAllowed(double unbraced) {
        return new TimberCapacity(Plans.twoByTen(1, 0), 1.15).bending(LoadDuration.TEN_YEARS, unbraced);
    }

    private static double allowed(CheckResult result) {
        return ((CheckResult.Judged) result.finding()).capacity();
    }

    /** A seat that is not even touched, and seats that the joist merely lies on, hold no bottom edge. */
    @Test
    void onlyAFasteningHoldsTheBottomEdge() {
        List<Joist> joists = Plans.row(5, 16 * Plans.INCH, LENGTH);
        Bearing near = bearing("near", 0.05, new Fastening.Loose(), 0, 0);
        Bearing far = bearing("far", LENGTH - 0.05, new Fastening.Loose(), 0, 0);
        Bearing clear = bearing("clear", 10 * Plans.FOOT, new Fastening.Loose(), 0.15, 5);
        Load floor = Plans.area(12, 40);

        JobPlan bare = plan(joists, List.of(near, far), List.of(shore(0, 1.4, 2.8)), floor);
        JobPlan withClear = plan(joists, List.of(near, far, clear), List.of(shore(0, 1.4, 2.8)), floor);

        assertThat(allowed(at(bare, CheckId.JOIST_BENDING, "J3"))).isCloseTo(hoggingAllowed(LENGTH), within(1.0));
        assertThat(allowed(at(withClear, CheckId.JOIST_BENDING, "J3"))).isCloseTo(hoggingAllowed(LENGTH), within(1.0));
    }

    @Test
    void aFastenedSeatHoldsIt() {
        List<Joist> joists = Plans.row(5, 16 * Plans.INCH, LENGTH);
        Bearing near = bearing("near", 0.05, new Fastening.Loose(), 0, 0);
        Bearing far = bearing("far", LENGTH - 0.05, new Fastening.Loose(), 0, 0);
        Bearing tied = bearing("tied", 10 * Plans.FOOT, new Fastening.Held(2000, "ties"), 0, 0);
        JobPlan held = plan(joists, List.of(near, far, tied), List.of(shore(0, 1.4, 2.8)), Plans.area(12, 40));

        double longest = 10 * Plans.FOOT;
        assertThat(allowed(at(held, CheckId.JOIST_BENDING, "J3"))).isCloseTo(hoggingAllowed(longest), within(1.0));
    }

    /** A sixty-fourth of an inch of clear space must not turn a joist end that rises into one that merely stands clear. */
    @Test
    void aTokenGapDoesNotHideAJoistThatRises() {
        List<Joist> joists = Plans.row(5, 16 * Plans.INCH, LENGTH);
        Bearing near = bearing("near", 0.05, new Fastening.Loose(), 0, 0);
        Bearing middle = bearing("middle", 7 * Plans.FOOT, new Fastening.Loose(), 0, 0);
        Bearing far = bearing("far", LENGTH - 0.05, new Fastening.Loose(), Plans.INCH / 64, 5);
        Load heavy = new Load.Across(
                "store",
                new dev.underprop.engine.plan.Intensity(20_000, 0, 0, 0),
                3 * Plans.FOOT,
                -Plans.ANY,
                Plans.ANY);

        CheckResult rising =
                at(plan(joists, List.of(near, middle, far), List.of(), heavy), CheckId.BEARING_UPLIFT, "J3 on far");

        assertThat(rising.verdict()).isEqualTo(Verdict.FAIL);
    }

    /** Half of the joist stands beyond the beam's end: half the area, twice the stress. */
    @Test
    void onlyTheWoodThatMeetsCounts() {
        List<Joist> joists = Plans.row(3, 16 * Plans.INCH, LENGTH);
        Bearing near = bearing("near", 0.05, new Fastening.Loose(), 0, 0);
        Bearing far = bearing("far", LENGTH - 0.05, new Fastening.Loose(), 0, 0);
        List<Post> posts = List.of(Plans.post("A1", 0.2, Plans.RIGID), Plans.post("A2", 0.7, Plans.RIGID));
        Shore whole = new Shore("A", 5 * Plans.FOOT, Plans.twoByTen(3, 90), -0.1, 1.1, List.of(), posts);
        Shore half = new Shore("A", 5 * Plans.FOOT, Plans.twoByTen(3, 90), 0, 1.0, List.of(), posts);

        CheckResult onWhole = at(
                plan(joists, List.of(near, far), List.of(whole), Plans.area(12, 40)),
                CheckId.BEAM_BEARING_AT_JOIST,
                "J1 on A");
        CheckResult onHalf = at(
                plan(joists, List.of(near, far), List.of(half), Plans.area(12, 40)),
                CheckId.BEAM_BEARING_AT_JOIST,
                "J1 on A");

        double ratio =
                ((CheckResult.Judged) onHalf.finding()).demand() / ((CheckResult.Judged) onWhole.finding()).demand();
        assertThat(ratio).isCloseTo(2, within(1e-6));
    }

    /** Two joists near each other and a third ten feet off are no repetitive members; nor is a lapped one a neighbour. */
    @Test
    void repetitiveMembersStandCloseOnBothSides() {
        List<Joist> apart =
                List.of(joist("J1", 0, 0), joist("J2", 24 * Plans.INCH, 0), joist("J3", 120 * Plans.INCH, 0));
        List<Joist> lapped = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            lapped.add(joist("N" + i, i * 32 * Plans.INCH, 0));
            lapped.add(joist("F" + i, i * 32 * Plans.INCH + 1.5 * Plans.INCH, LENGTH - 1));
        }

        assertThat(allowed(at(simple(apart), CheckId.JOIST_BENDING, "J1"))).isCloseTo(sagging(1), within(1.0));
        assertThat(allowed(at(simple(lapped), CheckId.JOIST_BENDING, "N1"))).isCloseTo(sagging(1), within(1.0));
        assertThat(allowed(at(simple(Plans.row(3, 24 * Plans.INCH, LENGTH)), CheckId.JOIST_BENDING, "J1")))
                .isCloseTo(sagging(1.15), within(1.0));
    }

    private static Joist joist(String name, double x, double start) {
        return new Joist(name, x, start, LENGTH, Plans.twoByTen(1, 0));
    }

    private static double sagging(double repetitive) {
        return new TimberCapacity(Plans.twoByTen(1, 0), repetitive).bending(LoadDuration.TEN_YEARS, 0);
    }

    private static JobPlan simple(List<Joist> joists) {
        List<Bearing> bearings = new ArrayList<>();
        for (double y : new double[] {0.05, LENGTH - 0.5, 2 * LENGTH - 1.05}) {
            bearings.add(bearing("at " + y, y, new Fastening.Loose(), 0, 0));
        }
        return plan(joists, bearings, List.of(), Plans.area(12, 40));
    }
}
