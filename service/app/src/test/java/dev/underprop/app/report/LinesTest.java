package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LinesTest {

    @Test
    void breaksBetweenWordsAndHangs() {
        String text = Lines.wrapped("  - ", 4, "word ".repeat(40).strip());

        assertThat(text.lines())
                .hasSize(3)
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(text.lines().skip(1)).allSatisfy(line -> assertThat(line).startsWith("    word"));
        assertThat(text.replaceAll("\\s+", " ").strip())
                .isEqualTo("- " + "word ".repeat(40).strip());
    }

    @Test
    void longWordStaysWhole() {
        assertThat(Lines.wrapped("", 2, "a " + "b".repeat(150))).isEqualTo("a\n  " + "b".repeat(150) + "\n");
    }

    @Test
    void nothingThatATerminalObeysGetsThrough() {
        assertThat(Lines.visible("a\u001b[31m\u0007\n\u202eb")).isEqualTo("a?[31m???b");
        assertThat(Lines.visible("Größe 漢")).isEqualTo("Größe 漢");
    }
}
