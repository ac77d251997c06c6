package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.ContactKind;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.NotCheckedItem;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.SituationState;
import dev.underprop.engine.check.CheckId;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnswersTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PlanDoor DOOR = new PlanDoor();
    private static final AnswerOptions FULL = new AnswerOptions(UnitSystem.US, AnswerOptions.Detail.FULL);
    private static final AnswerOptions SI = new AnswerOptions(UnitSystem.SI, AnswerOptions.Detail.FULL);

    /** What a unit is in the SI unit of its kind (N, m, Pa, N m). Written out here, not asked of the code. */
    private static final Map<String, Double> SIZES = Map.ofEntries(
            Map.entry("ft", 0.3048),
            Map.entry("m", 1.0),
            Map.entry("in", 0.0254),
            Map.entry("mm", 0.001),
            Map.entry("lb", 4.4482216152605),
            Map.entry("kN", 1000.0),
            Map.entry("lb-ft", 4.4482216152605 * 0.3048),
            Map.entry("kN-m", 1000.0),
            Map.entry("psf", 4.4482216152605 / (0.3048 * 0.3048)),
            Map.entry("kPa", 1000.0),
            Map.entry("psi", 4.4482216152605 / (0.0254 * 0.0254)),
            Map.entry("MPa", 1e6));

    @Test
    void yamlAndJsonGiveTheSameBytesAndDigest() {
        LayoutAnalysis json = analysis(Plans.bytes("carriage-house.json"), Format.JSON, FULL);
        LayoutAnalysis yaml = analysis(Plans.bytes("carriage-house.yaml"), Format.YAML, FULL);
        assertThat(yaml.getPlanDigest()).isEqualTo(json.getPlanDigest()).matches("[0-9a-f]{64}");
        assertThat(Documents.json(yaml, true)).isEqualTo(Documents.json(json, true));
    }

    @Test
    void anotherPlanHasAnotherDigest() {
        String text = Plans.text("carriage-house.json").replace("15 ft", "15 ft 1 in");
        LayoutAnalysis one = analysis(Plans.bytes("carriage-house.json"), Format.JSON, FULL);
        LayoutAnalysis other = analysis(text.getBytes(StandardCharsets.UTF_8), Format.JSON, FULL);
        assertThat(other.getPlanDigest()).isNotEqualTo(one.getPlanDigest());
        assertThat(other.getCatalogueDigest()).isEqualTo(one.getCatalogueDigest());
    }

    @ParameterizedTest
    @ValueSource(strings = {"carriage-house.json", "two-bays.json", "old-house.json"})
    void theSamePlanGivesTheSameBytes(String name) {
        byte[] first = Documents.json(analysis(Plans.bytes(name), Format.JSON, FULL), true);
        byte[] again = Documents.json(
                ((Answer.Judged<LayoutAnalysis>) new PlanDoor().analyse(Plans.bytes(name), Format.JSON, FULL)).model(),
                true);
        assertThat(again).isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"carriage-house.json", "two-bays.json", "old-house.json"})
    void bothSystemsOfUnitsSayTheSame(String name) throws IOException {
        Map<String, double[]> us = quantities(Documents.json(analysis(Plans.bytes(name), Format.JSON, FULL), false));
        Map<String, double[]> si = quantities(Documents.json(analysis(Plans.bytes(name), Format.JSON, SI), false));
        assertThat(si.keySet()).isEqualTo(us.keySet());
        assertThat(us).hasSizeGreaterThan(100);
        us.forEach((place, value) -> {
            double other = si.get(place)[0];
            double tolerance = Math.abs(value[0]) * 2e-8 + 1e-12;
            assertThat(other).as(place).isCloseTo(value[0], within(tolerance));
        });
    }

    private static Map<String, double[]> quantities(byte[] text) throws IOException {
        Map<String, double[]> found = new TreeMap<>();
        collect(JSON.readTree(text), "", found);
        return found;
    }

    private static void collect(JsonNode node, String place, Map<String, double[]> found) {
        if (node.has("unit")) {
            double size = SIZES.get(node.get("unit").textValue());
            found.put(place, new double[] {node.get("value").doubleValue() * size});
        }
        node.properties().forEach(entry -> collect(entry.getValue(), place + "/" + entry.getKey(), found));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), place + "/" + i, found);
        }
    }

    @Test
    void compactTellsTheWorstPlaceOfEachCheckAndFullEveryPlace() {
        LayoutAnalysis compact = analysis(Plans.bytes("carriage-house.json"), Format.JSON, AnswerOptions.USUAL);
        LayoutAnalysis full = analysis(Plans.bytes("carriage-house.json"), Format.JSON, FULL);
        assertThat(compact.getChecks()).extracting(CheckResult::getCheck).doesNotHaveDuplicates();
        assertThat(full.getChecks()).hasSizeGreaterThan(compact.getChecks().size());
        assertThat(compact.getVerdict()).isEqualTo(full.getVerdict());
        for (CheckResult one : compact.getChecks()) {
            List<CheckResult> places = full.getChecks().stream()
                    .filter(other -> other.getCheck().equals(one.getCheck()))
                    .toList();
            assertThat(places).contains(one);
            assertThat(places).allSatisfy(place -> {
                assertThat(rank(place)).isLessThanOrEqualTo(rank(one));
                if (place.getVerdict() == one.getVerdict() && place.getRatio() != null && one.getRatio() != null) {
                    assertThat(place.getRatio()).isLessThanOrEqualTo(one.getRatio());
                }
            });
        }
        assertThat(compact.getSituations().get(0).getLoadCases()).isNull();
        assertThat(full.getSituations().get(0).getLoadCases()).isNotEmpty();
    }

    private static int rank(CheckResult result) {
        return List.of(CheckVerdict.NOT_APPLICABLE, CheckVerdict.PASS, CheckVerdict.NOT_CHECKED, CheckVerdict.FAIL)
                .indexOf(result.getVerdict());
    }

    @Test
    void everyRequiredCheckIsInTheAnswerAndWhatIsNotMadeIsNamed() {
        LayoutAnalysis answer = analysis(Plans.bytes("carriage-house.json"), Format.JSON, AnswerOptions.USUAL);
        assertThat(answer.getChecks())
                .extracting(CheckResult::getCheck)
                .containsExactly(
                        Arrays.stream(CheckId.values()).map(CheckId::id).toArray(String[]::new));
        List<String> open =
                answer.getNotChecked().stream().map(NotCheckedItem::getCheck).toList();
        for (CheckId id : CheckId.values()) {
            if (!id.built()) {
                assertThat(open).contains(id.id());
            }
        }
        assertThat(answer.getChecks())
                .filteredOn(check -> check.getVerdict() == CheckVerdict.NOT_CHECKED)
                .allSatisfy(check -> assertThat(open).contains(check.getCheck()));
    }

    @Test
    void aPlanCheckCarriesNoContactsAndMembers() {
        PlanCheck check =
                ((Answer.Judged<PlanCheck>) DOOR.check(Plans.bytes("carriage-house.json"), Format.JSON, FULL)).model();
        assertThat(check.getSituations()).hasSize(2).allSatisfy(situation -> {
            assertThat(situation.getContacts()).isNull();
            assertThat(situation.getMembers()).isNull();
            assertThat(situation.getLoadCases()).isNull();
            assertThat(situation.getPosts()).hasSize(4);
            assertThat(situation.getHandChecks()).isNotEmpty();
        });
        assertThat(check.getId()).isEqualTo("2026-014");
        assertThat(check.getTitle()).isEqualTo("Carriage house, rear bay");
    }

    @Test
    void withoutTheFarFasteningTheJoistsTipAndTheAnswerSaysSo() {
        String text = Plans.text("two-bays.json")
                .replace(
                        "\"name\": \"shored\"",
                        "\"name\": \"both walls out\", \"removed\": [\"front wall\", \"rear wall\"]");
        LayoutAnalysis answer = analysis(text.getBytes(StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        assertThat(answer.getVerdict()).isEqualTo(PlanVerdict.UNSTABLE);
        assertThat(answer.getHeadline()).startsWith("The plan is unstable: in situation both walls out, ");
        assertThat(answer.getSituations().get(0).getState()).isEqualTo(SituationState.UNSTABLE);
        assertThat(answer.getSituations().get(0).getReason()).contains("turns over A");
        assertThat(answer.getSituations().get(0).getPosts()).isEmpty();
        assertThat(answer.getSituations().get(0).getHandChecks()).isNotEmpty();
    }

    @Test
    void nothingPassesWithoutNumbersOrAReason() {
        LayoutAnalysis answer = analysis(Plans.bytes("old-house.json"), Format.JSON, FULL);
        assertThat(answer.getChecks()).isNotEmpty().allSatisfy(check -> {
            assertThat(check.getMessage()).startsWith(check.getTitle()).endsWith(".");
            if (check.getVerdict() == CheckVerdict.PASS && check.getRatio() != null) {
                assertThat(check.getRatio()).isBetween(0.0, 1.0);
                assertThat(check.getRatio())
                        .isCloseTo(
                                check.getDemand().getValue()
                                        / check.getCapacity().getValue(),
                                within(1e-9));
            }
            if (Boolean.TRUE.equals(check.getCapacityNone())) {
                assertThat(check.getVerdict()).isEqualTo(CheckVerdict.FAIL);
                assertThat(check.getCapacity()).isNull();
                assertThat(check.getRatio()).isNull();
            }
        });
    }

    @Test
    void aPostTallerThanItsRatingHasNoCapacity() {
        String text = Plans.text("carriage-house.json").replace("6 ft 10 1/2 in", "7 ft 1 in");
        LayoutAnalysis answer = analysis(text.getBytes(StandardCharsets.UTF_8), Format.JSON, FULL);
        assertThat(answer.getChecks())
                .filteredOn(check -> check.getCheck().equals("post-rating")
                        && check.getPlace().equals("A2"))
                .hasSize(1)
                .allSatisfy(check -> {
                    assertThat(check.getVerdict()).isEqualTo(CheckVerdict.FAIL);
                    assertThat(check.getCapacityNone()).isTrue();
                    assertThat(check.getDemand().getUnit()).isEqualTo("lb");
                });
    }

    @Test
    void postsComeInTheOrderOfThePlan() {
        String text = Plans.text("two-bays.json")
                .replace("\"at\": \"0 ft\",\n          \"height\"", "\"at\": \"16 ft\",\n          \"height\"")
                .replaceFirst("(\"name\": \"A3\",\\s+\"at\": )\"16 ft\"", "$1\"0 ft\"");
        LayoutAnalysis answer = analysis(text.getBytes(StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        assertThat(text).isNotEqualTo(Plans.text("two-bays.json"));
        assertThat(answer.getSituations().get(0).getPosts())
                .extracting(post -> post.getPost())
                .containsExactly("A1", "A2", "A3");
    }

    @Test
    void joistsThatMeetOverAShoreBothRestOnIt() throws IOException {
        ObjectNode plan = (ObjectNode) JSON.readTree(Plans.bytes("two-bays.json"));
        ObjectNode joists = (ObjectNode) plan.at("/floor/joists");
        joists.put("length", "6 ft");
        for (int i = 0; i < 13; i++) {
            joists.withArray("each").addObject().put("at", 16 * i + " in").put("start", "6 ft");
        }
        LayoutAnalysis answer = analysis(JSON.writeValueAsBytes(plan), Format.JSON, AnswerOptions.USUAL);
        assertThat(answer.getCounts().getJoists()).isEqualTo(26);
        assertThat(answer.getSituations().get(0).getContacts())
                .filteredOn(contact -> contact.getKind() == ContactKind.JOIST_ON_SHORE)
                .hasSize(26);
        assertThat(answer.getVerdict()).isEqualTo(PlanVerdict.INCOMPLETE);
    }

    @Test
    void snowAtStrengthLevelIsTakenAtSevenTenthsAndSaid() {
        String mended = Plans.text("carriage-house.json")
                .replace("\"snowLevel\": \"allowable\"", "\"snowLevel\": \"strength\"");
        String allowable = Plans.text("carriage-house.json").replace("180 plf", "126 plf");
        LayoutAnalysis one = analysis(mended.getBytes(StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        LayoutAnalysis other = analysis(allowable.getBytes(StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        for (int p = 0; p < 4; p++) {
            assertThat(one.getSituations()
                            .get(1)
                            .getPosts()
                            .get(p)
                            .getGreatest()
                            .getValue())
                    .isCloseTo(
                            other.getSituations()
                                    .get(1)
                                    .getPosts()
                                    .get(p)
                                    .getGreatest()
                                    .getValue(),
                            within(1e-6));
        }
        assertThat(one.getAssumptions()).anyMatch(text -> text.contains("0.7 of its value"));
        assertThat(other.getAssumptions()).noneMatch(text -> text.contains("0.7 of its value"));
    }

    private static LayoutAnalysis analysis(byte[] text, Format format, AnswerOptions options) {
        Answer<LayoutAnalysis> answer = DOOR.analyse(text, format, options);
        assertThat(answer).isInstanceOf(Answer.Judged.class);
        return ((Answer.Judged<LayoutAnalysis>) answer).model();
    }
}
