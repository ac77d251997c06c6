package dev.underprop.wire.pages;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.CheckPage;
import dev.underprop.api.model.CheckSummary;
import dev.underprop.engine.check.CheckId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CheckPagesTest {
    private static final String[] STANDINGS = {"read", "from memory", "common practice, no source"};

    @ParameterizedTest
    @EnumSource(CheckId.class)
    void everyCheckHasAPageWithTextsAndSources(CheckId id) {
        CheckPage page = CheckPages.page(id.id()).orElseThrow();
        assertThat(page.getId()).isEqualTo(id.id());
        assertThat(page.getTitle()).isEqualTo(id.title());
        for (String text : new String[] {
            page.getWhat(),
            page.getDemand(),
            page.getCapacity(),
            page.getWhenNotChecked(),
            page.getWhenFails(),
            page.getRemedy()
        }) {
            assertThat(text).matches("(?s)[A-Z].{15,}\\.");
        }
        assertThat(page.getCitations()).isNotEmpty().allSatisfy(citation -> {
            assertThat(citation.getDocument()).isNotBlank();
            assertThat(citation.getEdition()).isNotBlank();
            assertThat(citation.getLocator()).isNotBlank();
            assertThat(citation.getStanding()).isIn((Object[]) STANDINGS);
        });
    }

    @ParameterizedTest
    @EnumSource(CheckId.class)
    void aPageSaysWhenItsCheckIsNotMadeYet(CheckId id) {
        String text = CheckPages.page(id.id()).orElseThrow().getWhenNotChecked();
        assertThat(text.startsWith("This version does not make it")).isEqualTo(!id.built());
    }

    @Test
    void theListHoldsEveryCheckInOrder() {
        assertThat(CheckPages.list().getChecks())
                .extracting(CheckSummary::getId)
                .containsExactly(java.util.Arrays.stream(CheckId.values())
                        .map(CheckId::id)
                        .toArray(String[]::new));
        assertThat(CheckPages.list().getChecks())
                .filteredOn(one -> one.getId().equals("excavation"))
                .allSatisfy(one -> {
                    assertThat(one.getRequired()).containsExactly("bearing removed");
                    assertThat(one.getImplemented()).isTrue();
                });
    }

    @Test
    void thereIsNoPageOfWhatIsNoCheck() {
        assertThat(CheckPages.page("beam-bendin")).isEmpty();
        assertThat(CheckPages.page("../checks/beam-bending")).isEmpty();
    }
}
