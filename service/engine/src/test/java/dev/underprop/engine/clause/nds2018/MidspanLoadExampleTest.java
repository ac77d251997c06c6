package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.DF_SELECT;
import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.PSI;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.inches;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Cited;
import org.junit.jupiter.api.Test;

/**
 * American Wood Council, Structural Wood Design Solved Example Problems, 2015/2018, Example E1.2a, pp. 7-10 (read in a
 * transcription): 4x16 DF-L Select Structural, 20 ft, load at midspan, held sideways at its ends only. As printed within
 * half the last digit, unless said otherwise, and as recomputed within 1e-6.
 */
class MidspanLoadExampleTest {
    private static final RectangularSection BEAM = inches(3.5, 15.25);
    private static final double POUND = 4.4482216152605;

    private final Cited size = value(Supplement4.size(DesignValue.BENDING, DF_SELECT, BEAM));
    private final double le = Section3_3.effectiveLength(BeamLoading.CENTRE_LOAD, 240 * INCH, BEAM.depth())
            .value();
    private final double rb =
            value(Section3_3.slenderness(le, BEAM.breadth(), BEAM.depth())).value();
    private final Cited bendingStar =
            adjusted(DesignValue.BENDING_STAR, DF_SELECT, one("CD"), one("CM"), one("Ct"), size, one("Ci"), one("Cr"));
    private final double fbe =
            Section3_3.criticalStress(DF_SELECT.modulusMin(), rb).value();
    private final Cited cl = Section3_3.stability(fbe, bendingStar.value());
    private final Cited bending = adjusted(
            DesignValue.BENDING,
            DF_SELECT,
            one("CD"),
            one("CM"),
            one("Ct"),
            cl,
            size,
            Supplement4.onEdge(),
            one("Ci"),
            one("Cr"));

    @Test
    void sizeFactor() {
        assertThat(size.value()).isEqualTo(1.0);
    }

    @Test
    void effectiveLength() {
        assertThat(le / INCH).isCloseTo(375, within(0.5)).isCloseTo(374.55, within(1e-6));
    }

    @Test
    void slenderness() {
        assertThat(rb).isCloseTo(21.6, within(0.05)).isCloseTo(21.593437, within(1e-6));
    }

    /** Printed 1776; the printed figure is rounded. */
    @Test
    void criticalStress() {
        assertThat(fbe / PSI).isCloseTo(1776, within(0.5)).isCloseTo(1775.770269, within(1e-6));
    }

    @Test
    void stabilityFactor() {
        assertThat(cl.value()).isCloseTo(0.876, within(0.0005)).isCloseTo(0.875623, within(1e-6));
    }

    @Test
    void adjustedBending() {
        assertThat(bending.value() / PSI).isCloseTo(1313, within(0.5)).isCloseTo(1313.435006, within(1e-6));
        assertThat(bending.symbol()).isEqualTo("F'b");
    }

    /** Printed 14849, from F'b before rounding. */
    @Test
    void allowedMoment() {
        double footPounds = bending.value() * BEAM.sectionModulus() / (POUND * 12 * INCH);

        assertThat(footPounds).isCloseTo(14849, within(0.5)).isCloseTo(14848.542358, within(1e-5));
    }

    /** The example leaves the self-weight out of shear and bearing: V = 2831 lb / 2. */
    @Test
    void shear() {
        double stress = Section3_4.shearStress(2831 / 2.0 * POUND, BEAM.area()).value();
        Cited allowed = adjusted(DesignValue.SHEAR, DF_SELECT, one("CD"), one("CM"), one("Ct"), one("Ci"));

        assertThat(stress / PSI).isCloseTo(40, within(0.5)).isCloseTo(39.779859, within(1e-5));
        assertThat(allowed.value() / PSI).isCloseTo(180, within(1e-9));
    }

    @Test
    void bearingAtTheEnd() {
        double stress = Section3_10.bearingStress(2831 / 2.0 * POUND, 3.5 * INCH, BEAM.breadth())
                .value();
        Cited area = Section3_10.areaFactor(3.5 * INCH, 0);
        Cited allowed = adjusted(DesignValue.BEARING, DF_SELECT, one("CM"), one("Ct"), one("Ci"), area);

        assertThat(stress / PSI).isCloseTo(116, within(0.5)).isCloseTo(115.55102, within(1e-5));
        assertThat(allowed.value() / PSI).isCloseTo(625, within(1e-9));
    }
}
