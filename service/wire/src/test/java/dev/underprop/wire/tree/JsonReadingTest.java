package dev.underprop.wire.tree;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.wire.fault.Fault;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonReadingTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "[]",
                " {\"a\": [1, -2, 3.5, true, false, null, \"x\"], \"b\": {\"c\": {}, \"d\": []}} \n",
                "{\"\": 1, \"a/b\": {\"m~n\": 2}}",
                "\"text\"",
                "12",
                "true",
                "null",
                "{\"u\": \"\\u00e9\\ud83d\\ude00\\n\\t\"}",
                "{\"n\": [0, -0, 2147483647, 2147483648, 9007199254740991, -9007199254740991, 0.1, 1e300]}"
            })
    void isReadAsAnotherReaderDoes(String text) throws Exception {
        JsonNode expected = new ObjectMapper().readTree(text);
        assertThat(Documents.tree(text, Format.JSON)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3", "3.0", "3e0", "30e-1", "0.3e1"})
    void wholeNumbersAreWholeHoweverWritten(String text) {
        JsonNode node = Documents.tree(text, Format.JSON);
        assertThat(node.isInt()).isTrue();
        assertThat(node.intValue()).isEqualTo(3);
    }

    static List<Arguments> refused() {
        return List.of(
                Arguments.of("", "document-empty  1:1"),
                Arguments.of(" \n ", "document-empty  1:1"),
                Arguments.of("{", "syntax  1:2"),
                Arguments.of("{\"a\": 1", "syntax  1:8"),
                Arguments.of("{\"a\": \"x", "syntax  1:9"),
                Arguments.of("{\n  \"a\" 1}", "syntax  2:7"),
                Arguments.of("{\n  \"a\": 1,\n}", "syntax  3:1"),
                Arguments.of("{a: 1}", "syntax  1:2"),
                Arguments.of("{'a': 1}", "syntax  1:2"),
                Arguments.of("{\"a\": 01}", "syntax  1:7"),
                Arguments.of("{\"a\": +1}", "syntax  1:7"),
                Arguments.of("{\"a\": .5}", "syntax  1:7"),
                Arguments.of("{\"a\": 1.}", "syntax  1:7"),
                Arguments.of("{\"a\": yes}", "syntax  1:7"),
                Arguments.of("{\"a\": 1 // note\n}", "syntax  1:9"),
                Arguments.of("{\"a\": \"tab\there\"}", "syntax  1:11"),
                Arguments.of("{\"a\": \"\\x\"}", "syntax  1:9"),
                Arguments.of("[1, 2}", "syntax  1:6"),
                Arguments.of("{\"a\": NaN}", "number-not-finite  1:7"),
                Arguments.of("{\"a\": Infinity}", "number-not-finite  1:7"),
                Arguments.of("{\"a\": -Infinity}", "number-not-finite  1:7"),
                Arguments.of("{\"a\": 1e999}", "number-out-of-range /a 1:7"),
                Arguments.of("{\"a\": -1e999}", "number-out-of-range /a 1:7"),
                Arguments.of("{\"a\": 1e-999}", "number-out-of-range /a 1:7"),
                Arguments.of("{\"a\": 9007199254740992}", "number-out-of-range /a 1:7"),
                Arguments.of("{\"a\": 1} {\"b\": 2}", "trailing-content  1:10"),
                Arguments.of("{}\n  x", "trailing-content  2:3"),
                Arguments.of("{}}", "trailing-content  1:3"),
                Arguments.of("{\"a\": \"\\ud800\"}", "text-character /a 1:7"),
                Arguments.of("{\"a\": \"\\u001b[31m\"}", "text-character /a 1:7"),
                Arguments.of("{\"a\": \"\\u0000\"}", "text-character /a 1:7"),
                Arguments.of("{\"a\\u0007\": 1}", "text-character /a\u0007 1:2"),
                Arguments.of("{\"\u00e9\ud83d\ude00\": x}", "syntax  1:8"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefusedAtThePlace(String text, String brief) {
        assertThat(Documents.faults(text, Format.JSON))
                .extracting(Documents::brief)
                .containsExactly(brief);
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefusedInPlainWords(String text, String brief) {
        Fault fault = Documents.faults(text, Format.JSON).get(0);
        assertThat(fault.detail()).endsWith(".").doesNotContain("Feature", "enable", "Source", "(code");
        assertThat(fault.remedy()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"a\": 1 \"b\": 2}  | a comma or a closing bracket is missing",
                "[1 2]                | a comma or a closing bracket is missing",
                "{\"a\" 1}            | a colon is missing after a name",
                "{\"a\": 1,}          | a name in double quotes belongs here, and no comma before a closing bracket",
                "{a: 1}               | a name in double quotes belongs here, and no comma before a closing bracket",
                "[1, ]                | something else belongs here",
                "[1, 2}               | this closes something other than what was opened last",
                "{\"a\": yes}         | words other than true, false and null stand in double quotes",
                "{\"a\": 10 ft}       | a comma or a closing bracket is missing",
                "{\"a\": 01}          | this is not how JSON writes numbers",
                "{\"a\": 1            | it ends before it is complete",
                "[\"\\q\"]              | a backslash stands before a character that makes no escape",
                "[\"a\tb\"]            | a line end, tab or control character stands inside a text and must be written as an escape"
            })
    void theDetailSaysWhatIsWrong(String text, String why) {
        assertThat(Documents.faults(text, Format.JSON))
                .extracting(Fault::detail)
                .containsExactly("The text is not JSON: " + why + ".");
    }

    @Test
    void everyDuplicateIsReported() {
        String text =
                "{\"a\": 1, \"b\": {\"c\": 1, \"c\": 2, \"c\": 3},\n \"a\": {\"x\": 1, \"x\": 2}, \"d\": [{\"e\": 1, \"e\": 1}]}";
        assertThat(Documents.faults(text, Format.JSON))
                .extracting(Documents::brief)
                .containsExactly(
                        "duplicate-key /b/c 1:24",
                        "duplicate-key /b/c 1:32",
                        "duplicate-key /a 2:2",
                        "duplicate-key /a/x 2:16",
                        "duplicate-key /d/0/e 2:40");
    }

    @Test
    void escapesDoNotHideADuplicate() {
        assertThat(Documents.faults("{\"ab\": 1, \"a\\u0062\": 2}", Format.JSON))
                .extracting(Documents::brief)
                .containsExactly("duplicate-key /ab 1:11");
    }

    @Test
    void whatWasFoundBeforeASyntaxFaultIsKept() {
        assertThat(Documents.faults("{\"a\": 1, \"a\": 1e999, \"b\": x}", Format.JSON))
                .extracting(Fault::code)
                .containsExactly("duplicate-key", "number-out-of-range", "syntax");
    }

    @Test
    void pointersAreEscaped() {
        assertThat(Documents.faults("{\"a/b\": {\"m~n\": [0, 1e999]}}", Format.JSON))
                .extracting(Fault::pointer)
                .containsExactly("/a~1b/m~0n/1");
    }
}
