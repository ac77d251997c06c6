package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Writing an example changes that example and nothing else. */
class ExampleWritingTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void sameValuesGiveTheSameBytes() {
        ContractFile contract = ContractFile.read();
        String before = contract.text();
        ContractExamples shown = new ContractExamples(contract.tree());

        ExampleTable.rows(contract).forEach(row -> contract.replace(row.example(), shown.value(row.example())));

        assertThat(contract.text()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"on\": [\"on\", \"No\", \"1e3\", \"0x1F\", \"1_000\", \"2018-01-01\", \"~\", \"null\", \"\", \" a \"]}",
                "{\"a\": [\"it's: so\", \"a #b\", \"[x\", \"- x\", \"a, b\", \"{\", \"*x\", \"!x\", \"%x\", \"x:\", \"caf\u00e9\"]}",
                "{\"a\": {\"b\": [[1, 2.5], [-4.08925085e-13, 0], {}, [], {\"c\": true}, \"tab\\there\"]}}",
                "\"one\\n\\n  two\\n\"",
                "\"plain\"",
            })
    void whatIsWrittenIsReadAgain(String json) throws JsonProcessingException {
        JsonNode value = JSON.readTree(json);
        ContractFile contract = ContractFile.read();
        ObjectNode wanted = (ObjectNode) contract.tree();
        ((ObjectNode) wanted.at("/components/examples/problemFaulty")).set("value", value);

        contract.replace("problemFaulty", value);

        assertThat(contract.tree()).isEqualTo(wanted);
    }

    @Test
    void longValuesAreReadAgain() throws JsonProcessingException {
        String words = "\"" + "so many words, ".repeat(20) + "\"";
        JsonNode value = JSON.readTree(
                "[{\"a\": " + words + ", \"b\": [" + words + ", {\"c\": " + words + "}]}, " + words + "]");
        ContractFile contract = ContractFile.read();

        contract.replace("healthUp", value);

        assertThat(new ContractExamples(contract.tree()).value("healthUp")).isEqualTo(value);
    }
}
