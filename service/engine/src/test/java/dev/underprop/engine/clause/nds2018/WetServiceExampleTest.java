package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.DF_1;
import static dev.underprop.engine.clause.nds2018.Samples.PSI;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.agree;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.twoBy;
import static dev.underprop.engine.clause.nds2018.Samples.value;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.standard.Cited;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Fixtures;
import org.junit.jupiter.api.Test;

/** The fixtures' example of a wet 2x8 DF-L No.1 under dead load and snow. */
class WetServiceExampleTest {
    private static final Case EXAMPLE = Fixtures.ofKind("adjusted-values").stream()
            .filter(c -> c.id().equals("ce479-2006-adjusted"))
            .findFirst()
            .orElseThrow();

    private final Cited snow = Section2_3.loadDuration(LoadDuration.TWO_MONTHS);

    private static Cited size(DesignValue value) {
        return value(Supplement4.size(value, DF_1, twoBy(8)));
    }

    private static Cited wet(DesignValue value) {
        return Supplement4.wetService(value, DF_1, size(value), Moisture.WET);
    }

    @Test
    void bending() {
        Cited bending = adjusted(
                DesignValue.BENDING,
                DF_1,
                snow,
                wet(DesignValue.BENDING),
                one("Ct"),
                one("CL"),
                size(DesignValue.BENDING),
                Supplement4.onEdge(),
                one("Ci"),
                one("Cr"));

        agree(EXAMPLE.expected("Fb_adjusted"), bending.value() / PSI);
    }

    @Test
    void tension() {
        Cited tension = adjusted(
                DesignValue.TENSION,
                DF_1,
                snow,
                wet(DesignValue.TENSION),
                one("Ct"),
                size(DesignValue.TENSION),
                one("Ci"));

        agree(EXAMPLE.expected("Ft_adjusted"), tension.value() / PSI);
    }

    @Test
    void shear() {
        Cited moist = Supplement4.wetService(DesignValue.SHEAR, DF_1, Moisture.WET);
        Cited shear = adjusted(DesignValue.SHEAR, DF_1, snow, moist, one("Ct"), one("Ci"));

        agree(EXAMPLE.expected("Fv_adjusted"), shear.value() / PSI);
    }
}
