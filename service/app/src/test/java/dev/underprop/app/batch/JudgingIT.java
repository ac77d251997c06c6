package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as a failure: verdicts, accepted findings, earlier results. */
class JudgingIT {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void plans() throws IOException {
        for (String demo :
                List.of("adequate.yaml", "two-spans.yaml", "snug-shore.yaml", "sill-out-loose.yaml", "complete.yaml")) {
            Files.copy(Demos.FOLDER.resolve(demo), folder.resolve(demo));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "adequate.yaml, incomplete, 0",
        "two-spans.yaml, incomplete, 1",
        "two-spans.yaml, inadequate, 0",
        "snug-shore.yaml, inadequate, 1",
        "snug-shore.yaml, unstable, 0",
        "sill-out-loose.yaml, unstable, 1",
        "gone.yaml, unstable, 2",
    })
    void statusGoesByTheMildestVerdictThatFails(String plan, String verdict, int status) {
        assertThat(check(plan, "--fail-on", verdict).status()).isEqualTo(status);
    }

    @Test
    void acceptedFindingsDoNotCountButUnstablePlansAndFaultsDo() throws IOException {
        check(".", "--report", "baseline:accepted.txt");

        assertThat(check("two-spans.yaml", "--baseline", "accepted.txt").status())
                .isZero();
        assertThat(check("snug-shore.yaml", "--baseline", "accepted.txt").status())
                .isZero();
        assertThat(check("complete.yaml", "--baseline", "accepted.txt").status())
                .as("ratios with more digits than are written")
                .isZero();
        assertThat(check("sill-out-loose.yaml", "--baseline", "accepted.txt").status())
                .isEqualTo(1);
        assertThat(Files.readString(folder.resolve("accepted.txt"))).doesNotContain("wash-house-loose");
        Files.writeString(folder.resolve("two-spans.yaml"), "id: two-spans\n");
        assertThat(check("two-spans.yaml", "--baseline", "accepted.txt").status())
                .isEqualTo(2);
    }

    @Test
    void acceptedFindingsAreMarkedInEveryReport() throws IOException {
        check(".", "--report", "baseline:accepted.txt");

        Run run = check(
                "snug-shore.yaml",
                "--baseline",
                "accepted.txt",
                "--text",
                "lines",
                "--report",
                "ndjson:r.ndjson",
                "--report",
                "sarif:r.sarif",
                "--report",
                "junit:r.xml",
                "--report",
                "csv:r.csv");

        assertThat(run.out()).contains("Accepted: all 16 findings.").contains("16 findings are accepted, 0 are open.");
        JsonNode record =
                JSON.readTree(Files.readAllLines(folder.resolve("r.ndjson")).get(0));
        assertThat(record.get("accepted")).hasSize(16);
        assertThat(JSON.readTree(folder.resolve("r.sarif").toFile()).findValues("suppressions"))
                .hasSize(16);
        assertThat(Files.readString(folder.resolve("r.xml"))).contains("failures=\"0\"");
        assertThat(Files.readString(folder.resolve("r.csv")).lines().filter(row -> row.contains(",true,")))
                .hasSize(16);
    }

