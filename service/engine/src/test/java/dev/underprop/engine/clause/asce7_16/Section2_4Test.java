package dev.underprop.engine.clause.asce7_16;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.asce7_16.Combination.Term;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.standard.Citation;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** ASCE 7-16, 2.4.1, items 1 to 4, from memory. */
class Section2_4Test {
    private static final Citation PLACE = Citation.read("ASCE", "7-16", "2.4.1");

    private static List<Combination> gravity(LoadKind... kinds) {
        return Section2_4.gravity(Set.of(kinds));
    }

    @Test
    void deadLoadAloneIsAlwaysThere() {
        assertThat(gravity()).extracting(Combination::name).containsExactly("D");
        assertThat(gravity(LoadKind.DEAD)).extracting(Combination::name).containsExactly("D");
    }

    @Test
    void allFourKinds() {
        assertThat(Section2_4.gravity(EnumSet.allOf(LoadKind.class)))
                .extracting(Combination::name)
                .containsExactly("D", "D + L", "D + Lr", "D + S", "D + 0.75 L + 0.75 Lr", "D + 0.75 L + 0.75 S");
    }

    @Test
    void itemsAreCited() {
        assertThat(gravity(LoadKind.LIVE, LoadKind.SNOW))
                .extracting(c -> c.citation().text())
                .containsExactly(
                        "ASCE 7-16, 2.4.1 item 1",
                        "ASCE 7-16, 2.4.1 item 2",
                        "ASCE 7-16, 2.4.1 item 3",
                        "ASCE 7-16, 2.4.1 item 4");
    }

    /** Without snow nothing may claim the duration of snow. */
    @Test
    void absentLoadsLeaveNoCombinationBehind() {
        assertThat(gravity(LoadKind.LIVE)).extracting(Combination::name).containsExactly("D", "D + L");
        assertThat(gravity(LoadKind.SNOW)).extracting(Combination::name).containsExactly("D", "D + S");
        assertThat(gravity(LoadKind.ROOF_LIVE)).extracting(Combination::name).containsExactly("D", "D + Lr");
    }

    @Test
    void onlyEarthquakeActsUpwardsAndNothingIsNoLoad() {
        assertThat(new Combination.Term(LoadKind.SEISMIC, -0.7).factor()).isEqualTo(-0.7);
        assertThatIllegalArgumentException().isThrownBy(() -> new Combination.Term(LoadKind.SEISMIC, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Combination.Term(LoadKind.WIND, -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Combination.Term(LoadKind.DEAD, Double.POSITIVE_INFINITY));
    }

    @Test
    void factors() {
        Combination last = gravity(LoadKind.LIVE, LoadKind.SNOW).get(3);

        assertThat(last.factor(LoadKind.DEAD)).isEqualTo(1);
        assertThat(last.factor(LoadKind.LIVE)).isEqualTo(0.75);
        assertThat(last.factor(LoadKind.SNOW)).isEqualTo(0.75);
        assertThat(last.factor(LoadKind.ROOF_LIVE)).isZero();
    }

    @Test
    void theShortestLoadControls() {
        for (Combination combination : Section2_4.gravity(EnumSet.allOf(LoadKind.class))) {
            double shortest = combination.terms().stream()
                    .mapToDouble(term -> Section2_3.loadDuration(Section2_3.duration(term.kind()))
                            .value())
                    .max()
                    .orElseThrow();
            double controlling = Section2_3.loadDuration(Section2_3.duration(combination.controlling()))
                    .value();

            assertThat(controlling).as(combination.name()).isEqualTo(shortest);
        }
    }

    /** ASCE 7-22, 2.4.1, from memory. */
    @Test
    void strengthSnow() {
        assertThat(Section2_4.allowableSnow(1000).value()).isCloseTo(700, within(1e-9));
        assertThat(Section2_4.allowableSnow(1000).citation().text()).isEqualTo("ASCE 7-22, 2.4.1");
        assertThat(Section2_4.allowableSnow(1000).citation().standing()).isEqualTo(Citation.Standing.FROM_MEMORY);
        assertThatIllegalArgumentException().isThrownBy(() -> Section2_4.allowableSnow(-1));
    }

    /** Open for what comes later: less dead load against what lifts. */
    @Test
    void reducedDeadLoadCanBeSaid() {
        Combination lifting = new Combination("0.6 D", List.of(new Term(LoadKind.DEAD, 0.6)), LoadKind.DEAD, PLACE);

        assertThat(lifting.factor(LoadKind.DEAD)).isEqualTo(0.6);
        assertThat(lifting.factor(LoadKind.LIVE)).isZero();
    }

    @Test
    void aKindActsOnceAndTheControllingOneActs() {
        Term dead = new Term(LoadKind.DEAD, 1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Combination("D + D", List.of(dead, dead), LoadKind.DEAD, PLACE));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Combination("D", List.of(dead), LoadKind.SNOW, PLACE));
        assertThatIllegalArgumentException().isThrownBy(() -> new Combination("none", List.of(), LoadKind.DEAD, PLACE));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void factorsArePositive(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Term(LoadKind.DEAD, bad));
    }

    private static List<String> names(List<Combination> combinations) {
        return combinations.stream().map(Combination::name).toList();
    }

    @Test
    void verticalWindAndEarthquakeBringItemsFiveToTen() {
        Set<LoadKind> all = EnumSet.allOf(LoadKind.class);

        assertThat(names(Section2_4.lateral(EnumSet.of(LoadKind.DEAD, LoadKind.LIVE))))
                .isEmpty();
        assertThat(names(Section2_4.lateral(all)))
                .containsExactly(
                        "D + 0.6 W",
                        "D + 0.45 W + 0.75 L + 0.75 S",
                        "0.6 D + 0.6 W",
                        "D + 0.7 Ev",
                        "D + 0.525 Ev + 0.75 L + 0.75 S",
                        "0.6 D - 0.7 Ev");
        assertThat(names(Section2_4.lateral(EnumSet.of(LoadKind.DEAD, LoadKind.ROOF_LIVE, LoadKind.WIND))))
                .containsExactly("D + 0.6 W", "D + 0.45 W + 0.75 Lr", "0.6 D + 0.6 W");
    }

    @Test
    void strengthCombinationsAreThoseOfSection23() {
        assertThat(names(dev.underprop.engine.clause.asce7_16.Section2_3.strength(EnumSet.of(LoadKind.DEAD))))
                .containsExactly("1.4 D");
        assertThat(names(dev.underprop.engine.clause.asce7_16.Section2_3.strength(
                        EnumSet.of(LoadKind.DEAD, LoadKind.LIVE))))
                .containsExactly("1.4 D", "1.2 D + 1.6 L");
        assertThat(names(dev.underprop.engine.clause.asce7_16.Section2_3.strength(
                        EnumSet.of(LoadKind.DEAD, LoadKind.LIVE, LoadKind.SNOW))))
                .containsExactly("1.4 D", "1.2 D + 1.6 L + 0.5 S", "1.2 D + 1.6 S + L");
        assertThat(names(dev.underprop.engine.clause.asce7_16.Section2_3.strength(
                        EnumSet.of(LoadKind.DEAD, LoadKind.SEISMIC))))
                .containsExactly("1.4 D", "1.2 D + Ev", "0.9 D - Ev");
        assertThat(names(dev.underprop.engine.clause.asce7_16.Section2_3.strength(
                        EnumSet.of(LoadKind.DEAD, LoadKind.SNOW, LoadKind.WIND))))
                .containsExactly("1.4 D", "1.2 D + 1.6 S", "1.2 D + W + 0.5 S", "0.9 D + W");
    }
}
