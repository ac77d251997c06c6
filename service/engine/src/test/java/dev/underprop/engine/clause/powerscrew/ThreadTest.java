package dev.underprop.engine.clause.powerscrew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;

/** Worked examples of textbooks (read in public companions of worked solutions), and bounds worked by hand. */
class ThreadTest {

    private static final double INCH = 0.0254;
    private static final double POUND = 4.4482216152605;
    private static final double POUND_INCH = POUND * INCH;

    /** Wentzell, Machine Design, 1st edition, examples 18.1 and 18.2: square, three to the inch. */
    private static final Thread SQUARE = new Thread(1.354 * INCH, INCH / 3, 0);

    /** The same, example 18.3: 1-1/2 in Acme, four to the inch. */
    private static final Thread ACME = new Thread(1.375 * INCH, INCH / 4, StrictMath.toRadians(14.5));

    private static double raising(Thread thread, double load, double friction) {
        return ((Outcome.Value) thread.raising(load, friction)).cited().value();
    }

    @Test
    void torqueThatRaises() {
        assertThat(raising(SQUARE, 2900 * POUND, 0.15) / POUND_INCH).isCloseTo(453.68, within(0.005));
        assertThat(raising(ACME, 2900 * POUND, 0.15) / POUND_INCH).isCloseTo(428.13, within(0.005));
        assertThat(raising(ACME, 0, 0.15)).isZero();
    }

    @Test
    void leadAngleAndEfficiency() {
        assertThat(StrictMath.toDegrees(SQUARE.leadAngle().value())).isCloseTo(4.48, within(0.005));
        assertThat(StrictMath.toDegrees(ACME.leadAngle().value())).isCloseTo(3.31, within(0.005));
        assertThat(SQUARE.efficiency(0.15).value()).isCloseTo(0.3391, within(0.00005));
    }

    /** Efficiency is work on the load over work on the screw: load times lead over torque times a whole turn. */
    @Test
    void efficiencyIsWorkOverWork() {
        double torque = raising(ACME, 1000, 0.15);

        assertThat(ACME.efficiency(0.15).value()).isCloseTo(1000 * INCH / 4 / (2 * Math.PI * torque), within(1e-12));
    }

    /** Khurmi and Gupta, Theory of Machines, 14th edition, example 10.9: 61.1 N at a lever of 0.7 m (printed 62, rounded). */
    @Test
    void torqueThatLowers() {
        Thread jack = new Thread(0.05, 0.01, 0);

        assertThat(jack.lowering(20_000, 0.15).value() / 0.7).isCloseTo(61.0866814, within(1e-6));
        assertThat(raising(jack, 20_000, 0.15) / 0.7).isCloseTo(154.087122, within(1e-6));
    }

    /** tan of the lead angle is 1/(3·pi·1.354) = 0.07836 for the square thread; the flank of the Acme one presses by 1/cos 14.5. */
    @Test
    void staysWhereFrictionIsAboveItsSlope() {
        double square = 1 / (3 * Math.PI * 1.354);
        double acme = 0.25 / (Math.PI * 1.375) * StrictMath.cos(StrictMath.toRadians(14.5));

        assertThat(SQUARE.lockingFriction().value()).isCloseTo(square, within(1e-12));
        assertThat(ACME.lockingFriction().value()).isCloseTo(acme, within(1e-12));
        assertThat(acme).isCloseTo(0.05603, within(0.00001));
        assertThat(ACME.selfLocking(0.057)).isTrue();
        assertThat(ACME.selfLocking(0.055)).isFalse();
        assertThat(ACME.lowering(1000, 0.057).value()).isPositive();
        assertThat(ACME.lowering(1000, 0.055).value()).isNegative();
    }

    /** Where friction is exactly the slope, it does not stay: nothing is left to hold it. */
    @Test
    void onItsSlopeItDoesNotStay() {
        Thread even = new Thread(1 / Math.PI, 0.25, 0);

        assertThat(even.lockingFriction().value()).isEqualTo(0.25);
        assertThat(even.selfLocking(0.25)).isFalse();
        assertThat(even.selfLocking(Math.nextUp(0.25))).isTrue();
    }

    /** Lead over girth of 1 and friction of 1: the nut climbs against a wall of 45 degrees plus 45, and binds. */
    @Test
    void bindsWhereFrictionTimesSlopeIsOne() {
        Thread steep = new Thread(1 / Math.PI, 1, 0);

        assertThat(steep.raising(1000, 1)).isInstanceOf(Outcome.Refused.class);
        assertThat(steep.raising(1000, 2)).isInstanceOf(Outcome.Refused.class);
        assertThat(steep.raising(1000, 0.99)).isInstanceOf(Outcome.Value.class);
        assertThat(raising(steep, 1000, 0.5)).isCloseTo(1000 / (2 * Math.PI) * 1.5 / 0.5, within(1e-9));
        assertThat(raising(new Thread(1 / Math.PI, 0.5, StrictMath.toRadians(30)), 1000, 0.5))
                .isCloseTo(
                        1000
                                / (2 * Math.PI)
                                * (0.5 + 0.5 / StrictMath.cos(Math.PI / 6))
                                / (1 - 0.25 / StrictMath.cos(Math.PI / 6)),
                        within(1e-9));
    }

    @Test
    void noThreadOfImpossibleSize() {
        assertThatThrownBy(() -> new Thread(0, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Thread(1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Thread(1, 1, -0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Thread(1, 1, Math.PI / 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ACME.raising(-1, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ACME.lowering(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Sadhu Singh, Machine Design I, example 9.14: a double start, collar of 17.5 mm, root of 27 mm. */
    @Test
    void collarAndStressOfAJack() {
        double thread = raising(new Thread(0.0295, 0.01, 0), 12_000, 0.15);
        double torque = thread + Screw.collar(12_000, 0.2, 0.0175).value();
        double axial = Screw.axial(12_000, 0.027).value();
        double twist = Screw.twist(torque, 0.027).value();

        assertThat(torque).isCloseTo(88.4, within(0.05));
        assertThat(axial / 1e6).isCloseTo(20.96, within(0.005));
        assertThat(twist / 1e6).isCloseTo(22.87, within(0.005));
        assertThat(Screw.greatestShear(axial, twist).value() / 1e6).isCloseTo(25.16, within(0.005));
        assertThat(Screw.twist(-torque, 0.027).value()).isEqualTo(twist);
    }

    /** A public examination problem: 20 kN, lead 10 mm, efficiency 0.7 take 45.5 N·m; on a wrench of 0.5 m 90.9 N. */
    @Test
    void torqueByEfficiencyAndPull() {
        double torque = Screw.byEfficiency(20_000, 0.01, 0.7).value();

        assertThat(torque).isCloseTo(45.5, within(0.05));
        assertThat(Screw.pull(torque, 0.5).value()).isCloseTo(2 * torque, within(1e-12));
    }
}