    @Test
    void whatIsWorseThanAcceptedIsReportedAgainAndWhatIsGoneIsListed() throws IOException {
        check("snug-shore.yaml", "--report", "baseline:accepted.txt");
        Path list = folder.resolve("accepted.txt");
        List<String> lines = new ArrayList<>();
        String worse = "";
        for (String line : Files.readAllLines(list)) {
            JsonNode node = JSON.readTree(line);
            if (worse.isEmpty() && node.path("ratio").asDouble() > 1.001) {
                worse = node.get("check").asText();
                line = line.replace(node.get("ratio").asText(), "1.0001");
            }
            lines.add(line);
        }
        lines.add(
                "{\"plan\":\"snug-shore\",\"check\":\"beam-shear\",\"place\":\"beam of M\",\"verdict\":\"FAIL\",\"ratio\":3}");
        Files.write(list, lines);

        Run run = check("snug-shore.yaml", "--baseline", "accepted.txt", "--text", "lines");

        assertThat(worse).isNotEmpty();
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out())
                .contains("Accepted: 15 of 16 findings.")
                .contains(
                        "1 accepted finding is not there any more; take it off the list: snug-shore, beam-shear, beam of M.");
    }

    @ParameterizedTest
    @CsvSource({"--baseline, gone.txt", "--baseline, two-spans.yaml", "--against, gone.txt", "--against, two-spans.yaml"
    })
    void listsThatCannotBeReadAreStatusTwo(String option, String file) {
        Run run = check("adequate.yaml", option, file);

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("underprop check: the ")
                .contains(file + " cannot be read: ")
                .doesNotContain("\tat ");
    }

    @Test
    void changesAreToldWithTheirCauses() throws IOException {
        check(".", "--report", "ndjson:old.ndjson", "--detail", "brief");
        Files.writeString(
                folder.resolve("adequate.yaml"), Demos.text("adequate.yaml").replace("live: 40 psf", "live: 100 psf"));
        Files.delete(folder.resolve("sill-out-loose.yaml"));
        Files.writeString(
                folder.resolve("new.yaml"), Demos.text("two-spans.yaml").replace("id: two-spans", "id: brand-new"));

        Run run = check(".", "--against", "old.ndjson", "--report", "ndjson:new.ndjson", "--text", "lines");

        Map<String, String> changes = changes("new.ndjson");
        assertThat(changes)
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "pantry-middle", "{\"what\":\"verdict\",\"before\":\"ADEQUATE\",\"because\":[\"plan\"]}",
                        "brand-new", "{\"what\":\"new\",\"because\":[]}"));
        assertThat(run.out())
                .contains("Changed: the verdict was ADEQUATE; other than it was: plan.")
                .contains("1 plan with another verdict than before.")
                .contains("1 plan of the earlier results was not met: wash-house-loose.");
    }

    @Test
    void changingOneValueOfTheCatalogueListsTheAffectedPlansAlone() throws IOException {
        check(".", "--report", "ndjson:old.ndjson", "--detail", "brief");
        Path jar = folder.resolve("changed.jar");
        Files.copy(Path.of("target", "underprop.jar"), jar, StandardCopyOption.REPLACE_EXISTING);
        lowerBending(jar, "Douglas Fir-Larch,No.2");

        Run run = Run.jar(jar, folder, "check", ".", "--against", "old.ndjson", "--report", "ndjson:new.ndjson");

        assertThat(run.status()).as(run.err()).isEqualTo(1);
        Map<String, String> changes = changes("new.ndjson");
        assertThat(changes)
                .as("plans with boards of that species and grade; the unstable one has no ratio")
                .containsOnlyKeys("pantry-middle", "snug-shore");
        assertThat(changes.values()).allSatisfy(change -> assertThat(change).contains("\"because\":[\"catalogue\"]"));
        assertThat(run.out()).contains("2 plans with other numbers than before.");
    }

    private static void lowerBending(Path jar, String row) throws IOException {
        try (FileSystem files = FileSystems.newFileSystem(URI.create("jar:" + jar.toUri()), Map.of())) {
            Path table = files.getPath("/dev/underprop/wire/catalogue/lumber-values.csv");
            List<String> rows = new ArrayList<>();
            int changed = 0;
            for (String line : Files.readAllLines(table, StandardCharsets.UTF_8)) {
                boolean wanted = line.startsWith(row + ",any,");
                changed += wanted ? 1 : 0;
                rows.add(wanted ? line.replace("," + bending(line) + ",", "," + (bending(line) - 25) + ",") : line);
            }
            assertThat(changed).as("rows of " + row).isEqualTo(1);
            Files.write(table, rows, StandardCharsets.UTF_8);
        }
    }

    private static int bending(String line) {
        return Integer.parseInt(line.split(",", -1)[3]);
    }

    private Map<String, String> changes(String file) throws IOException {
        Map<String, String> changes = new TreeMap<>();
        for (String line : Files.readAllLines(folder.resolve(file))) {
            JsonNode record = JSON.readTree(line);
            if (record.has("change")) {
                changes.put(record.get("id").asText(), record.get("change").toString());
            }
        }
        return changes;
    }

    private Run check(String path, String... options) {
        List<String> all = new ArrayList<>(List.of("check", path));
        all.addAll(List.of(options));
        return Run.in(folder, all.toArray(new String[0]));
    }
}
