package dev.underprop.wire.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the contract says of quantities is what is read and printed. */
class ContractTest {
    private static final Path CONTRACT = Path.of("../../api/src/main/openapi/openapi.yaml");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final Map<String, List<Kind>> KINDS = Map.of(
            "position", List.of(Kind.POSITION),
            "size, deflection, movement, opening, penetration", List.of(Kind.SIZE, Kind.DEFLECTION),
            "force", List.of(Kind.FORCE),
            "line load", List.of(Kind.LINE_LOAD),
            "moment", List.of(Kind.MOMENT),
            "torque", List.of(Kind.MOMENT),
            "pressure", List.of(Kind.PRESSURE),
            "stress", List.of(Kind.STRESS),
            "stiffness", List.of(Kind.STIFFNESS),
            "time", List.of(Kind.DURATION));

    private static List<String> lines = List.of();

    @BeforeAll
    static void read() throws IOException {
        lines = Files.readString(CONTRACT).lines().map(String::strip).toList();
    }

    /** The rows of the table under a heading row, each as its cells. */
    private static List<List<String>> table(String heading) {
        List<List<String>> rows = lines.stream()
                .dropWhile(line -> !line.equals(heading))
                .skip(2)
                .takeWhile(line -> line.startsWith("|"))
                .map(line -> Arrays.stream(line.substring(1).split("\\|", -1))
                        .map(String::strip)
                        .toList())
                .toList();
        assertThat(rows).as(heading).isNotEmpty();
        return rows;
    }

    private static List<String> codes(String cell) {
        return CODE.matcher(cell).results().map(ContractTest::group).toList();
    }

    private static String group(MatchResult result) {
        return result.group(1);
    }

    private static boolean readAsAny(String form) {
        return Arrays.stream(Dimension.values())
                .anyMatch(dimension -> Quantity.parse(form, dimension) instanceof QuantityReading.Value);
    }

    @Test
    void theGrammarIsTheSame() throws IOException {
        String contract = lines.stream()
                .dropWhile(line -> !line.equals("```ebnf"))
                .skip(1)
                .takeWhile(line -> !line.equals("```"))
                .map(line -> line + "\n")
                .collect(Collectors.joining());
        try (InputStream in = Quantity.class.getResourceAsStream("quantity.ebnf")) {
            assertThat(contract).isEqualTo(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "length, LENGTH",
        "force, FORCE",
        "line load, LINE_LOAD",
        "stiffness, STIFFNESS",
        "'pressure, stress', PRESSURE",
        "unit weight, UNIT_WEIGHT"
    })
    void theUnitsReadAreTheSame(String kind, Dimension dimension) {
        assertThat(table("| Kind of quantity | Units |"))
                .filteredOn(row -> row.get(0).equals(kind))
                .singleElement()
                .satisfies(row -> assertThat(codes(row.get(1).replaceAll("\\(.*\\)", "")))
                        .containsExactlyInAnyOrderElementsOf(Quantity.units(dimension)));
    }

    @Test
    void theAcceptedFormsAreRead() {
        for (List<String> row : table("| Accepted | Read as |")) {
            assertThat(codes(row.get(0))).isNotEmpty().allMatch(ContractTest::readAsAny);
        }
    }

    @Test
    void theRefusedFormsAreRefusedWhateverIsWanted() {
        for (List<String> row : table("| Refused | Because |")) {
            if (!row.get(0).contains(" for a ")) {
                assertThat(codes(row.get(0))).isNotEmpty().noneMatch(ContractTest::readAsAny);
            }
        }
    }

    @Test
    void theUnitsOfResultsAreTheSame() {
        for (List<String> row : table("| Kind | `units=us` | `units=si` |")) {
            assertThat(KINDS).containsKey(row.get(0));
            for (Kind kind : KINDS.getOrDefault(row.get(0), List.of())) {
                assertThat(codes(row.get(1))).containsExactly(kind.unit(UnitSystem.US));
                assertThat(codes(row.get(2))).containsExactly(kind.unit(UnitSystem.SI));
            }
        }
    }
}
