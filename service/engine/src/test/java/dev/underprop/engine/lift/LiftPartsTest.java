package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LiftPartsTest {

    private static final double L = 15.8 * FOOT - 2 * INCH;

    /** A joist on two walls raised in the middle by h: h (3 s/L - 4 (s/L)^3) in the first half. */
    @Test
    void levelsBetweenContactsFollowTheBentJoist() {
        double middle = (15.8 * FOOT + 2 * INCH) / 2;
        JobPlan plan = Lifts.row(2, new Post.Rigid(), 12000 * POUND, middle);
        List<LiftRequest.Point> points = new ArrayList<>();
        for (double part : new double[] {0, 0.125, 0.25, 0.5, 0.9}) {
            points.add(new LiftRequest.Point("p", 0, 2 * INCH + part * L, 0, Double.NaN));
        }
        StudiedFloor study = StudiedFloor.of(plan);
        LiftRequest request = Lifts.request(plan, Lifts.limits(INCH / 8, 1), ACME, 0.1 * INCH);
        LiftFloor floor = new LiftFloor(study, Lifts.SHORED, new Sag(study, request.survey()), request.crept());
        List<Span> levels = new Levels(floor, points).at(floor.at(new double[] {0.1 * INCH, 0.1 * INCH}));

        double moved = levels.get(3).least();
        for (int i = 0; i < points.size(); i++) {
            double s = (points.get(i).y() - 2 * INCH) / L;
            double t = Math.min(s, 1 - s);
            assertThat(levels.get(i).least()).isCloseTo(moved * (3 * t - 4 * t * t * t), within(1e-9));
        }
        assertThat(moved).isBetween(0.05 * INCH, 0.1 * INCH);
    }

    @Test
    void noMoreThanTheLimitInAnyDay() {
        LiftLimits limits = new LiftLimits(
                Double.NaN,
                INCH / 8,
                INCH / 4,
                Double.NaN,
                4 * 3600,
                LiftLimits.Slope.UNSTATED,
                LiftLimits.Ratios.WHOLE,
                List.of());
        Calendar calendar = new Calendar(limits);
        double[] raise = {INCH / 8};

        assertThat(calendar.next(raise)).isZero();
        assertThat(calendar.next(raise)).isEqualTo(4);
        assertThat(calendar.next(raise)).isEqualTo(24);
        assertThat(calendar.next(raise)).isEqualTo(28);
        assertThat(calendar.next(raise)).isEqualTo(48);
    }

    @Test
    void whatIsNotKnownHidesOnlyWhatIsWithinTheLimit() {
        Limit limit = new Limit(Limit.Kind.POST, "post A", 1);

        assertThat(limit.worse(0.5, 0.7)).isEqualTo(0.7);
        assertThat(limit.worse(0.5, Double.NaN)).isNaN();
        assertThat(limit.worse(Double.NaN, 0.5)).isNaN();
        assertThat(limit.worse(Double.NaN, Double.NaN)).isNaN();
        assertThat(limit.worse(1.3, Double.NaN)).isEqualTo(1.3);
        assertThat(limit.worse(Double.NaN, Double.POSITIVE_INFINITY)).isInfinite();
    }

    @Test
    void aLineIsStraightBetweenItsPointsAndEndsAtThem() {
        List<LiftRequest.Point> points = List.of(
                new LiftRequest.Point("a", 0, 1, 0, Double.NaN),
                new LiftRequest.Point("off", 1, 3, 99, Double.NaN),
                new LiftRequest.Point("b", 2, 1.1, 1, Double.NaN));
        Line line = new Line(points, 1, List.of(0.0, 99.0, 1.0));

        assertThat(line.at(0.5).orElseThrow()).isEqualTo(0.25);
        assertThat(line.at(2.1).orElseThrow()).isEqualTo(1);
        assertThat(line.at(2.2)).isEmpty();
    }

    @Test
    void sharesOfAWholeAddUpAndDifferByOneAtMost() {
        for (int whole = 0; whole < 30; whole++) {
            for (int parts = 1; parts < 8; parts++) {
                assertThat(Stager.share(whole, 0, parts)).isZero();
                assertThat(Stager.share(whole, parts, parts)).isEqualTo(whole);
                for (int part = 1; part <= parts; part++) {
                    int one = Stager.share(whole, part, parts) - Stager.share(whole, part - 1, parts);
                    assertThat(one).isBetween(whole / parts, (whole + parts - 1) / parts);
                }
            }
        }
    }

    /** Joists over three walls, the middle one sunk: the share that has not crept takes load off it. */
    @Test
    void sagThatHasNotCreptCarriesStress() {
        JobPlan two = Lifts.row(2, new Post.Rigid(), 12000 * POUND, 4 * FOOT);
        List<Bearing> bearings = new ArrayList<>(two.floor().bearings());
        bearings.add(1, Lifts.bearing("middle wall", 8 * FOOT));
        Floor floor = new Floor(
                two.floor().joists(), bearings, two.floor().loads(), two.floor().joistWeight());
        List<Shore> shores = two.shores();
        JobPlan plan = Lifts.plan(floor, shores);
        LiftRequest request = Lifts.request(plan, Lifts.limits(INCH / 8, 1), ACME, 0.25 * INCH);
        List<LiftRequest.Point> points = new ArrayList<>(request.survey().points());
        double[][] levels = {{2 * INCH, 0}, {8 * FOOT, -0.02 * INCH}, {15.8 * FOOT, 0}};
        for (double[] level : levels) {
            points.add(new LiftRequest.Point("left " + level[0], 0, level[0], level[1], Double.NaN));
            points.add(new LiftRequest.Point("right " + level[0], 4 * FOOT, level[0], level[1], Double.NaN));
        }
        StudiedFloor study = StudiedFloor.of(plan);
        Sag known = new Sag(study, new LiftRequest.Survey(points, INCH / 32));
        Sag unknown = new Sag(study, request.survey());
        LiftFloor lift = new LiftFloor(study, Lifts.SHORED, known, LiftRequest.Crept.UNKNOWN);
        int middle = 1;

        assertThat(unknown.unknown()).contains("middle wall");
        assertThat(known.unknown()).isEmpty();
        assertThat(known.shares(LiftRequest.Crept.UNKNOWN)).containsExactly(0, 0.5, 1);
        assertThat(lift.bounds()).hasSize(3);
        double elastic = lift.found(0).force(middle);
        double half = lift.found(1).force(middle);
        double crept = lift.found(2).force(middle);
        assertThat(elastic).isLessThan(half);
        assertThat(half).isLessThan(crept);
        assertThat(half).isCloseTo((elastic + crept) / 2, within(1.0));
    }
}
