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

class YamlReadingTest {
    static List<Arguments> same() {
        return List.of(
                Arguments.of("a: 1\nb: [x, 2.5]\n", "{\"a\":1,\"b\":[\"x\",2.5]}"),
                Arguments.of("---\na: {b: c}\n...\n", "{\"a\":{\"b\":\"c\"}}"),
                Arguments.of("%YAML 1.1\n---\na: no\n", "{\"a\":\"no\"}"),
                Arguments.of("# note\na:\n  - b: 1\n    c: 2\n  - {}\n", "{\"a\":[{\"b\":1,\"c\":2},{}]}"),
                Arguments.of("{\"a\": \"10 ft\", \"b\": [true, null]}", "{\"a\":\"10 ft\",\"b\":[true,null]}"),
                Arguments.of("a: 6'-10 1/2\"\n", "{\"a\":\"6'-10 1/2\\\"\"}"),
                Arguments.of("a: '10'\nb: \"10\"\nc: \"true\"\n", "{\"a\":\"10\",\"b\":\"10\",\"c\":\"true\"}"),
                Arguments.of("a: |\n  x\n  y\nb: >\n  x\n  y\n", "{\"a\":\"x\\ny\\n\",\"b\":\"x y\\n\"}"),
                Arguments.of("1: a\ntrue: b\n~: c\n3.5: d\n", "{\"1\":\"a\",\"true\":\"b\",\"~\":\"c\",\"3.5\":\"d\"}"),
                Arguments.of("? a\n: b\n", "{\"a\":\"b\"}"),
                Arguments.of("a:\n", "{\"a\":null}"),
                Arguments.of("- 1\n- - 2\n", "[1,[2]]"),
                Arguments.of("\"<<\": {a: 1}\n", "{\"<<\":{\"a\":1}}"),
                Arguments.of("a: \u00e9\ud83d\ude00\n", "{\"a\":\"\u00e9\ud83d\ude00\"}"),
                Arguments.of("id: 2026-014\n", "{\"id\":\"2026-014\"}"));
    }

    @ParameterizedTest
    @MethodSource("same")
    void meansTheSameAsJson(String yaml, String json) throws Exception {
        assertThat(Documents.tree(yaml, Format.YAML)).isEqualTo(new ObjectMapper().readTree(json));
        assertThat(Documents.tree(json, Format.YAML)).isEqualTo(Documents.tree(json, Format.JSON));
    }

