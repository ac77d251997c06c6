package dev.underprop.wire.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.underprop.wire.fault.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LimitsTest {
    private static final Limits SMALL = new Limits(200, 7, 3, 10, 8, 2);

    private static Fault only(String text, Format format) {
        assertThat(Documents.faults(Documents.utf8(text), format, SMALL)).hasSize(1);
        return Documents.faults(Documents.utf8(text), format, SMALL).get(0);
    }

    private static boolean read(String text, Format format) {
        return new TreeReader(SMALL).read(Documents.utf8(text), format) instanceof TreeReading.Tree;
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void size(Format format) {
        String full = "[" + " ".repeat(198) + "]";
        assertThat(read(full, format)).isTrue();
        Fault fault = only(full + " ", format);
        assertThat(fault.code()).isEqualTo("document-too-large");
        assertThat(fault.got()).isEqualTo("201 bytes");
        assertThat(fault.limit()).isEqualTo("200 bytes");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void numberOfValues(Format format) {
        assertThat(read("[1, {\"a\": []}, 4, 5, 6]", format)).isTrue();
        Fault fault = only("[1, {\"a\": []}, 4, 5, 6, 7]", format);
        assertThat(Documents.brief(fault)).isEqualTo("too-many-values /5 1:25");
        assertThat(fault.limit()).isEqualTo("7 values");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void depth(Format format) {
        assertThat(read("[{\"a\": [1]}]", format)).isTrue();
        Fault fault = only("[{\"a\": [{}]}]", format);
        assertThat(Documents.brief(fault)).isEqualTo("depth-exceeded /0/a/0 1:9");
        assertThat(fault.limit()).isEqualTo("3 levels");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void lengthOfText(Format format) {
        assertThat(read("[\"1234567890\"]", format)).isTrue();
        Fault fault = only("[\"12345678901\"]", format);
        assertThat(Documents.brief(fault)).isEqualTo("text-too-long /0 1:2");
        assertThat(fault.limit()).isEqualTo("10 characters");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void lengthOfNames(Format format) {
        assertThat(read("{\"1234567890\": 1}", format)).isTrue();
        assertThat(Documents.brief(only("{\"a\": {\"12345678901\": 1}}", format)))
                .isEqualTo("text-too-long /a 1:8");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void lengthOfNumbers(Format format) {
        assertThat(read("[1.345678]", format)).isTrue();
        assertThat(Documents.brief(only("[1.3456789]", format))).isEqualTo("number-too-long /0 1:2");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void numberOfFaults(Format format) {
        assertThat(Documents.faults(Documents.utf8("[1e999, 1e999, 1e999, 1e999]"), format, SMALL))
                .extracting(Fault::code)
                .containsExactly("number-out-of-range", "number-out-of-range", "too-many-faults");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void aHundredThousandBracketsAreOneFault(Format format) {
        byte[] bytes = Documents.utf8("[".repeat(100_000));
        assertThat(Documents.faults(bytes, format, Limits.USUAL))
                .extracting(Fault::code)
                .containsExactly("depth-exceeded");
    }

    @Test
    void areAboveZero() {
        assertThatThrownBy(() -> new Limits(1, 1, 1, 1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Limits(1, 0, 1, 1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
