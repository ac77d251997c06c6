package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.DF_SELECT;
import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.POUND;
import static dev.underprop.engine.clause.nds2018.Samples.PSI;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.inches;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Cited;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Fixtures;
import org.junit.jupiter.api.Test;

/**
 * The fixtures' example of a 4x16 DF-L Select Structural, 20 ft, load at midspan, held sideways at its ends only: effective
 * length, slenderness, stability, bending, shear and bearing.
 */
class MidspanLoadExampleTest {
    private static final RectangularSection BEAM = inches(3.5, 15.25);
    private static final Case EXAMPLE = Fixtures.ofKind("beam-stability").stream()
            .filter(c -> c.id().equals("awc-e1.2a"))
            .findFirst()
            .orElseThrow();

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

    private static void agree(String name, double actual) {
        Samples.agree(EXAMPLE.expected(name), actual);
    }

    private static double reaction() {
        return EXAMPLE.expected("pointLoadAllowable").computed().orElseThrow() / 2 * POUND;
    }

    @Test
    void sizeFactor() {
        assertThat(size.value()).isEqualTo(EXAMPLE.inputs().number("CF"));
    }

    @Test
    void effectiveLength() {
        agree("effectiveLength", le / INCH);
    }

    @Test
    void slenderness() {
        agree("RB", rb);
    }

    @Test
    void criticalStress() {
        agree("FbE", fbe / PSI);
    }

    @Test
    void stabilityFactor() {
        agree("CL", cl.value());
    }

    @Test
    void adjustedBending() {
        agree("Fb_adjusted", bending.value() / PSI);
        assertThat(bending.symbol()).isEqualTo("F'b");
    }

    @Test
    void allowedMoment() {
        double footPounds = bending.value() * BEAM.sectionModulus() / (POUND * 12 * INCH);

        agree("momentAllowable", footPounds);
    }

    /** The example leaves the self-weight out of shear and bearing: half the load at midspan. */
    @Test
    void shear() {
        double stress = Section3_4.shearStress(reaction(), BEAM.area()).value();
        Cited allowed = adjusted(DesignValue.SHEAR, DF_SELECT, one("CD"), one("CM"), one("Ct"), one("Ci"));

        agree("fv", stress / PSI);
        agree("Fv_adjusted", allowed.value() / PSI);
    }

    @Test
    void bearingAtTheEnd() {
        double stress = Section3_10.bearingStress(reaction(), 3.5 * INCH, BEAM.breadth())
                .value();
        Cited area = Section3_10.areaFactor(3.5 * INCH, 0);
        Cited allowed = adjusted(DesignValue.BEARING, DF_SELECT, one("CM"), one("Ct"), one("Ci"), area);

        agree("fc_perp", stress / PSI);
        agree("Fc_perp_adjusted", allowed.value() / PSI);
    }
}
