package dev.underprop.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records of many tasks against those of the runnable jar on one machine: the same bytes, however the archive is cut. */
class ArchiveIT {
    private static final Path JAR = Path.of("..", "app", "target", "underprop.jar");

    @TempDir
    private static Path folder = Path.of("");

    private static List<JavaSparkContext> sparks = new ArrayList<>();

    @BeforeAll
    static void start() throws IOException {
        Plans.archive(folder.resolve("archive"));
        sparks.add(LocalSpark.start());
    }

    @AfterAll
    static void stop() {
        sparks.forEach(JavaSparkContext::close);
    }

    @ParameterizedTest
    @CsvSource({"2500, brief, us", "4099, compact, us", "30000, full, si", "100000000, brief, us"})
    void recordsAreThoseOfOneMachine(long piece, String detail, String units) throws IOException, InterruptedException {
        String archive = folder.resolve("archive").toString();
        Path alone = folder.resolve("alone-" + piece);
        check(alone, detail, units, archive);
        Path out = folder.resolve("parts-" + piece);

        String summary = new Archive(
                        sparks.get(0), new JobSettings(List.of(archive), out.toString(), detail, units, piece))
                .check();

        assertThat(LocalSpark.records(out)).isEqualTo(Files.readAllBytes(alone));
        assertThat(LocalSpark.parts(out)).hasSizeGreaterThanOrEqualTo(piece == 2500 ? 80 : 2);
        assertThat(out).isDirectoryContaining("glob:**_SUCCESS").isDirectoryNotContaining("glob:**_part-*");
        String records = Files.readString(alone);
        assertThat(records).contains("id-repeated", "archive-broken", "encoding-not-utf8", "lines-empty", "too-large");
        assertThat(summary.replaceAll("\\s", "")).isNotEmpty();
        assertThat(records.strip().replaceAll("\\s", ""))
                .endsWith("{\"summary\":" + summary.replaceAll("\\s", "") + ",\"complete\":true}");
    }

    @Test
    void filesThatAreNamedComeFirstAndOnce() throws IOException, InterruptedException {
        String archive = folder.resolve("archive/a").toString();
        String named = folder.resolve("archive/a/second.jsonl").toString();
        Path alone = folder.resolve("alone-named");
        check(alone, "brief", "us", named, archive + "/", named);
        Path out = folder.resolve("parts-named");

        new Archive(
                        sparks.get(0),
                        new JobSettings(List.of(named, archive + "/", named), out.toString(), "brief", "us", 9000))
                .check();

        assertThat(LocalSpark.records(out)).isEqualTo(Files.readAllBytes(alone));
    }

    private static void check(Path out, String detail, String units, String... paths)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                JAR.toString(),
                "check",
                "--text",
                "sum",
                "--detail",
                detail,
                "--units",
                units,
                "--report",
                "ndjson:" + out));
        command.addAll(List.of(paths));
        Path said = folder.resolve("said");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue())
                .as(Files.readString(said, StandardCharsets.UTF_8))
                .isEqualTo(2);
    }
}
