package dev.underprop.wire.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.wire.fault.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityFormsTest {
    private static final Path SOURCE = Path.of("src/main/java/dev/underprop/wire/quantity/Quantity.java");

    static List<JsonNode> accepted() throws IOException {
        return rows("si");
    }

    static List<JsonNode> refused() throws IOException {
        return rows("code");
    }

    private static List<JsonNode> rows(String having) throws IOException {
        List<JsonNode> rows = new ArrayList<>();
        try (InputStream in = Quantity.class.getResourceAsStream("quantity-forms.json")) {
            new ObjectMapper().readTree(in).forEach(rows::add);
        }
        rows.removeIf(row -> !row.has(having));
        return rows;
    }

    private static QuantityReading read(JsonNode row) {
        Dimension dimension = Dimension.valueOf(row.get("dimension").asText());
        return Quantity.parse(row.get("form").asText(), dimension);
    }

    @ParameterizedTest
    @MethodSource("accepted")
    void isReadAsTheNearestDouble(JsonNode row) {
        assertThat(read(row)).isEqualTo(new QuantityReading.Value(row.get("si").doubleValue()));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefusedWithCodeAndRemedy(JsonNode row) {
        Fault fault = refusal(read(row));
        assertThat(fault.code()).isEqualTo(row.get("code").asText());
        assertThat(fault.detail()).endsWith(".");
        assertThat(fault.remedy()).endsWith(".");
        String form = row.get("form").asText().strip();
        assertThat(fault.got().isEmpty()).isEqualTo(form.isEmpty());
    }

    private static Fault refusal(QuantityReading reading) {
        return reading instanceof QuantityReading.Refused refused ? refused.fault() : fail("was read: " + reading);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "6 ft 14 in      | Write 7 ft 2 in.",
                "6 ft 14 1/2 in  | Write 7 ft 2 1/2 in.",
                "6'-12.5\"       | Write 7 ft 0.5 in.",
                "6 ft 24 1/4 in  | Write 8 ft 1/4 in.",
                "6 ft 12 in      | Write 7 ft 0 in.",
                "10              | Write the number with a unit, like 10 ft.",
                "10 feet         | Write ft.",
                "10 FT           | Write ft.",
                "10 kg           | Write a force: N, kN, lb or kip.",
                "10 xyz          | Use one of: ft, ', in, \", m, cm, mm.",
                "6\u2032         | Write feet as ft or with a straight apostrophe (').",
                "6\u2033         | Write inches as in or with a straight quotation mark (\").",
                "\u00bd in       | Write fractions like 1/2, and powers like m2.",
                "\u22126 in      | Write a plain hyphen (-)."
            })
    void theRemedySaysWhatToWrite(String form, String remedy) {
        assertThat(refusal(Quantity.parse(form, Dimension.LENGTH)).remedy()).isEqualTo(remedy);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 kip  | LENGTH | kip is not a unit of length.",
                "10 ft  | ANGLE  | ft is not a unit of angle.",
                "10     | ANGLE  | The unit is missing; an angle is wanted.",
                "5 kg   | FORCE  | kg is a unit of mass, and a force is wanted."
            })
    void theDetailSaysWhatIsWrong(String form, Dimension dimension, String detail) {
        assertThat(refusal(Quantity.parse(form, dimension)).detail()).isEqualTo(detail);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theExampleOfEachDimensionIsRead(Dimension dimension) {
        assertThat(Quantity.parse(dimension.example(), dimension)).isInstanceOf(QuantityReading.Value.class);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyUnitHasAnAcceptedForm(Dimension dimension) throws IOException {
        for (String unit : Quantity.units(dimension)) {
            assertThat(accepted())
                    .as("a form with %s for %s", unit, dimension)
                    .anyMatch(row -> row.get("dimension").asText().equals(dimension.name())
                            && row.get("form").asText().strip().endsWith(unit));
        }
    }

    @Test
    void theGrammarInTheDocumentationIsTheResource() throws IOException {
        String grammar;
        try (InputStream in = Quantity.class.getResourceAsStream("quantity.ebnf")) {
            grammar = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        String documented = Files.readString(SOURCE)
                .lines()
                .dropWhile(line -> !line.contains("<pre>"))
                .skip(1)
                .takeWhile(line -> !line.contains("</pre>"))
                .map(line -> line.substring(3) + "\n")
                .collect(Collectors.joining());
        assertThat(documented).isEqualTo(grammar);
    }
}
