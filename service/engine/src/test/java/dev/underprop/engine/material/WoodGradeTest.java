package dev.underprop.engine.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.underprop.engine.standard.Citation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WoodGradeTest {
    private static final double[] GOOD = {6.2e6, 4e6, 1.2e6, 4.3e6, 9.3e6, 11e9, 4e9, 0.5};

    @Test
    void goodValuesPass() {
        WoodGrade grade = grade(GOOD);

        assertThat(grade.label()).isEqualTo("Species No.2");
        assertThat(grade.bearing()).isEqualTo(4.3e6);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void everyValueIsPositiveAndFinite(int index) {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 0, -1}) {
            double[] values = GOOD.clone();
            values[index] = bad;
            assertThatIllegalArgumentException().isThrownBy(() -> grade(values));
        }
    }

    @Test
    void stabilityModulusDoesNotExceedTheModulus() {
        double[] values = GOOD.clone();
        values[6] = 12e9;
        assertThatIllegalArgumentException().isThrownBy(() -> grade(values)).withMessageContaining("Emin");
    }

    @Test
    void woodIsLighterThanItsCellWalls() {
        double[] values = GOOD.clone();
        values[7] = 1.5;
        assertThatIllegalArgumentException().isThrownBy(() -> grade(values)).withMessageContaining("G must");
    }

    private static WoodGrade grade(double[] v) {
        return new WoodGrade(
                "Species",
                "No.2",
                v[0],
                v[1],
                v[2],
                v[3],
                v[4],
                v[5],
                v[6],
                v[7],
                WoodGrade.Sizes.WESTERN_DIMENSION,
                Citation.read("NDS Supplement", "2018", "Table 4A"));
    }
}
