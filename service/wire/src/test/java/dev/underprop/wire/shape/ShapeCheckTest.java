package dev.underprop.wire.shape;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.Locator;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShapeCheckTest {
    private static final ShapeCheck CHECK = new ShapeCheck(new ObjectMapper(), Job.class, 50);

    private static List<Fault> faults(String json) {
        return CHECK.check(tree(json));
    }

    private static JsonNode tree(String json) {
        TreeReading reading = new TreeReader(Limits.USUAL).read(json.getBytes(StandardCharsets.UTF_8), Format.JSON);
        assertThat(reading).isInstanceOf(TreeReading.Tree.class);
        return ((TreeReading.Tree) reading).root();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"length\": \"10 ft\", \"count\": 3, \"factor\": 1.5, \"weight\": 2, \"is-fastened\": true}",
                "{\"count\": 3.0, \"serial\": 3000000000, \"day\": \"2026-11-01\", \"side\": \"LEFT\"}",
                "{\"inner\": {\"inner\": {\"length\": \"\"}}, \"parts\": [{}, {\"count\": 1}], \"names\": [\"a\", \"a\"]}",
                "{\"removed\": [\"a\", \"b\"], \"limits\": {\"any name\": 1.5}, \"free\": [1, {\"x\": \"y\"}]}"
            })
    void theShapeOfTheModelPasses(String json) {
        assertThat(faults(json)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"lenght\": \"1 ft\"}          | unknown-member  | /lenght        | lenght",
                "{\"getDerived\": 1}             | unknown-member  | /getDerived    | getDerived",
                "{\"derived\": 1}                | unknown-member  | /derived       | derived",
                "{\"fastened\": true}            | unknown-member  | /fastened      | fastened",
                "{\"a/b\": 1}                    | unknown-member  | /a~1b          | a/b",
                "{\"inner\": {\"Count\": 1}}     | unknown-member  | /inner/Count   | Count",
                "{\"length\": 10}                | wrong-kind      | /length        | 10",
                "{\"length\": true}              | wrong-kind      | /length        | true",
                "{\"length\": {}}                | wrong-kind      | /length        | an object",
                "{\"length\": [\"1 ft\"]}        | wrong-kind      | /length        | a list",
                "{\"count\": \"3\"}              | wrong-kind      | /count         | 3",
                "{\"count\": 3.7}                | not-an-integer  | /count         | 3.7",
                "{\"count\": 1e300}              | not-an-integer  | /count         | 1e+300",
                "{\"count\": 2147483648}         | integer-out-of-range | /count    | 2147483648",
                "{\"count\": true}               | wrong-kind      | /count         | true",
                "{\"factor\": \"1.5\"}           | wrong-kind      | /factor        | 1.5",
                "{\"factor\": \"NaN\"}           | wrong-kind      | /factor        | NaN",
                "{\"factor\": \"Infinity\"}      | wrong-kind      | /factor        | Infinity",
                "{\"weight\": false}             | wrong-kind      | /weight        | false",
                "{\"is-fastened\": \"true\"}     | wrong-kind      | /is-fastened   | true",
                "{\"is-fastened\": 1}            | wrong-kind      | /is-fastened   | 1",
                "{\"day\": 20758}                | wrong-kind      | /day           | 20758",
                "{\"side\": 0}                   | wrong-kind      | /side          | 0",
                "{\"inner\": []}                 | wrong-kind      | /inner         | a list",
                "{\"inner\": \"x\"}              | wrong-kind      | /inner         | x",
                "{\"parts\": {}}                 | wrong-kind      | /parts         | an object",
                "{\"parts\": [[]]}               | wrong-kind      | /parts/0       | a list",
                "{\"names\": [\"a\", 1]}         | wrong-kind      | /names/1       | 1",
                "{\"limits\": {\"x\": \"1\"}}    | wrong-kind      | /limits/x      | 1",
                "{\"length\": null}              | null-value      | /length        | null",
                "{\"inner\": null}               | null-value      | /inner         | null",
                "{\"parts\": null}               | null-value      | /parts         | null",
                "{\"free\": null}                | null-value      | /free          | null",
                "{\"limits\": {\"x\": null}}     | null-value      | /limits/x      | null",
                "{\"names\": [\"a\", null]}      | null-element    | /names/1       | null",
                "{\"parts\": [{}, null]}         | null-element    | /parts/1       | null",
                "{\"removed\": [\"a\", \"b\", \"a\"]} | duplicate-item | /removed/2 | a"
            })
    void anotherShapeIsRefused(String json, String code, String pointer, String got) {
        assertThat(faults(json)).singleElement().satisfies(fault -> {
            assertThat(fault.code()).isEqualTo(code);
            assertThat(fault.pointer()).isEqualTo(pointer);
            assertThat(fault.got()).isEqualTo(got);
            assertThat(fault.remedy()).isNotEmpty();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "3", "\"x\"", "true", "null"})
    void theWholeIsAnObject(String json) {
        assertThat(faults(json)).singleElement().satisfies(fault -> {
            assertThat(fault.code()).isIn("wrong-kind", "null-value");
            assertThat(fault.pointer()).isEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"lenght\": 1}     | Did you mean length?",
                "{\"zzzzzz\": 1}     | Take it out, or use one of: count, day, factor, free, inner, is-fastened,",
                "{\"length\": 10}    | Write it in quotes; a quantity is a text with its unit, like \"10 ft\".",
                "{\"count\": \"3\"}  | Write the number without quotes and without a unit.",
                "{\"count\": 3.7}    | Write a whole number.",
                "{\"length\": null}  | Write the value, or leave the member out.",
                "{\"is-fastened\": \"yes\"} | Write true or false, without quotes.",
                "{\"parts\": {}}     | Write a list."
            })
    void theRemedySaysWhatToWrite(String json, String remedy) {
        assertThat(faults(json))
                .singleElement()
                .satisfies(fault -> assertThat(fault.remedy()).startsWith(remedy));
    }

    @Test
    void allFaultsAreReportedAtOnceAndCanBePlaced() {
        String json = "{\"lenght\": \"1 ft\",\n \"count\": 3.7,\n \"parts\": [{\"inner\": null}, {\"factor\": \"2\"}]}";
        List<Fault> placed = Locator.locate(faults(json), json.getBytes(StandardCharsets.UTF_8), Format.JSON);
        assertThat(placed)
                .extracting(fault -> fault.code() + " " + fault.pointer() + " " + fault.line() + ":" + fault.column())
                .containsExactly(
                        "unknown-member /lenght 1:2",
                        "not-an-integer /count 2:11",
                        "null-value /parts/0/inner 3:22",
                        "wrong-kind /parts/1/factor 3:40");
    }

    @Test
    void theNumberOfFaultsIsBounded() {
        String json = "{\"parts\": [" + "null,".repeat(99) + "null]}";
        assertThat(faults(json)).hasSize(51).extracting(Fault::code).endsWith("too-many-faults");
    }
}
