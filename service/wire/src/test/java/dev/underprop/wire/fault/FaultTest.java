package dev.underprop.wire.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultTest {
    private static final Fault FAULT = Fault.of("code", "Detail.", "Remedy.");

    @Test
    void partsAreReplacedOneByOne() {
        Fault fault = FAULT.withPointer("/a")
                .withGot("g")
                .withLimit("9 m")
                .withRemedy("Do.")
                .at(3, 4);
        assertThat(fault).isEqualTo(new Fault("/a", "code", "Detail.", "g", "9 m", "Do.", 3, 4));
        assertThat(fault.placed()).isTrue();
        assertThat(FAULT).isEqualTo(new Fault("", "code", "Detail.", "", "", "Remedy.", 0, 0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a\u001b[31mb   | a<U+001B>[31mb",
                "a\u202eb       | a<U+202E>b",
                "a\u0085b       | a<U+0085>b",
                "\ud800         | <U+D800>",
                "\u00e9\ud83d\ude00 | \u00e9\ud83d\ude00"
            })
    void whatWasFoundIsShownHarmlessly(String got, String shown) {
        assertThat(FAULT.withGot(got).got()).isEqualTo(shown);
    }

    @Test
    void whatWasFoundIsShortened() {
        assertThat(FAULT.withGot("x".repeat(80)).got()).isEqualTo("x".repeat(80));
        assertThat(FAULT.withGot("x".repeat(81)).got()).isEqualTo("x".repeat(80) + "...");
    }

    @Test
    void aListKeepsItsBound() {
        FaultList list = new FaultList(2);
        assertThat(list.isEmpty()).isTrue();
        list.addAll(List.of(FAULT, FAULT), "/x");
        assertThat(list.full()).isFalse();
        list.add(FAULT);
        list.add(FAULT);
        assertThat(list.full()).isTrue();
        assertThat(list.list()).extracting(Fault::code).containsExactly("code", "code", "too-many-faults");
        assertThat(list.list()).extracting(Fault::pointer).containsExactly("/x", "/x", "");
        assertThatThrownBy(() -> new FaultList(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The examples of RFC 6901, section 5. */
    @ParameterizedTest
    @CsvSource({"foo, /foo", "'', /", "a/b, /a~1b", "c%d, /c%d", "m~n, /m~0n", "' ', '/ '", "~1, /~01"})
    void pointersEscapeNames(String name, String pointer) {
        assertThat(Pointers.member("", name)).isEqualTo(pointer);
        assertThat(Pointers.parent(pointer)).isEmpty();
    }

    @Test
    void pointersNest() {
        assertThat(Pointers.element("/a", 3)).isEqualTo("/a/3");
        assertThat(Pointers.parent("/a/3")).isEqualTo("/a");
        assertThat(Pointers.parent("")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "lenght, length",
        "Length, length",
        "lenth, length",
        "lengthh, length",
        "wdith, width",
        "ad, at",
        "xx, ''",
        "completely, ''",
        "'', ''",
        "hieght, height"
    })
    void theNearestNameIsFound(String wrong, String near) {
        assertThat(Nearest.to(wrong, List.of("at", "length", "width", "height")))
                .isEqualTo(near);
    }

    @Test
    void ofEquallyNearNamesTheFirstIsTaken() {
        assertThat(Nearest.to("bat", List.of("cat", "rat"))).isEqualTo("cat");
        assertThat(Nearest.to("x".repeat(65), List.of("x".repeat(64)))).isEmpty();
    }
}
