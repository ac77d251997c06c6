package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Seat;
import dev.underprop.engine.plan.Seat.Surface;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A joist that brings 5 kN onto 0.1 m by 0.04 m: 1.25 MPa. */
class SeatJudgeTest {

    private static final Seat UNDECLARED = new Seat.Undeclared();

    private static Bearing bearing(Bearing.Body body, Seat seat) {
        return new Bearing(
                "sill", 0, 0.1, Plans.RIGID, -Plans.ANY, Plans.ANY, new Fastening.Loose(), List.of(), body, seat);
    }

    private static Bearing girder(Seat seat) {
        Girder.Pier pier = new Girder.Pier("pier", 1, 0.2, Plans.RIGID, new Fastening.Loose());
        return bearing(new Girder(Plans.twoByTen(3, 0), 0, 2, List.of(pier)), seat);
    }

    private static Finding strength(Bearing bearing) {
        return SeatJudge.strength(bearing, 5000, 0.004);
    }

    private static Seat flat(Surface on, double pressure) {
        return new Seat.Flat(on, "the engineer", pressure);
    }

    @Test
    void whatIsNotDeclaredIsNotChecked() {
        Bearing bare = bearing(new Bearing.Line(), UNDECLARED);
        Bearing unknown = bearing(new Bearing.Line(), flat(Surface.MASONRY, Double.NaN));

        assertThat(Props.reason(strength(bare))).contains("not declared");
        assertThat(Props.reason(SeatJudge.length(bare, 0.1, Working.OFF))).contains("not declared");
        assertThat(Props.reason(strength(unknown))).contains("pressure");
    }

    @Test
    void aHangerIsComparedByItsLoad() {
        Bearing hung = bearing(new Bearing.Line(), new Seat.Hung("hanger, listed", 4000));

        assertThat(Props.judged(strength(hung)).demand()).isEqualTo(5000);
        assertThat(Props.judged(strength(hung)).capacity()).isEqualTo(4000);
        assertThat(SeatJudge.length(hung, 0.01, Working.OFF)).isInstanceOf(CheckResult.NotApplicable.class);
    }

    @Test
    void aSurfaceIsComparedByItsPressure() {
        Bearing wall = bearing(new Bearing.Line(), flat(Surface.MASONRY, 2e6));

        assertThat(Props.judged(strength(wall)).demand()).isCloseTo(1.25e6, within(1e-6));
        assertThat(Props.judged(strength(wall)).capacity()).isEqualTo(2e6);
    }

    /** Hem-fir across the grain: 405 psi. What a plan states of it may only lower that. */
    @Test
    void aGirderIsKnownByItsWood() {
        double across = 405 * Plans.PSI;

        assertThat(Props.judged(strength(girder(UNDECLARED))).capacity()).isCloseTo(across, within(1e-6));
        assertThat(Props.judged(strength(girder(flat(Surface.WOOD, 1e6)))).capacity())
                .isEqualTo(1e6);
        assertThat(Props.judged(strength(girder(flat(Surface.WOOD, 9e6)))).capacity())
                .isCloseTo(across, within(1e-6));
        assertThat(Props.judged(strength(girder(new Seat.Hung("hanger", 6000)))).capacity())
                .isEqualTo(6000);
        assertThat(Props.judged(SeatJudge.length(girder(UNDECLARED), 0.05, Working.OFF))
                        .demand())
                .isCloseTo(1.5 * Plans.INCH, within(1e-12));
    }

    /** IRC R502.6: 1 1/2 in on wood or metal, 3 in on masonry or concrete, with a wood sill between as well. */
    @ParameterizedTest
    @CsvSource({"WOOD, 1.5", "METAL, 1.5", "MASONRY, 3", "CONCRETE, 3", "SILL_ON_MASONRY, 3"})
    void theSeatIsLongEnough(Surface on, double least) {
        Bearing wall = bearing(new Bearing.Line(), flat(on, 2e6));
        CheckResult.Judged judged = Props.judged(SeatJudge.length(wall, 2 * Plans.INCH, Working.OFF));

        assertThat(judged.demand()).isCloseTo(least * Plans.INCH, within(1e-12));
        assertThat(judged.capacity()).isEqualTo(2 * Plans.INCH);
    }

    /** Three joists 0.5 m apart over 4 m, 2 kN/m²: the middle one brings 2 kN onto 38.1 mm by 40 mm, 1.31 MPa. */
    @Test
    void inAPlanEveryJoistIsJudgedAtEveryBearing() {
        assertThat(check(CheckId.SEAT_STRENGTH, flat(Surface.WOOD, 1.2e6)).verdict())
                .isEqualTo(Verdict.FAIL);
        CheckResult passing = check(CheckId.SEAT_STRENGTH, flat(Surface.WOOD, 1.4e6));
        assertThat(passing.verdict()).isEqualTo(Verdict.PASS);
        assertThat(Props.judged(passing.finding()).demand()).isCloseTo(2000 / (0.0381 * 0.04), within(1.0));
        assertThat(check(CheckId.SEAT_LENGTH, flat(Surface.WOOD, 1e6)).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(check(CheckId.SEAT_LENGTH, flat(Surface.CONCRETE, 1e6)).verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(check(CheckId.SEAT_LENGTH, UNDECLARED).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    private static CheckResult check(CheckId id, Seat seat) {
        JobPlan bare = Simple.floor(Plans.twoByTen(1, 0), 0.5, 4, 0.04, new Intensity(2000, 0, 0, 0));
        List<Bearing> bearings = bare.floor().bearings().stream()
                .map(b -> new Bearing(
                        b.name(),
                        b.y(),
                        b.length(),
                        b.stiffness(),
                        b.from(),
                        b.to(),
                        b.fastening(),
                        b.gaps(),
                        b.body(),
                        seat))
                .toList();
        Floor floor = new Floor(
                bare.floor().joists(),
                bearings,
                bare.floor().loads(),
                bare.floor().joistWeight());
        return Simple.check(Simple.plan(floor, List.of(), bare.ground()), id, "J2 on near");
    }
}
