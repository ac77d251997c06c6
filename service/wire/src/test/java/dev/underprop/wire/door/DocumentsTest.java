package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.Advisory;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.Quantity;
import dev.underprop.api.model.Severity;
import dev.underprop.wire.tree.Format;
import jakarta.validation.MessageInterpolator;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.ValidatorFactory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentsTest {
    @ParameterizedTest
    @CsvSource({"0.1, 0.1", "1234567890.123, 1.23456789e9", "1e-9, 1e-9", "100, 100", "0.333333333333333, 0.333333333"})
    void numbersHaveNineDigits(double value, String written) {
        assertThat(compact(new Quantity().value(value).unit("lb")))
                .isEqualTo("{\"value\":" + written + ",\"unit\":\"lb\"}\n");
    }

    @Test
    void absentMembersAreLeftOutAndTheOrderIsThatOfTheContract() {
        Advisory advisory = new Advisory()
                .source("s")
                .message("m")
                .severity(Severity.WARNING)
                .code("c");
        assertThat(compact(advisory))
                .isEqualTo("{\"code\":\"c\",\"severity\":\"WARNING\",\"message\":\"m\",\"source\":\"s\"}\n");
        assertThat(compact(advisory.place("p")))
                .isEqualTo("{\"code\":\"c\",\"severity\":\"WARNING\",\"place\":\"p\",\"message\":\"m\","
                        + "\"source\":\"s\"}\n");
    }

    @Test
    void prettyLinesEndWithLineFeeds() {
        String text = new String(Documents.json(new Quantity().value(1.5).unit("in"), true), StandardCharsets.UTF_8);
        assertThat(text).isEqualTo("{\n  \"value\": 1.5,\n  \"unit\": \"in\"\n}\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"carriage-house.json", "two-bays.json", "old-house.json"})
    void answersHoldEveryRequiredMemberAndNoNull(String name) throws IOException {
        LayoutAnalysis answer = ((Answer.Judged<LayoutAnalysis>)
                        new PlanDoor().analyse(Plans.bytes(name), Format.JSON, AnswerOptions.USUAL))
                .model();
        assertThat(validator().validate(answer)).isEmpty();
        List<String> nulls = new ArrayList<>();
        collectNulls(new ObjectMapper().readTree(Documents.json(answer, false)), "", nulls);
        assertThat(nulls).isEmpty();
    }

    private static void collectNulls(JsonNode node, String place, List<String> nulls) {
        if (node.isNull()) {
            nulls.add(place);
        }
        node.properties().forEach(entry -> collectNulls(entry.getValue(), place + "/" + entry.getKey(), nulls));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collectNulls(node.get(i), place + "/" + i, nulls);
        }
    }

    private static Validator validator() {
        @SuppressWarnings("resource")
        ValidatorFactory factory = Validation.byDefaultProvider()
                .configure()
                .messageInterpolator(new MessageInterpolator() {
                    @Override
                    public String interpolate(String template, Context context) {
                        return template;
                    }

                    @Override
                    public String interpolate(String template, Context context, Locale locale) {
                        return template;
                    }
                })
                .buildValidatorFactory();
        return factory.getValidator();
    }

    private static String compact(Object model) {
        return new String(Documents.json(model, false), StandardCharsets.UTF_8);
    }
}
