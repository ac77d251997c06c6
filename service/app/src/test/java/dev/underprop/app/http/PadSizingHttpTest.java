package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pads by HTTP: the published table of areas, and what must be refused or found. */
@ExtendWith(RunningService.class)
class PadSizingHttpTest {

    private static final String REQUEST = """
            objective: area
            loads: [ { name: P, x: 0 ft, y: 0 ft, dead: 2000 lb, live: 2500 lb } ]
            basePlate: { along: 6 in, across: 6 in }
            ground: { strength: { method: vesic, friction: 30 deg, cohesion: 0 psf, unitWeight: 110 pcf, saturatedUnitWeight: 125 pcf, waterDepth: 10 ft, safety: 3, source: report }, foundingDepth: 12 in, condition: undisturbed, subgrade: { soft: 100 pci, stiff: 300 pci, source: report } }
            excavation: { none: true }
            limits: { settlement: 1/2 in, settlementSlope: 0.004, settlementCriterion: agreed }
            stock:
              - pad: { name: cast, kind: concrete, make: cast, along: 16 in, across: 16 in, thickness: 8 in, strength: 3000 psi, centring: 1/2 in }
                grow: { side: 40 in, step: 2 in, thickness: 16 in, thicknessStep: 2 in }
            """;

    private static Response ask(String request) {
        return Client.postYaml("/v1/pad-sizings", request);
    }

    private static Response answered(String request) {
        Response answer = ask(request);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        return answer;
    }

    private static Response refused(String request) {
        Response answer = Client.wrong()
                .contentType("application/yaml")
                .body(request.getBytes(StandardCharsets.UTF_8))
                .post("/v1/pad-sizings");
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(422);
        return answer;
    }

    @Test
    void ofStrengthIsAnswered() {
        Response answer = answered(REQUEST);

        assertThat(answer.jsonPath().getString("state")).isEqualTo("ADEQUATE");
        assertThat(answer.jsonPath().getList("posts[0].proposals[0].checks.verdict", String.class))
                .hasSize(7)
                .containsOnly("PASS");
        assertThat(answer.jsonPath().getString("warnings[0]")).contains("vesic");
    }

    @Test
    void recordsAreGivenWhereTheyAreAskedFor() {
        Response without = answered(REQUEST);
        Response with = Client.postYaml("/v1/pad-sizings?working=true", REQUEST);

        assertThat(without.asString()).doesNotContain("\"working\"");
        List<String> symbols = with.jsonPath()
                .getList(
                        "posts[0].proposals[0].checks.find { it.check == 'pad-soil-bearing' }.working.lines.symbol",
                        String.class);
        assertThat(symbols).contains("ψ", "Nq", "iq", "qu", "qa");
        assertThat(with.jsonPath().getString("posts[0].proposals[0].pad.name"))
                .isEqualTo(without.jsonPath().getString("posts[0].proposals[0].pad.name"));
    }

    @Test
    void terzaghiIsNotCheckedUnderAPostThatPushesSideways() {
        Response answer = answered(REQUEST.replace("vesic", "terzaghi"));

        assertThat(answer.jsonPath().getString("state")).isNotEqualTo("ADEQUATE");
        assertThat(answer.jsonPath().getList("posts[0].proposals")).isEmpty();
        assertThat(answer.asString()).contains("upright loads");
    }

    /** 25 mm off the foot where nothing is said, and said; what the request says instead, and then the pad may be smaller. */
    @Test
    void theLoadStandsOffTheFootUnlessTheRequestSaysOtherwise() {
        Response silent = answered(REQUEST);
        Response common = answered(REQUEST + "eccentricity: 0 in\n");
        Response own = answered(REQUEST.replace("live: 2500 lb", "live: 2500 lb, eccentricity: 2 in"));

        assertThat(silent.jsonPath().getList("assumptions", String.class)).anyMatch(a -> a.contains("25 mm off"));
        assertThat(common.jsonPath().getList("assumptions", String.class)).noneMatch(a -> a.contains("25 mm off"));
        assertThat(own.jsonPath().getList("assumptions", String.class)).noneMatch(a -> a.contains("25 mm off"));
        assertThat(area(common)).isLessThan(area(silent));
        assertThat(area(silent)).isLessThan(area(own));
    }