    /** What an unquoted word is, and so what stays text although other readers take it for something else. */
    @ParameterizedTest
    @CsvSource({
        "yes, STRING",
        "no, STRING",
        "on, STRING",
        "off, STRING",
        "y, STRING",
        "n, STRING",
        "Yes, STRING",
        "true, BOOLEAN",
        "True, BOOLEAN",
        "FALSE, BOOLEAN",
        "tRUE, STRING",
        "null, NULL",
        "Null, NULL",
        "~, NULL",
        "nil, STRING",
        "10, NUMBER",
        "-10, NUMBER",
        "+10, NUMBER",
        "1e3, NUMBER",
        ".5, NUMBER",
        "5., NUMBER",
        "0, NUMBER",
        "0.50, NUMBER",
        "12:30, STRING",
        "190:20:30, STRING",
        "2026-11-01, STRING",
        "2026-11-01T10:00:00Z, STRING",
        "NaN, STRING",
        "Infinity, STRING",
        "10 ft, STRING",
        "1-1/2 in, STRING",
        "2x10, STRING",
        "No.2, STRING",
        "1.2.3, STRING",
        "-, STRING",
        "=, STRING"
    })
    void unquotedWords(String word, String kind) {
        JsonNode node = Documents.tree("a: \"\"\nb: [" + word + "]\n", Format.YAML);
        if (word.equals("-")) {
            node = Documents.tree("b: ['-']", Format.YAML);
        }
        assertThat(node.get("b").get(0).getNodeType()).hasToString(kind);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0123", "-0123", "0o17", "0x1F", "0b101", "1_000", "00", "007.5", "1_0.5"})
    void numbersThatReadersDisagreeAboutAreRefused(String word) {
        assertThat(Documents.faults("a: " + word, Format.YAML))
                .extracting(Documents::brief)
                .containsExactly("yaml-ambiguous-number /a 1:4");
        assertThat(Documents.tree("a: '" + word + "'", Format.YAML).get("a").asText())
                .isEqualTo(word);
    }

    static List<Arguments> refused() {
        return List.of(
                Arguments.of("", "document-empty  1:1"),
                Arguments.of("# only a note\n", "document-empty  2:1"),
                Arguments.of("---\n", "document-empty  2:1"),
                Arguments.of("a: 1\n---\nb: 2\n", "yaml-several-documents  2:1"),
                Arguments.of("--- {}\n--- {}\n", "yaml-several-documents  2:1"),
                Arguments.of("&x\n", "yaml-anchor  1:1"),
                Arguments.of("!own\n", "yaml-tag  1:1"),
                Arguments.of("a: &x 1\n", "yaml-anchor /a 1:4"),
                Arguments.of("a: &x {b: 1}\n", "yaml-anchor /a 1:4"),
                Arguments.of("&x a: 1\n", "yaml-anchor /a 1:1"),
                Arguments.of("a: !!int '1'\n", "yaml-tag /a 1:4"),
                Arguments.of("a: !own {b: 1}\n", "yaml-tag /a 1:4"),
                Arguments.of("- !!java.net.URL [x]\n", "yaml-tag /0 1:3"),
                Arguments.of("a: {<<: {b: 1}}\n", "yaml-merge-key /a/<< 1:5"),
                Arguments.of("? [a, b]\n: 1\n", "yaml-key-not-text  1:3"),
                Arguments.of("? {a: b}\n: 1\n", "yaml-key-not-text  1:3"),
                Arguments.of("a: .nan\n", "number-not-finite /a 1:4"),
                Arguments.of("a: -.inf\n", "number-not-finite /a 1:4"),
                Arguments.of("a: 1e999\n", "number-out-of-range /a 1:4"),
                Arguments.of("a:\n\tb: 1\n", "syntax  2:1"),
                Arguments.of("a:\n  b: 1\n\tc: 2\n", "syntax  3:1"),
                Arguments.of("a: [1, 2\n", "syntax  2:1"),
                Arguments.of("a: 'x\n", "syntax  2:1"),
                Arguments.of("a: b: c\n", "syntax  1:5"),
                Arguments.of("a: 1\n b: 2\n", "syntax  2:3"),
                Arguments.of("a: @x\n", "syntax  1:4"),
                Arguments.of("a: %x\n", "syntax  1:4"),
                Arguments.of("a: 1\n}\n", "syntax  2:1"),
                Arguments.of("a: \"\\u\"\n", "syntax  1:7"),
                Arguments.of("a: \"\\u", "syntax  1:7"),
                Arguments.of("a: \"\\q\"\n", "syntax  1:6"),
                Arguments.of("a: \"\\UFFFFFFFF\"\n", "syntax  1:7"),
                Arguments.of("a: \u0007\n", "text-character  1:4"),
                Arguments.of("a: \"\\e[31m\"\n", "text-character /a 1:4"),
                Arguments.of("{a: 1} {b: 2}\n", "syntax  1:8"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefusedAtThePlace(String text, String brief) {
        assertThat(Documents.faults(text, Format.YAML))
                .extracting(Documents::brief)
                .containsExactly(brief);
    }

    @Test
    void anAliasIsRefusedWithItsAnchor() {
        assertThat(Documents.faults("a: &x [1]\nb: *x\n*x : 2\n", Format.YAML))
                .extracting(Documents::brief)
                .containsExactly("yaml-anchor /a 1:4", "yaml-alias /b 2:4", "yaml-alias /*x 3:1");
    }

    @Test
    void aDocumentThatWouldGrowStaysSmall() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            String alias = "*a" + (i - 1);
            text.append("a" + i + ": &a" + i + " [" + (alias + ", ").repeat(9) + alias + "]\n");
        }
        assertThat(Documents.faults(text.toString(), Format.YAML))
                .hasSize(101)
                .extracting(Fault::code)
                .contains("yaml-anchor", "yaml-alias")
                .endsWith("too-many-faults");
    }

    @Test
    void everyDuplicateIsReported() {
        assertThat(Documents.faults("a: 1\nb:\n  - c: 1\n    c: 2\n'a': 2\n\"a\": 3\n1: x\n'1': y\n", Format.YAML))
                .extracting(Documents::brief)
                .containsExactly(
                        "duplicate-key /b/0/c 4:5",
                        "duplicate-key /a 5:1",
                        "duplicate-key /a 6:1",
                        "duplicate-key /1 8:1");
    }

    @Test
    void aTabIsNamed() {
        Fault fault = Documents.faults("a:\n\tb: 1\n", Format.YAML).get(0);
        assertThat(fault.detail()).isEqualTo("The text is not YAML: a tab stands where YAML wants blanks.");
    }
}
