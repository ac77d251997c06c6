package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code check} of the real jar: exit status, outputs, report. */
class CheckIT {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({
        "demo/adequate.yaml, 0",
        "demo/sill-out-loose.yaml, 1",
        "demo/sill-out-tied.yaml, 1",
        "demo/invalid-names.yaml, 2",
        "demo/nothing.yaml, 2",
        "pom.xml, 2",
        "src/main/resources, 2",
    })
    void exitStatusTellsWhatHappened(String path, int status) {
        assertThat(Run.of("check", path).status()).isEqualTo(status);
    }

    @Test
    void oneBadPlanNeverStopsTheRestAndTwoWins() {
        Run run = Run.of("check", "demo");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("20 plans: 2 unstable, 13 inadequate, 2 incomplete, 1 adequate, 2 not judged.")
                .contains("demo/invalid-names.yaml:6:34  /floor/joists/species  (species-unknown)")
                .doesNotContain("\u001b");
        assertThat(run.out().split("A calculation aid", -1))
                .as("the caution stands once")
                .hasSize(2);
    }

    @Test
    void reportHoldsARecordForEveryPlanInOrder() throws IOException {
        Path report = folder.resolve("report.json");

        Run run = Run.of(
                "check",
                "demo/two-spans.yaml",
                "demo/invalid-sizes.json",
                "demo/complete.yaml",
                "--report",
                "json:" + report);

        assertThat(run.status()).isEqualTo(2);
        JsonNode records = JSON.readTree(report.toFile());
        assertThat(texts(records, "path"))
                .as("in the order of the command line")
                .containsExactly("demo/two-spans.yaml", "demo/invalid-sizes.json", "demo/complete.yaml");
        assertThat(texts(records, "id")).containsExactly("two-spans", "loft-sizes", "2026-014");
        assertThat(records.get(2).get("result").get("verdict").asText()).isEqualTo("INADEQUATE");
        assertThat(records.get(1).get("problem").get("errors")).hasSize(8);
        assertThat(records.get(0).get("result").get("document").asText()).isEqualTo("plan-check");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void reportToTheStandardOutputStandsThereAlone() throws IOException {
        Run run = Run.of("check", "demo/two-spans.yaml", "--report", "json:-");

        assertThat(JSON.readTree(run.out())).hasSize(1);
        assertThat(run.err()).contains("two-spans Two equal spans").contains("1 plan: 1 incomplete.");
    }

    @Test
    void reportThatCannotBeWrittenIsAFailure() {
        Run run = Run.of("check", "demo/two-spans.yaml", "--report", "json:" + folder.resolve("no/such/report.json"));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).startsWith("underprop check: the report was not written: ");
    }

    @Test
    void unitsAndDetailAreAsked() throws IOException {
        Path report = folder.resolve("si.json");

        Run.of("check", "demo/two-spans.yaml", "--units", "si", "--detail", "full", "--report", "json:" + report);

        JsonNode post = JSON.readTree(report.toFile())
                .get(0)
                .get("result")
                .get("situations")
                .get(0)
                .get("posts")
                .get(1);
        assertThat(post.get("greatest").get("unit").asText()).isEqualTo("kN");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "check",
                "check demo --units metric",
                "check demo --report xml:x",
                "check demo --report json:",
                "check demo --report json --report ndjson",
                "check demo --detail much",
                "check demo --text loud",
                "check demo --fail-on adequate",
                "check demo --workers -1",
                "check demo --workers many",
                "check demo --exclude [z-a]x",
                "check demo --stdin-as xml",
                "check demo --sarif-most 0",
                "check demo --ignore-file a/b",
                "check demo --unknown",
                "serve --port 70000",
                "serve --port many",
                "health --url ftp://127.0.0.1",
                "explain",
                "nothing",
                "''",
            })
    void wrongUseIsTwoAndSaysWhy(String line) {
        Run run = Run.of(line.isEmpty() ? new String[0] : line.split(" "));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .as("no stack")
                .doesNotContain("\tat ")
                .containsAnyOf("Usage: underprop", "Unknown option: '--unknown'", "Did you mean: underprop");
    }

    @Test
    void awkwardFilesAreFaultsAndNotCrashes() throws IOException, InterruptedException {
        Files.write(folder.resolve("huge.yaml"), new byte[(1 << 20) + 1]);
        Files.createFile(folder.resolve("empty.json"));
        Files.write(folder.resolve("utf16.json"), new byte[] {(byte) 0xFE, (byte) 0xFF, 0, '{', 0, '}'});
        Files.createSymbolicLink(folder.resolve("dangling.yaml"), Path.of("gone.yaml"));
        assertThat(new ProcessBuilder("mkfifo", folder.resolve("pipe.yaml").toString())
                        .start()
                        .waitFor())
                .isZero();
        Path below = Files.createDirectory(folder.resolve("below"));
        Files.createSymbolicLink(below.resolve("loop"), folder);
        Files.writeString(below.resolve("GOOD.YAML"), Demos.text("two-spans.yaml"));
        Files.writeString(folder.resolve("notes.txt"), "not a plan");

        Run run = Run.in(folder, "check", ".");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("./huge.yaml")
                .contains("(document-too-large)")
                .contains("(document-empty)")
                .contains("(encoding-not-utf8)")
                .contains("./dangling.yaml  (path-missing)")
                .contains("./below/loop  (folder-loop)")
                .contains("./pipe.yaml  (file-kind)")
                .contains("two-spans  Two equal spans  (./below/GOOD.YAML)")
                .doesNotContain("notes.txt")
                .contains("7 plans: 1 incomplete, 6 not judged.");
    }

    @Test
    void unreadableFileIsNamed() {
        Run run = Run.of("check", "demo/gone.yaml");

        assertThat(run.out()).contains("demo/gone.yaml  (path-missing)").contains("There is no such file or folder.");
    }

    @Test
    void theSamePathTwiceIsOnePlan() {
        assertThat(Run.of("check", "demo/two-spans.yaml", "demo/two-spans.yaml").out())
                .contains("1 plan: 1 incomplete.");
    }

    private static List<String> texts(JsonNode records, String member) {
        List<String> texts = new ArrayList<>();
        records.forEach(record -> texts.add(record.get(member).asText()));
        return texts;
    }
}
