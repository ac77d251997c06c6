package dev.underprop.engine.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Fixtures;
import dev.underprop.fixtures.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * Which published cases stand behind which check. The table is printed with every run and written to
 * target/published-cases.md; rows of one table count once.
 */
class PublishedCasesTest {

    private static final JsonNode MAP = Fixtures.read("behind/checks.json");
    private static final List<Case> CASES = Fixtures.all();
    private static final String DOOR = "door:";

    /** Ids of checks and doors of one case: of its kind, and its own besides. */
    private static List<String> behind(Case one) {
        return Stream.of(MAP.path("kinds").path(one.kind()), MAP.path("cases").path(one.id()))
                .flatMap(list -> StreamSupport.stream(list.spliterator(), false))
                .map(JsonNode::asText)
                .toList();
    }

    private static List<Case> of(String behind) {
        return CASES.stream().filter(c -> behind(c).contains(behind)).toList();
    }

    private static Set<String> counted(List<Case> cases, Standing standing) {
        return cases.stream()
                .filter(c -> c.standing() == standing)
                .map(Case::countedAs)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean published(List<Case> cases) {
        return cases.stream().anyMatch(c -> c.standing().published());
    }

    @Test
    void everyCaseStandsBehindACheckOrADoor() {
        Set<String> known =
                Arrays.stream(CheckId.values()).map(CheckId::id).collect(Collectors.toCollection(TreeSet::new));
        MAP.path("doors").fieldNames().forEachRemaining(door -> known.add(DOOR + door));
        assertThat(CASES).allSatisfy(one -> {
            assertThat(behind(one))
                    .as(one.id() + " of kind " + one.kind())
                    .isNotEmpty()
                    .doesNotHaveDuplicates();
            assertThat(known).as(one.id()).containsAll(behind(one));
        });
    }

    @Test
    void whatTheMapNamesIsThere() {
        Set<String> kinds = CASES.stream().map(Case::kind).collect(Collectors.toSet());
        Set<String> ids = CASES.stream().map(Case::id).collect(Collectors.toSet());
        assertThat(kinds)
                .containsAll(MAP.path("kinds").properties().stream()
                        .map(e -> e.getKey())
                        .toList());
        assertThat(ids)
                .containsAll(MAP.path("cases").properties().stream()
                        .map(e -> e.getKey())
                        .toList());
        MAP.path("doors")
                .fieldNames()
                .forEachRemaining(door -> assertThat(of(DOOR + door)).as(door).isNotEmpty());
    }

    /** A check without a published case says why, and one with says no such thing. */
    @Test
    void everyCheckHasAPublishedCaseOrAReason() {
        for (CheckId check : CheckId.values()) {
            String reason = MAP.path("without").path(check.id()).asText("");
            assertThat(reason.isEmpty()).as(check.id() + ": " + reason).isEqualTo(published(of(check.id())));
        }
        assertThat(Arrays.stream(CheckId.values()).map(CheckId::id))
                .containsAll(MAP.path("without").properties().stream()
                        .map(e -> e.getKey())
                        .toList());
    }

    @Test
    void holdsEnoughPublishedCases() {
        Set<String> published = new TreeSet<>(counted(CASES, Standing.READ));
        published.addAll(counted(CASES, Standing.MIXED));
        assertThat(published).hasSizeGreaterThanOrEqualTo(110);
    }

    @Test
    void printsTheTable() throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("| behind | read | mixed | from memory | computed | published cases |");
        lines.add("|---|---|---|---|---|---|");
        for (CheckId check : CheckId.values()) {
            lines.add(line(
                    check.id(),
                    of(check.id()),
                    MAP.path("without").path(check.id()).asText("")));
        }
        MAP.path("doors")
                .properties()
                .forEach(door -> lines.add(
                        line(door.getKey() + " (" + door.getValue().asText() + ")", of(DOOR + door.getKey()), "")));
        lines.add(line("all, each once", CASES, "see above"));
        lines.forEach(System.out::println);
        Path table = Path.of("target", "published-cases.md");
        Files.writeString(table, String.join("\n", lines) + "\n");
        assertThat(Files.readAllLines(table))
                .hasSize(CheckId.values().length + MAP.path("doors").size() + 3);
    }

    private static String line(String name, List<Case> cases, String instead) {
        List<String> cells = new ArrayList<>(List.of(name));
        for (Standing standing : List.of(Standing.READ, Standing.MIXED, Standing.FROM_MEMORY, Standing.COMPUTED)) {
            cells.add(Integer.toString(counted(cases, standing).size()));
        }
        Set<String> published = new TreeSet<>(counted(cases, Standing.READ));
        published.addAll(counted(cases, Standing.MIXED));
        cells.add(instead.isEmpty() ? String.join("; ", published).replace(" | ", ", ") : "- " + instead);
        return "| " + String.join(" | ", cells) + " |";
    }
}
