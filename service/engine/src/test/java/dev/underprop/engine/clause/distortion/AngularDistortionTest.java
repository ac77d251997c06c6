package dev.underprop.engine.clause.distortion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits as tabulated in a public manual, the list of Bjerrum 1963 from memory. */
class AngularDistortionTest {

    private static final double INCH = 0.0254;

    @ParameterizedTest
    @CsvSource({
        "skempton-macdonald-structure, 150, structural damage, 1956",
        "skempton-macdonald-walls, 300, cracks in walls and partitions, 1956",
        "meyerhof-structure, 250, structural damage, 1956",
        "meyerhof-walls, 500, cracks in walls and partitions, 1956",
        "polshin-tokar-structure, 200, structural damage, 1957",
        "polshin-tokar-walls, 500, cracks in walls and partitions, 1957",
        "bjerrum-structure, 150, structural damage, 1963",
        "bjerrum-walls, 500, cracks in walls and partitions, 1963",
        "bjerrum-machinery, 750, machinery sensitive to settlement, 1963",
        "bjerrum-diagonals, 600, frames with diagonals, 1963",
        "bjerrum-no-cracks, 500, buildings in which no cracks may come, 1963",
        "bjerrum-first-cracks, 300, first cracks in panel walls, 1963",
        "bjerrum-tilt, 250, tilt of high buildings becomes visible, 1963",
        "bjerrum-damage, 150, 'considerable cracks, damage to the structure', 1963"
    })
    void limitsByTheirNames(String id, double divisor, String what, String year) {
        AngularDistortion limit = AngularDistortion.named(id).orElseThrow();

        assertThat(limit.id()).isEqualTo(id);
        assertThat(limit.divisor()).isEqualTo(divisor);
        assertThat(limit.slope()).isEqualTo(1 / divisor);
        assertThat(limit.what()).isEqualTo(what);
        assertThat(limit.citation().text()).contains(year);
    }

    @Test
    void namesAreAllOfThemAndNoOthers() {
        assertThat(AngularDistortion.values()).hasSize(14);
        assertThat(AngularDistortion.named("bjerrum")).isEmpty();
    }

    /** 1/8 in over 10 ft is 1/960; a whole 0.24 in over 10 ft is 1/500, and 0.4 in is 1/300. */
    @Test
    void movementOverDistance() {
        double ten = 120 * INCH;

        assertThat(1 / AngularDistortion.between(INCH / 8, 0, ten)).isCloseTo(960, within(1e-9));
        assertThat(1 / AngularDistortion.between(0, INCH / 8, ten)).isCloseTo(960, within(1e-9));
        assertThat(AngularDistortion.between(0.24 * INCH, 0, ten))
                .isCloseTo(AngularDistortion.BJERRUM_WALLS.slope(), within(1e-15));
        assertThat(AngularDistortion.between(0.3 * INCH, -0.1 * INCH, ten))
                .isCloseTo(AngularDistortion.SKEMPTON_WALLS.slope(), within(1e-15));
        assertThat(AngularDistortion.between(0.01, 0.02, 5)).isCloseTo(1.0 / 500, within(1e-15));
    }

    /** Boscardin and Cording 1989: strain in percent 0.05, 0.075, 0.15, 0.3; Burland 1977: cracks of 0.1, 1, 5, 15, 25 mm. */
    @ParameterizedTest
    @CsvSource({
        "NEGLIGIBLE, negligible, 0.05, 0.1",
        "VERY_SLIGHT, very slight, 0.075, 1",
        "SLIGHT, slight, 0.15, 5",
        "MODERATE, moderate, 0.3, 15",
        "SEVERE, severe, Infinity, 25"
    })
    void categoriesOfDamage(TensileStrain category, String title, double percent, double millimetres) {
        assertThat(category.title()).isEqualTo(title);
        if (Double.isInfinite(percent)) {
            assertThat(category.strain()).isInfinite();
        } else {
            assertThat(category.strain()).isCloseTo(percent / 100, within(1e-12));
        }
        assertThat(category.crack()).isCloseTo(millimetres / 1000, within(1e-12));
    }
}
