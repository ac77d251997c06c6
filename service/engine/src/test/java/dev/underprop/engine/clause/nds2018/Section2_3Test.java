package dev.underprop.engine.clause.nds2018;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.standard.Citation.Standing;
import dev.underprop.engine.standard.Cited;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Section2_3Test {

    /** NDS 2018, Table 2.3.2, read in a public copy. */
    @ParameterizedTest
    @CsvSource({
        "PERMANENT, 0.9",
        "TEN_YEARS, 1.0",
        "TWO_MONTHS, 1.15",
        "SEVEN_DAYS, 1.25",
        "TEN_MINUTES, 1.6",
        "IMPACT, 2.0"
    })
    void loadDuration(LoadDuration duration, double factor) {
        Cited cited = Section2_3.loadDuration(duration);

        assertThat(cited.value()).isEqualTo(factor);
        assertThat(cited.symbol()).isEqualTo("CD");
        assertThat(cited.citation().text()).isEqualTo("NDS 2018, Table 2.3.2");
    }

    @ParameterizedTest
    @CsvSource({"DEAD, PERMANENT", "LIVE, TEN_YEARS", "SNOW, TWO_MONTHS", "ROOF_LIVE, TWO_MONTHS"})
    void kindsOfLoadNeverClaimMoreThanSnowUnasked(LoadKind kind, LoadDuration duration) {
        assertThat(Section2_3.duration(kind)).isEqualTo(duration);
    }

    @Test
    void temperatureSaysThatItIsFromMemory() {
        Cited cited = Section2_3.temperature(DesignValue.BENDING, Temperature.WARM, Moisture.DRY);

        assertThat(cited.citation().standing()).isEqualTo(Standing.FROM_MEMORY);
    }
}
