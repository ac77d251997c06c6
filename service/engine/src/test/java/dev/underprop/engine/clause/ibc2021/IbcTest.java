package dev.underprop.engine.clause.ibc2021;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.clause.ibc2021.Section1806.SoilClass;
import dev.underprop.engine.standard.Outcome;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IbcTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "crystalline bedrock | CRYSTALLINE_BEDROCK",
                "sedimentary and foliated rock | SEDIMENTARY_ROCK",
                "sandy gravel and gravel | GRAVEL",
                "Gravel | GRAVEL",
                "sand, silty sand, clayey sand, silty gravel and clayey gravel | SAND",
                "silty sand | SAND",
                "silty gravel | SAND",
                "SM | SAND",
                "clay, sandy clay, silty clay, clayey silt, silt and sandy silt | CLAY",
                "sandy silt | CLAY",
                "clay | CLAY"
            })
    void names(String name, SoilClass soil) {
        assertThat(Section1806.classNamed(name)).contains(soil);
        assertThat(Section1806.pressure(name)).isEqualTo(new Outcome.Value(Section1806.pressure(soil)));
    }

    @Test
    void noNameStandsForTwoClasses() {
        List<String> names = Arrays.stream(SoilClass.values())
                .flatMap(soil -> soil.names().stream())
                .toList();

        assertThat(names).hasSize(32).contains("sm", "clay").isEqualTo(Section1806.classNames());
        assertThat(names)
                .doesNotHaveDuplicates()
                .allMatch(name -> name.equals(name.toLowerCase(java.util.Locale.ROOT)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"peat", "Mud", "organic silt", "organic clay", "fill", "unprepared fill", "PT"})
    void soilsWithoutAPresumptiveValueAreRefused(String name) {
        assertThat(Section1806.classNamed(name)).isEmpty();
        assertThat(Section1806.pressure(name))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.reason()).contains("no presumptive value"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "sandy", "clay and sand", "loam"})
    void unknownSoilsAreRefusedNotGuessed(String name) {
        assertThat(Section1806.pressure(name))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.reason()).contains("does not name"));
    }

    /** International Building Code 2021, Table 1604.3, from memory. */
    @Test
    void deflection() {
        assertThat(Section1604.floorLive().value()).isEqualTo(360);
        assertThat(Section1604.floorTotal().value()).isEqualTo(240);
    }
}
