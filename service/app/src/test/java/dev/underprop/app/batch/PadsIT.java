package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code pads} of the real jar: exit status, outputs, report. */
class PadsIT {
    private static final String REQUEST = "requests/pads-wanted.yaml";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void tellsWhatWillDoUnderEachPost() {
        Run run = Run.of("pads", REQUEST);

        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .startsWith(REQUEST + "\nADEQUATE\n")
                .contains(
                        "Post K1  ADEQUATE",
                        "Post K3  ADEQUATE",
                        "By hand: ",
                        "One size up: ",
                        "In the plan: {\"name\":")
                .contains("What to bring")
                .endsWith("Not checked is never a pass.\n");
    }

    @Test
    void theReportIsTheAnswer() throws IOException {
        Path report = folder.resolve("pads.json");

        Run run = Run.of("pads", REQUEST, "--units", "si", "--report", "json:" + report);

        assertThat(run.status()).isZero();
        JsonNode record =
                new ObjectMapper().readTree(Files.readAllBytes(report)).get(0);
        assertThat(record.at("/path").asText()).isEqualTo(REQUEST);
        assertThat(record.at("/result/document").asText()).isEqualTo("pad-sizing");
        assertThat(record.at("/result/posts/0/load/unit").asText()).isEqualTo("kN");
    }

    @Test
    void peatIsOneAndNonsenseIsTwo() throws IOException {
        String text = Files.readString(Path.of(REQUEST), StandardCharsets.UTF_8);
        Path peat = write("peat.yaml", text.replace("condition: undisturbed", "condition: peat"));
        Path steep = write("deep.yaml", text.replace("foundingDepth: 12 in", "foundingDepth: -12 in"));

        assertThat(Run.of("pads", peat.toString()).status()).isEqualTo(1);
        Run refused = Run.of("pads", steep.toString());
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).contains("/ground/foundingDepth  (negative)");
        assertThat(Run.of("pads", "nothing.yaml").status()).isEqualTo(2);
        assertThat(Run.of("pads").status()).isEqualTo(2);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }
}
