package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.underprop.app.Demos;
import dev.underprop.engine.check.CheckId;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** A plan with every optional thing left out is incomplete, and each check that it blocks names what to declare. */
@ExtendWith(RunningService.class)
class BarePlanTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String SHORED = Demos.text("bare.yaml");

    /** The wall goes, and the shore stands so near to it that the joists do not tip. */
    private static final String OUT = SHORED.replace(
                    "{ name: shored }", "{ name: yard wall out, removed: [yard wall] }")
            .replace("    at: 6 ft", "    at: 9 ft");

    private static final Pattern DECLARE = Pattern.compile("\\(declare: ([A-Za-z]+)\\)");

    private static final String NOT_BUILT = "This version does not make this check";

    private static final String SIZES = "sizes, species, grade, spans and loads are required of every plan";

    private static final String CONTACTS = "it is read from the forces in contacts, which follow from what is required";

    /** What needs nothing optional, and why. */
    private static final Map<CheckId, String> FROM_REQUIRED_ALONE = Map.ofEntries(
            Map.entry(CheckId.BEAM_BENDING, SIZES),
            Map.entry(CheckId.BEAM_SHEAR, SIZES),
            Map.entry(CheckId.BEAM_DEFLECTION_LIVE, SIZES),
            Map.entry(CheckId.BEAM_DEFLECTION_TOTAL, SIZES),
            Map.entry(CheckId.BEAM_BEARING_AT_JOIST, SIZES),
            Map.entry(CheckId.JOIST_BENDING, SIZES),
            Map.entry(CheckId.JOIST_SHEAR, SIZES),
            Map.entry(CheckId.JOIST_DEFLECTION_LIVE, SIZES),
            Map.entry(CheckId.JOIST_DEFLECTION_TOTAL, SIZES),
            Map.entry(CheckId.JOIST_BEARING, SIZES),
            Map.entry(CheckId.GIRDER_BENDING, "no bearing of this plan is a girder"),
            Map.entry(CheckId.GIRDER_SHEAR, "no bearing of this plan is a girder"),
            Map.entry(CheckId.GIRDER_DEFLECTION_LIVE, "no bearing of this plan is a girder"),
            Map.entry(CheckId.GIRDER_DEFLECTION_TOTAL, "no bearing of this plan is a girder"),
            Map.entry(CheckId.GIRDER_BEARING_AT_PIER, "no bearing of this plan is a girder"),
            Map.entry(CheckId.BEARING_UPLIFT, CONTACTS),
            Map.entry(CheckId.POST_CONTACT, CONTACTS),
            Map.entry(CheckId.TIPPING, CONTACTS),
            Map.entry(CheckId.BEARING_TRANSFER, "a damage limit is named where none is stated, and said so"));

    private static JsonNode answer(String plan) throws IOException {
        Response answer = Client.postYaml("/v1/plan-checks?detail=full", plan);
        assertThat(answer.statusCode()).isEqualTo(200);
        return JSON.readTree(answer.asByteArray());
    }

    private static JsonNode tree(String yaml) {
        return JSON.valueToTree(new Yaml(new SafeConstructor(new LoaderOptions())).<Object>load(yaml));
    }

    static Stream<String> plans() {
        return Stream.of(SHORED, OUT);
    }

    private static List<String> reasons(JsonNode answer, CheckId id) {
        return StreamSupport.stream(answer.get("notChecked").spliterator(), false)
                .filter(item -> item.get("check").asText().equals(id.id()))
                .map(item -> item.get("reason").asText())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void everyRequiredCheckIsMadeFromWhatIsRequiredOrNamesWhatIsMissing(String plan) throws IOException {
        JsonNode answer = answer(plan);
        Set<String> declarable = declarable();
        for (CheckId id : CheckId.required(plan.contains("removed:"))) {
            List<String> reasons = reasons(answer, id);
            assertThat(reasons.isEmpty())
                    .as(id.id() + " is made from what is required alone")
                    .isEqualTo(FROM_REQUIRED_ALONE.containsKey(id));
            assertThat(reasons).as(id.id()).allSatisfy(reason -> assertNames(reason, id, plan, declarable));
        }
    }

    /** A member of the contract that the plan does not have. */
    private static void assertNames(String reason, CheckId id, String plan, Set<String> declarable) {
        Matcher named = DECLARE.matcher(reason);
        if (!id.built()) {
            assertThat(reason).startsWith(NOT_BUILT);
            return;
        }
        assertThat(named.find()).as(reason).isTrue();
        assertThat(declarable).contains(named.group(1));
        assertThat(plan).doesNotContainPattern("\\b" + named.group(1) + ":");
    }

    @Test
    void theVerdictIsIncompleteAndNothingFails() throws IOException {
        JsonNode answer = answer(SHORED);

        assertThat(answer.get("verdict").asText()).isEqualTo("INCOMPLETE");
        assertThat(answer.findValuesAsText("verdict")).doesNotContain("FAIL");
    }

    /** Nothing in the plan is optional: without any one of its members it is faulty. */
    @Test
    void everyMemberOfItIsRequired() {
        JsonNode plan = tree(SHORED);
        List<String> members = new ArrayList<>();
        collect(plan, "", members);

        assertThat(members).hasSizeGreaterThan(30);
        for (String member : members) {
            JsonNode poorer = plan.deepCopy();
            int last = member.lastIndexOf('/');
            ((ObjectNode) poorer.at(member.substring(0, last))).remove(member.substring(last + 1));
            Response answer = Client.wrong()
                    .contentType("application/json")
                    .body(poorer.toString())
                    .post("/v1/plan-checks");
            assertThat(answer.statusCode()).as(member).isEqualTo(422);
        }
    }

    private static void collect(JsonNode node, String path, List<String> members) {
        node.fields().forEachRemaining(member -> {
            members.add(path + "/" + member.getKey());
            collect(member.getValue(), path + "/" + member.getKey(), members);
        });
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), path + "/" + i, members);
        }
    }

    /** Every member that a plan may have, at any depth, by the contract. */
    private static Set<String> declarable() {
        JsonNode schemas = ContractFile.read().tree().at("/components/schemas");
        Set<String> names = new TreeSet<>();
        reach(schemas, "JobPlan", names, new TreeSet<>());
        return names;
    }

    private static void reach(JsonNode schemas, String schema, Set<String> names, Set<String> seen) {
        if (!seen.add(schema)) {
            return;
        }
        schemas.at("/" + schema + "/properties").fieldNames().forEachRemaining(names::add);
        for (String reference : schemas.get(schema).findValuesAsText("$ref")) {
            reach(schemas, reference.substring(reference.lastIndexOf('/') + 1), names, seen);
        }
    }
}