    private static double area(Response answer) {
        return answer.jsonPath().getDouble("posts[0].proposals[0].area.value");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ", condition: unknown"})
    void groundOfNoStatedConditionPassesNothing(String condition) {
        Response answer = answered(
                REQUEST.replaceAll("ground: .*", "ground: { allowable: 3000 psf, source: report" + condition + " }"));

        assertThat(answer.jsonPath().getString("state")).isNotEqualTo("ADEQUATE");
        assertThat(answer.jsonPath().getList("posts[0].proposals")).isEmpty();
        assertThat(answer.asString()).contains("declare: condition");
    }

    /** Two posts 4 ft apart: what each adds below the other is told, and is in the settlement of both. */
    @Test
    void whatNeighboursAddIsTold() {
        String two = REQUEST.replace(
                "live: 2500 lb } ]", "live: 2500 lb }, { name: Q, x: 4 ft, y: 0 ft, dead: 2000 lb, live: 2500 lb } ]");
        Response answer = answered(two);

        assertThat(answer.jsonPath().getDouble("posts[0].below.added.value")).isPositive();
        assertThat(answer.jsonPath().getDouble("posts[0].below.depth.value")).isBetween(57.0, 60.0);
        assertThat(settlement(answer)).isGreaterThan(settlement(answered(REQUEST)));
    }

    private static double settlement(Response answer) {
        return answer.jsonPath()
                .getDouble("posts[0].proposals[0].checks.find { it.check == 'pad-settlement' }.demand.value");
    }

    /** Every load of the table on every soil of it: area by hand, and a pad that is no smaller. */
    @Test
    void thePublishedTableOfAreas() {
        Case table = Fixtures.ofKind("pad-area-table").get(0);
        double least = table.inputs().number("areaMin_in2");
        assertThat(table.expected()).hasSize(45);
        for (double soil : soils(table)) {
            List<Expected> row = table.expected().stream()
                    .filter(e -> e.given().number("soil_psf") == soil)
                    .toList();
            Response answer = answered(tableRequest(row, soil));
            for (int i = 0; i < row.size(); i++) {
                double area = answer.jsonPath().getDouble("posts[" + i + "].handCheck.area.value") * 144;
                Expected wanted = row.get(i);
                assertThat(wanted.check(Math.max(area, least)).agrees())
                        .as(wanted.check(Math.max(area, least)).message())
                        .isTrue();
                assertThat(answer.jsonPath().getDouble("posts[" + i + "].proposals[0].area.value") * 144)
                        .isGreaterThanOrEqualTo(wanted.printed().doubleValue() - wanted.tolerance());
            }
        }
    }

    private static double[] soils(Case table) {
        return table.expected().stream()
                .flatMapToDouble(e -> DoubleStream.of(e.given().number("soil_psf")))
                .distinct()
                .toArray();
    }

    private static String tableRequest(List<Expected> row, double soil) {
        String loads = IntStream.range(0, row.size())
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "{ name: P%d, x: %d ft, dead: %.0f lb }",
                        i,
                        20 * i,
                        row.get(i).given().number("load_lbf")))
                .collect(Collectors.joining(", "));
        return """
                objective: area
                loads: [ %s ]
                basePlate: { along: 8 in, across: 8 in }
                ground: { allowable: %s psf, source: the table, condition: undisturbed }
                stock:
                  - pad: { name: cast, kind: concrete, make: cast, along: 12 in, across: 12 in, thickness: 8 in, strength: 3000 psi, centring: 0 in }
                    grow: { side: 48 in, step: 1 in, thickness: 20 in, thicknessStep: 2 in }
                """.formatted(loads, soil);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "waterDepth: 10 ft|waterDepth: -2 ft|negative|/ground/strength/waterDepth",
                "friction: 30 deg|friction: 60 deg|beyond-sense|/ground/strength/friction",
                "thickness: 8 in, strength|thickness: 0 in, strength|not-positive|/stock/0/pad/thickness",
            })
    void nonsenseIsRefusedWhereItStands(String from, String to, String code, String pointer) {
        Response answer = refused(REQUEST.replace(from, to));

        assertThat(answer.jsonPath().getList("errors.code", String.class)).containsExactly(code);
        assertThat(answer.jsonPath().getList("errors.pointer", String.class)).containsExactly(pointer);
        assertThat(answer.jsonPath().getString("detail")).isEqualTo("The request has 1 fault.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"condition: peat", "condition: organic"})
    void peatIsAFindingWithWhatToDo(String condition) {
        Response answer = answered(REQUEST.replace("condition: undisturbed", condition));

        assertThat(answer.jsonPath().getString("state")).isEqualTo("NONE");
        assertThat(answer.jsonPath().getList("posts[0].proposals")).isEmpty();
        assertThat(answer.jsonPath().getString("posts[0].shortfall.reason")).contains("peat carry no pad");
        assertThat(answer.jsonPath().getString("posts[0].shortfall.change")).contains("dig down to firm");
    }

    /** A table has no value for peat: told where it stands. */
    @Test
    void peatOfATableIsAFault() {
        Response answer = refused(
                REQUEST.replaceAll("ground: .*", "ground: { table: ibc-1806.2, class: peat, condition: undisturbed }"));

        assertThat(answer.jsonPath().getList("errors.code", String.class)).containsExactly("ground-without-value");
        assertThat(answer.jsonPath().getList("errors.pointer", String.class)).containsExactly("/ground/class");
    }

    @Test
    void unpreparedFillIsNotPassed() {
        Response answer = answered(REQUEST.replace("condition: undisturbed", "condition: unprepared fill"));

        assertThat(answer.jsonPath().getString("state")).isEqualTo("INCOMPLETE");
        assertThat(answer.jsonPath().getList("posts[0].proposals")).isEmpty();
        assertThat(answer.jsonPath().getString("notChecked[0].reason")).contains("fill");
    }

    @Test
    void aCutThroughThePadIsAFinding() {
        Response answer = answered(REQUEST.replace(
                "excavation: { none: true }",
                "excavation: { cuts: [ { name: drain, fromX: 0 ft, toX: 3 ft, depth: 2 ft } ] }"));

        assertThat(answer.jsonPath().getString("state")).isEqualTo("NONE");
        assertThat(answer.jsonPath().getString("posts[0].message")).contains("its pad reaches the cut drain");
    }

    /** The setback that is wanted is told: 2 ft deep at 30 degrees is 3.46 ft. */
    @Test
    void aCutTooNearTellsTheSetback() {
        Response answer = answered(REQUEST.replace(
                "excavation: { none: true }",
                "excavation: { cuts: [ { name: drain, fromX: 3 ft, toX: 5 ft, depth: 2 ft } ] }"));

        assertThat(answer.jsonPath().getString("posts[0].message"))
                .contains("at 30 degrees it should be 1.06 m (3.5 ft)");
    }

    @Test
    void serviceLoadAloneLeavesConcreteOpen() {
        Response answer = answered(REQUEST.replace("dead: 2000 lb, live: 2500 lb", "service: 4500 lb"));

        assertThat(answer.jsonPath().getString("state")).isEqualTo("INCOMPLETE");
        assertThat(answer.jsonPath().getList("posts[0].proposals")).isEmpty();
        assertThat(answer.jsonPath().getList("notChecked.check", String.class)).contains("pad-strength");
    }
}
