package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.refusal;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.clause.nds2018.Section4_4.LateralSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Section4_4Test {

    /** NDS 2018, 4.4.1.2, from memory: nominal breadth and depth (in), the least support that the rule takes, one less. */
    @ParameterizedTest
    @CsvSource({
        "2, 6, ENDS, NONE",
        "2, 8, ENDS, NONE",
        "2, 10, COMPRESSION_EDGE, ENDS",
        "2, 12, BRIDGING, COMPRESSION_EDGE",
        "2, 14, BOTH_EDGES, BRIDGING"
    })
    void supportThatIsEnoughAndOneLess(double b, double d, LateralSupport enough, LateralSupport less) {
        assertThat(value(Section4_4.stabilityByRule(b, d, enough)).value()).isEqualTo(1);
        assertThat(value(Section4_4.stabilityByRule(b, d, LateralSupport.BOTH_EDGES))
                        .value())
                .isEqualTo(1);
        assertThat(refusal(Section4_4.stabilityByRule(b, d, less))).startsWith("depth to breadth needs");
    }

    @Test
    void upToTwiceAsDeepAsBroadNeedsNone() {
        assertThat(value(Section4_4.stabilityByRule(2, 4, LateralSupport.NONE)).value())
                .isEqualTo(1);
        assertThat(value(Section4_4.stabilityByRule(6, 8, LateralSupport.NONE)).value())
                .isEqualTo(1);
    }

    @Test
    void beyondSevenThereIsNoRule() {
        assertThat(refusal(Section4_4.stabilityByRule(2, 16, LateralSupport.BOTH_EDGES)))
                .contains("no rule");
    }
}
