package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.ratio;
import static dev.underprop.engine.pad.Under.reason;
import static dev.underprop.engine.pad.Under.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import org.junit.jupiter.api.Test;

/** A plate of 0.25 m square and 12.7 mm on timber that bears 2 MPa, under a base plate of 0.15 m square and 10 kN. */
class SpreadPadTest {

    private static final Plate BASE = new Plate(0.15, 0.15);
    private static final double LOAD = 10_000;
    private static final double BEARING = 2e6;

    private static Pad.Mat mat(double size) {
        WoodGrade grade = new WoodGrade(
                "Hem-Fir",
                "No.2",
                6e6,
                3e6,
                1e6,
                BEARING,
                9e6,
                9e9,
                3e9,
                0.43,
                WoodGrade.Sizes.WESTERN_DIMENSION,
                Citation.read("NDS Supplement", "2018", "Table 4A"));
        Member timber =
                new Member("2x10", new RectangularSection(0.0381, 0.23495), 1, grade, true, Member.Moisture.WET, 0);
        return new Pad.Mat(timber, 2, 1, true, new Pad.SpreadPlate(size, size, 0.0127, 250e6));
    }

    private static Finding judge(double size, double off, double centring) {
        Pad.Mat mat = mat(size);
        Pad pad = new Pad("mat", Pad.Kind.TIMBER, 0.6, 0.47, 0.0762, Under.NO_WEIGHT, mat, new Pad.Within(centring));
        return SpreadPad.judge(pad, mat, BASE, LOAD, off, BEARING);
    }

    /** 160 kPa; out (0.25 - 0.075)/2 = 87.5 mm; 612.5 N over Z 40.32 mm2 is 15.19 MPa of 250/1.67 MPa. */
    @Test
    void itBendsBeforeItCrushesTheTimber() {
        assertThat(ratio(judge(0.25, 0, 0))).isCloseTo(0.10147, within(1e-4));
    }

    /** 20 mm off: 1 + 6 x 0.02 x 1.41421/0.25 = 1.67882 times as hard at the worst corner. */
    @Test
    void offItsMiddleItPressesHarder() {
        assertThat(ratio(judge(0.25, 0.02, 0))).isCloseTo(0.10147 * 1.67882, within(2e-4));
        assertThat(refusal(judge(0.25, 0.03, 0))).contains("a part of it lifts");
    }

    @Test
    void whatReachesBeyondIsNotJudged() {
        assertThat(reason(judge(0.14, 0, 0))).contains("reaches beyond the steel plate");
        assertThat(reason(judge(0.16, 0, 0.01))).contains("reaches beyond the steel plate");
        assertThat(reason(judge(0.5, 0, 0))).contains("or that plate beyond the mat");
    }

    /** 10 kN on 0.0225 m2 against 0.9 x 250 MPa. */
    @Test
    void steelOnSteel() {
        Pad.SpreadPlate steel = new Pad.SpreadPlate(0.25, 0.25, 0.0127, 250e6);

        assertThat(ratio(SpreadPad.pressed(BASE, steel, LOAD, Working.OFF))).isCloseTo(0.444444 / 225, within(1e-7));
    }

    /** 76.97 kN/m3 x 0.25 x 0.25 x 0.0127 = 61.1 N. */
    @Test
    void itsWeightCounts() {
        Pad pad = new Pad("mat", Pad.Kind.TIMBER, 0.6, 0.47, 0.0762, Under.NO_WEIGHT, mat(0.25));

        assertThat(pad.weightOf(Under.NO_WEIGHT)).isCloseTo(61.1, within(0.05));
    }
}
