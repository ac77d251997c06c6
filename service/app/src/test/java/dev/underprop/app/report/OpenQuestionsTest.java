package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.NotCheckedItem;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpenQuestionsTest {

    @Test
    void everyQuestionAndPlaceStandsUnderItsReason() {
        List<String> lines = OpenQuestions.lines(List.of(
                item("Pad", "A1", "No pad is named."),
                item("Sway", null, "Not said."),
                item("Pad", "A2", "No pad is named."),
                item("Settlement", null, "No pad is named."),
                item("Pad", "A1", "No pad is named.")));

        assertThat(lines).containsExactly("No pad is named: Pad (A1, A2); Settlement.", "Not said: Sway.");
    }

    private static NotCheckedItem item(String title, @org.jspecify.annotations.Nullable String place, String reason) {
        return new NotCheckedItem().check("x").title(title).place(place).reason(reason);
    }
}
