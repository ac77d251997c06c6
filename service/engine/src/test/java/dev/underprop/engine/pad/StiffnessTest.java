package dev.underprop.engine.pad;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.ibc2021.Section1806;
import dev.underprop.engine.clause.ibc2021.Section1806.SoilClass;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Ground.Condition;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.standard.Cited;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StiffnessTest {

    /** Half a square metre. */
    private static final Pad PAD = new Pad("pad", Pad.Kind.CONCRETE, 1, 0.5, 0.25, new Pad.Known(0, true));

    /** 1 kip/in in N/m. */
    private static final double KIP_PER_INCH = 175_126.835;

    private static Ground.Presumptive ground(SoilClass soil, Condition condition) {
        Cited value = Section1806.pressure(soil);
        return new Ground.Presumptive(soil.title(), value.value(), value.citation(), condition, 1);
    }

    /** MN/m for half a square metre; clay: 40 x 3 x 71.82 kPa = 8.62 MN/m3 is softer than the table's 12. */
    @ParameterizedTest
    @CsvSource({"GRAVEL, 4.8, 64", "SAND, 4.8, 64", "CLAY, 4.3092, 24", "SEDIMENTARY_ROCK, 11.491, Infinity"})
    void aClassOfGroundHasItsRange(SoilClass soil, double soft, double stiff) {
        Spring spring = GroundStiffness.of(ground(soil, Condition.UNDISTURBED), PAD);

        assertThat(spring.soft() / 1e6).isCloseTo(soft, within(0.001));
        assertThat(spring.stiff() / 1e6).isEqualTo(stiff);
        assertThat(spring.name()).contains(soil.title());
        assertThat(GroundStiffness.known(ground(soil, Condition.UNDISTURBED))).isTrue();
    }

    @Test
    void unknownGroundHasTheWidestRangeAndSaysSo() {
        Spring spring = GroundStiffness.of(new Ground.Unstated(), PAD);

        assertThat(spring.soft()).isEqualTo(2.4e6);
        assertThat(spring.stiff()).isEqualTo(64e6);
        assertThat(spring.name()).contains("widest").contains("not known");
        assertThat(GroundStiffness.known(new Ground.Unstated())).isFalse();
        assertThat(GroundStiffness.known(new Ground.Given(1e5, "report", Condition.UNDISTURBED)))
                .isFalse();
        assertThat(GroundStiffness.of(ground(SoilClass.CLAY, Condition.FILL), PAD))
                .isEqualTo(spring);
    }

    @Test
    void whatThePlanGivesHolds() {
        Ground ground =
                new Ground.Given(1e5, "report", Condition.UNDISTURBED, new Ground.Modulus(10e6, 30e6, "plate test"));

        Spring spring = GroundStiffness.of(ground, PAD);

        assertThat(spring.soft()).isEqualTo(5e6);
        assertThat(spring.stiff()).isEqualTo(15e6);
        assertThat(spring.citation().document()).isEqualTo("plate test");
        assertThat(GroundStiffness.known(ground)).isTrue();
    }

    @Test
    void aTallerPostGivesMore() {
        Spring seven = PostStiffness.of(84 * 0.0254);
        Spring fourteen = PostStiffness.of(168 * 0.0254);

        assertThat(seven.soft()).isCloseTo(100 * KIP_PER_INCH, within(10.0));
        assertThat(seven.stiff()).isCloseTo(1000 * KIP_PER_INCH, within(10.0));
        assertThat(fourteen.soft()).isCloseTo(50 * KIP_PER_INCH, within(10.0));
        assertThat(seven.name()).contains("100 to 1000 kip/in");
    }

    @Test
    void springsOneOnTheOtherGiveMoreThanEither() {
        Spring ground = GroundStiffness.of(ground(SoilClass.SEDIMENTARY_ROCK, Condition.UNDISTURBED), PAD);
        Spring post = new Spring(11.4912e6, 20e6, "post", PostStiffness.of(1).citation());

        assertThat(ground.softOn(post)).isCloseTo(11.4912e6 / 2, within(1000.0));
        assertThat(ground.stiffOn(post)).isEqualTo(20e6);
    }

    @Test
    void aRangeThatRunsBackwardsIsRefused() {
        assertThatThrownBy(() -> new Spring(2, 1, "x", PostStiffness.of(1).citation()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Ground.Modulus(2, 1, "x")).isInstanceOf(IllegalArgumentException.class);
    }
}
