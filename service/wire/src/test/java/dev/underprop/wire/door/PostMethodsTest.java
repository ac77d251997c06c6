package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Posts of declared makes, from the text of a plan to the answer: all are 7 ft tall. */
class PostMethodsTest {

    private static final String TUBES = "\"outer\": {\"diameter\": \"3 1/2 in\", \"wall\": \"0.2 in\","
            + " \"yieldStress\": \"35 ksi\"}, \"inner\": {\"diameter\": \"3 in\", \"wall\": \"0.2 in\","
            + " \"yieldStress\": \"35 ksi\"}, \"outerLength\": \"4 ft\", \"overlap\": \"1 ft\", \"noScrew\": true";

    private static final String PIN = ", \"pin\": {\"diameter\": \"5/8 in\", \"hole\": \"11/16 in\","
            + " \"yieldStress\": \"36 ksi\", \"tensileStrength\": \"60 ksi\"}";

    private static CheckResult rating(String members) {
        return model(members).getChecks().stream()
                .filter(check -> check.getCheck().equals("post-rating"))
                .findFirst()
                .orElseThrow();
    }

    private static PlanCheck model(String members) {
        String plates = "\"headPlate\": {\"along\": \"6 in\", \"across\": \"6 in\"},"
                + " \"basePlate\": {\"along\": \"6 in\", \"across\": \"6 in\"}";
        String text = Plans.text("two-bays.json")
                .replace("\"rigid\": true", "\"rigid\": true, \"type\": \"made\"")
                .replace(
                        "\"situations\":",
                        "\"postTypes\": [{\"name\": \"made\", " + members + plates + "}], \"situations\":");
        Answer<PlanCheck> answer =
                new PlanDoor().check(text.getBytes(StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        return ((Answer.Judged<PlanCheck>) answer).model();
    }

    /** 68 kN·m times 3.5 m over the square of 7 ft, 52.28 kN, is above 51 kN; that over 1.65 is 6949 lb. */
    @Test
    void aClass() {
        CheckResult got = rating("\"propClass\": \"B35\",");

        assertThat(got.getCapacity().getValue()).isCloseTo(51_000 / 1.65 / 4.4482216152605, within(0.01));
        assertThat(got.getCitation().getDocument()).isEqualTo("EN 1065");
    }

    /** Fc* 1345.5 psi; le/d 24, FcE 670.7 psi, CP 0.43255: 7129 lb. */
    @Test
    void aStick() {
        CheckResult got = rating("\"timber\": {\"size\": \"4x4\", \"species\": \"hem-fir\", \"grade\": \"No.2\","
                + " \"moisture\": \"dry\", \"treatment\": \"none\", \"eccentricity\": \"0 in\"},");

        assertThat(got.getCapacity().getValue()).isCloseTo(7129.4991, within(0.01));
        assertThat(got.getCitation().getDocument()).isEqualTo("NDS");
    }

    /** Double shear of the pin alone, 2·0.45·60 ksi·0.30680 in²/2, is 8284 lb. */
    @Test
    void aTelescopicPost() {
        CheckResult got = rating("\"telescope\": {" + TUBES + PIN + ", \"eccentricity\": \"0 in\"},");

        assertThat(got.getCapacity().getValue()).isLessThan(8284);
        assertThat(got.getCitation().getLocator()).contains("first comes");
    }

    @Test
    void whatIsNotDeclaredIsNamed() {
        CheckResult got = rating("\"telescope\": {" + TUBES + "},");

        assertThat(got.getVerdict().getValue()).isEqualTo("NOT_CHECKED");
        assertThat(got.toString()).contains("not stated: the pin");
    }

    @Test
    void anEccentricityThatIsTakenIsSaid() {
        assertThat(model("\"telescope\": {" + TUBES + PIN + "},").getAssumptions())
                .anyMatch(taken -> taken.contains("25 mm off its middle"));
        assertThat(model("\"telescope\": {" + TUBES + PIN + ", \"eccentricity\": \"0 in\"},")
                        .getAssumptions())
                .noneMatch(taken -> taken.contains("25 mm off its middle"));
    }

    @Test
    void anAssumedGradeOfAPostIsSaid() {
        assertThat(model("\"timber\": {\"size\": \"4x4\", \"species\": \"hem-fir\", \"grade\": \"No.2\","
                                + " \"gradeAssumedBy\": \"the engineer, by eye\", \"eccentricity\": \"0 in\"},")
                        .getAssumptions())
                .anyMatch(taken -> taken.contains("the engineer, by eye"));
    }
}
