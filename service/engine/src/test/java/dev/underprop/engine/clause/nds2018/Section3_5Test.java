package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.DF_2;
import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.twoBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.section.BuiltUpSection;
import org.junit.jupiter.api.Test;

/**
 * Creep of a 3-2x10 DF-L No.2 over 8 ft, D 150 plf, L 400 plf: Kcr read (NDS 2018, 3.5.2), deflections 5wL⁴/384EI recomputed.
 */
class Section3_5Test {
    private static final double PLF = 4.4482216152605 / 0.3048;
    private static final BuiltUpSection BEAM = new BuiltUpSection(twoBy(10), 3);

    private final double longTerm = midspan(150 * PLF);
    private final double shortTerm = midspan(400 * PLF);

    private static double midspan(double load) {
        double span = 8 * 12 * INCH;
        return 5 * load * span * span * span * span / (384 * DF_2.modulus() * BEAM.inertia());
    }

    @Test
    void seasonedAndDry() {
        double creep = Section3_5.creep(Moisture.DRY, true).value();

        assertThat(creep).isEqualTo(1.5);
        assertThat(Section3_5.totalDeflection(creep, longTerm, shortTerm).value() / INCH)
                .isCloseTo(0.1213, within(0.00005));
    }

    @Test
    void wet() {
        double creep = Section3_5.creep(Moisture.WET, true).value();

        assertThat(creep).isEqualTo(2.0);
        assertThat(Section3_5.totalDeflection(creep, longTerm, shortTerm).value() / INCH)
                .isCloseTo(0.1359, within(0.00005));
    }

    @Test
    void unseasoned() {
        assertThat(Section3_5.creep(Moisture.DRY, false).value()).isEqualTo(2.0);
    }

    @Test
    void withoutCreepLoadsAddUp() {
        assertThat(Section3_5.totalDeflection(1, 2, 3).value()).isEqualTo(5);
    }

    @Test
    void creepNeverLessens() {
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_5.totalDeflection(0.9, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_5.totalDeflection(Double.NaN, 1, 1));
    }
}
