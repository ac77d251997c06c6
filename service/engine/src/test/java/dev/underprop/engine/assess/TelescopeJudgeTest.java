package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.plan.Telescope.Part;
import dev.underprop.engine.plan.Telescope.Pin;
import dev.underprop.engine.plan.Telescope.Screw;
import dev.underprop.engine.plan.Telescope.Thread;
import dev.underprop.engine.section.RoundTube;
import org.junit.jupiter.api.Test;

/** Telescopic posts; capacities of the columns by finite elements, of pins and threads by hand, apart from this code. */
class TelescopeJudgeTest {

    private static final double LEAN = 1.5 * Math.PI / 180;
    private static final Thread NONE = new Telescope.NoScrew();
    private static final Pin PIN = new Pin(0.016, 0.018, 250e6, 400e6);

    private static Part part(double diameter, double wall) {
        return new Part(new RoundTube(diameter, wall), 235e6);
    }

    /** 60.3 mm by 4 mm over 48.3 mm by 3.2 mm, outer 1.8 m, overlap 0.4 m. */
    private static Telescope slender(double off, Telescope.Joint pin, Thread thread) {
        return new Telescope(part(0.0603, 0.004), part(0.0483, 0.0032), 1.8, 0.4, off, pin, thread);
    }

    /** 60.3 mm over 48.3 mm, both of 4 mm; outer 1.2 m, overlap 0.3 m, 10 mm off. */
    private static Telescope screwed(boolean foot) {
        Screw screw = new Screw(foot, 0.03, 250e6, 235e6, 0.2, 0.05, 0.0005);
        return new Telescope(part(0.0603, 0.004), part(0.0483, 0.004), 1.2, 0.3, 0.01, PIN, screw);
    }

    /** 88.9 mm over 76.1 mm, both of 4 mm. */
    private static Telescope stocky(double outer, double off, Pin pin, Thread thread) {
        return new Telescope(part(0.0889, 0.004), part(0.0761, 0.004), outer, 0.2, off, pin, thread);
    }

    private static void check(Telescope post, double height, double lean, double expected, String first) {
        PostMethods.Ruling ruling = TelescopeJudge.judge(post, height, 5000, lean);

        assertThat(judged(ruling.finding()).capacity()).isCloseTo(expected, within(2e-6 * expected));
        assertThat(judged(ruling.finding()).demand()).isEqualTo(5000);
        assertThat(ruling.rule().locator()).endsWith("first comes " + first);
    }

    @Test
    void theColumnRules() {
        check(slender(0.01, PIN, NONE), 3, 0, 12145.4245, "the inner tube at its pin holes");
        check(slender(0.025, PIN, NONE), 3, LEAN, 6769.7052, "the inner tube at its pin holes");
        check(screwed(false), 2.4, 0.01, 13245.6074, "the inner tube at its pin holes");
        check(screwed(true), 2.4, 0.01, 13785.3103, "the inner tube at its pin holes");
    }

    /** 12 mm pin, 4.8 mm of play: 2 times 1.6·250e6·pi·0.012³/32/1.67 over 8.8 mm. */
    @Test
    void thePinRules() {
        check(stocky(0.8, 0.005, new Pin(0.012, 0.013, 250e6, 400e6), NONE), 1.2, 0, 9234.948464, "bending of the pin");
    }

    /** 0.4·100e6·pi·0.03·0.01/2. */
    @Test
    void theThreadRules() {
        Screw screw = new Screw(true, 0.03, 250e6, 100e6, 0.1, 0.01, 0);
        check(stocky(0.7, 0, new Pin(0.02, 0.021, 250e6, 400e6), screw), 1.2, 0, 18849.555922, "shear of the thread");
    }

    /** 2·(pi/4·0.016²)·0.45·400e6/2; 1.8·235e6·0.016·2·0.0032/2. */
    @Test
    void theLimitsOfAPin() {
        assertThat(PinJoint.pin(slender(0, PIN, NONE), PIN, Working.OFF))
                .extracting(PinJoint.Limit::capacity)
                .usingComparatorForType(
                        (one, other) -> Math.abs(one - other) < 0.01 ? 0 : Double.compare(one, other), Double.class)
                .containsExactly(36191.147, 25346.603, 27072.0, 21657.6);
    }

    /** A pin of weaker steel than the tubes rules its bearing: 1.8·200e6·0.016·2·0.004/2 on the outer one. */
    @Test
    void theWeakerSteelBears() {
        Pin weak = new Pin(0.016, 0.018, 200e6, 400e6);
        assertThat(PinJoint.pin(slender(0, weak, NONE), weak, Working.OFF)
                        .get(2)
                        .capacity())
                .isCloseTo(23040, within(0.01));
    }

    private static Finding judge(Telescope post, double height) {
        return TelescopeJudge.judge(post, height, 1, 0).finding();
    }

    @Test
    void whatIsNotStatedIsNotChecked() {
        Part unknown = new Part(new RoundTube(0.0603, 0.004), Double.NaN);
        Telescope bare = new Telescope(
                unknown, part(0.0483, 0.0032), 1.8, 0.4, 0, new Telescope.NoPin(), new Telescope.UnstatedScrew());

        assertThat(reason(judge(bare, 3)))
                .contains("yield stress of the outer tube")
                .contains("the pin")
                .contains("the screw, or that there is none")
                .doesNotContain("inner tube");
        assertThat(reason(judge(slender(0, new Telescope.NoPin(), NONE), 3))).endsWith("the pin (declare: pin)");
        assertThat(reason(judge(slender(0, PIN, NONE), 1.8))).contains("reach the height");
    }

    @Test
    void outsideTheRulesIsRefused() {
        assertThat(refusal(judge(slender(0, PIN, NONE), 4.4))).contains("beyond 200");
        assertThat(refusal(judge(slender(0, new Pin(0.016, 0.0245, 250e6, 400e6), NONE), 3)))
                .contains("half of the inner tube");
        Telescope thin = new Telescope(part(0.0903, 0.001), part(0.0483, 0.0032), 1.8, 0.4, 0, PIN, NONE);
        assertThat(refusal(judge(thin, 3))).contains("outer tube").contains("of the diameter");
    }

    @Test
    void tubesThatDoNotFitArePlansWithoutSense() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Telescope(part(0.0603, 0.004), part(0.0523, 0.003), 1.8, 0.4, 0, PIN, NONE));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Telescope(part(0.0603, 0.004), part(0.0483, 0.003), 1.8, 1.9, 0, PIN, NONE));
        assertThatIllegalArgumentException().isThrownBy(() -> new Pin(0.016, 0.015, 250e6, 400e6));
    }

    /** A load off the middle, a lean, a shorter overlap and a looser screw each take away. */
    @Test
    void whateverIsWorseBearsLess() {
        double plain = judged(judge(slender(0.01, PIN, NONE), 3)).capacity();
        Telescope shorter = new Telescope(part(0.0603, 0.004), part(0.0483, 0.0032), 1.8, 0.2, 0.01, PIN, NONE);

        assertThat(judged(judge(slender(0.02, PIN, NONE), 3)).capacity()).isLessThan(plain);
        assertThat(judged(TelescopeJudge.judge(slender(0.01, PIN, NONE), 3, 1, LEAN)
                                .finding())
                        .capacity())
                .isLessThan(plain);
        assertThat(judged(judge(shorter, 3)).capacity()).isLessThan(plain);
        assertThat(judged(judge(slender(0.01, PIN, NONE), 2.9)).capacity()).isGreaterThan(plain);
    }
}
