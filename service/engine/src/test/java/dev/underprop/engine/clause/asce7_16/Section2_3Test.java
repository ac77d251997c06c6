package dev.underprop.engine.clause.asce7_16;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Factored loads by 2.3.1 and 2.3.6, live load in full beside others. */
class Section2_3Test {

    private static List<String> names(LoadKind... kinds) {
        EnumSet<LoadKind> present = EnumSet.of(LoadKind.DEAD, kinds);
        return Section2_3.strength(present).stream().map(Combination::name).toList();
    }

    @Test
    void gravity() {
        assertThat(names()).containsExactly("1.4 D");
        assertThat(names(LoadKind.LIVE)).containsExactly("1.4 D", "1.2 D + 1.6 L");
    }

    /** Beside earthquake stands a fifth of the snow and nothing of the roof live load. */
    @Test
    void earthquakeGoesWithSnowAlone() {
        assertThat(names(LoadKind.ROOF_LIVE, LoadKind.SNOW, LoadKind.SEISMIC))
                .contains("1.2 D + Ev + 0.2 S", "0.9 D - Ev")
                .doesNotContain("1.2 D + Ev + 0.2 Lr", "1.2 D + Ev");
        assertThat(names(LoadKind.ROOF_LIVE, LoadKind.SEISMIC))
                .contains("1.2 D + Ev", "0.9 D - Ev")
                .doesNotContain("1.2 D + Ev + 0.2 Lr");
    }
}
