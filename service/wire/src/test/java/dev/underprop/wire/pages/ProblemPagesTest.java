package dev.underprop.wire.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemPagesTest {
    @Test
    void everyKindOfProblemHasAPageWithATitle() {
        assertThat(ProblemPages.NAMES).hasSize(11).allSatisfy(name -> {
            assertThat(ProblemPages.page(name).orElseThrow()).matches("(?s)# [A-Z].+\\n\\n.{40,}\\n");
            assertThat(ProblemPages.title(name).orElseThrow()).matches("[A-Z][^\\n.]+");
        });
    }

    @Test
    void titlesAreThoseOfTheContract() {
        assertThat(List.of("unreadable", "faulty", "internal-error"))
                .extracting(name -> ProblemPages.title(name).orElseThrow())
                .containsExactly(
                        "The body cannot be read", "The request is readable but faulty", "The service has failed");
    }

    @Test
    void otherNamesHaveNone() {
        assertThat(ProblemPages.page("nothing")).isEmpty();
        assertThat(ProblemPages.title("../checks/beam-bending")).isEmpty();
    }
}
