package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.app.Demos;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two equal spans by HTTP against beam theory. Statics of the continuous beam: w on both spans of length L presses the
 * middle post with 10/8 w L; raising that post by d adds 6 E I d / L^3, half of it taken from each outer post (three-moment
 * equation; any text on structural analysis; from memory).
 */
@ExtendWith(RunningService.class)
class TwoSpansHttpTest {
    /** Modulus of elasticity of spruce-pine-fir No.2 (psi). NDS Supplement 2018, Table 4A. */
    private static final double E = 1_400_000;

    /** Second moment of area of four plies 2x10 (in^4). */
    private static final double I = 4 * 1.5 * 9.25 * 9.25 * 9.25 / 12;

    private static final double SIX_DIGITS = 5e-7;

    @ParameterizedTest
    @CsvSource({"500, 8", "310, 8", "77.7, 8"})
    void middlePostTakesTenEighthsOfASpan(double load, double span) {
        Response answer = ask(Demos.text("two-spans.yaml").replace("500 plf }", load + " plf }"));

        assertPost(answer, 1, 1.25 * load * span);
        assertPost(answer, 0, 0.375 * load * span);
        assertPost(answer, 2, 0.375 * load * span);
    }

    @ParameterizedTest
    @CsvSource({"1/16, 0.0625", "1/8, 0.125", "0.2, 0.2"})
    void raisingTheMiddlePostAddsWhatTheBeamResists(String lift, double inches) {
        String clear =
                "    gaps: [ { joist: J1, gap: 6 in }, { joist: J2, gap: 6 in }, { joist: J3, gap: 6 in } ]\n    beam:";
        String plan = Demos.text("two-spans.yaml")
                .replace("    beam:", clear)
                .replace("name: B2, at: 8 ft,", "name: B2, at: 8 ft, lift: " + lift + " in,");
        double more = 6 * E * I * inches / (96.0 * 96.0 * 96.0);

        Response answer = ask(plan);

        assertPost(answer, 1, 5000 + more);
        assertPost(answer, 0, 1500 - more / 2);
        assertPost(answer, 2, 1500 - more / 2);
    }

    @Test
    void handCheckIsTheTributaryWidth() {
        Response answer = ask(Demos.text("two-spans.yaml"));

        assertThat(answer.jsonPath().getDouble("situations[0].posts[1].handCheck.value"))
                .isCloseTo(4000, within(4000 * SIX_DIGITS));
        assertThat(answer.jsonPath().getDouble("situations[0].posts[1].ratioToHand"))
                .isCloseTo(1.25, within(1.25 * SIX_DIGITS));
    }

    private static Response ask(String plan) {
        Response answer = Client.postYaml("/v1/layout-analyses", plan);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        return answer;
    }

    private static void assertPost(Response answer, int post, double force) {
        String at = "situations[0].posts[" + post + "].greatest";
        assertThat(answer.jsonPath().getString(at + ".unit")).isEqualTo("lb");
        assertThat(answer.jsonPath().getDouble(at + ".value")).isCloseTo(force, within(force * SIX_DIGITS));
    }
}
