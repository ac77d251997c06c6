package dev.underprop.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a job is told to do, and what it refuses before anything is written. */
class JobTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void settingsAreRead() {
        JobSettings settings =
                JobSettings.of("--detail", "brief", "--units", "si", "--piece", "500", "--out", "o", "one", "two");

        assertThat(settings).isEqualTo(new JobSettings(List.of("one", "two"), "o", "brief", "si", 500));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "one",
                "--out o",
                "--out o --detail much one",
                "--out o --units feet one",
                "--out o --piece x one",
                "--out o --piece 0 one",
                "--out o --fast yes one"
            })
    void settingsThatMakeNoSenseAreRefused(String line) {
        assertThatThrownBy(() -> JobSettings.of(line.split(" ")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Usage: ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plans.zip", "plans.tar.gz", ".underpropignore"})
    void whatOneMachineWouldReadAndThisDoesNotIsRefused(String name) throws IOException {
        Plans.write(folder, "a.json", Plans.json("a", 20));
        Plans.write(folder, name, "x");

        assertThatThrownBy(() -> Listing.of(List.of(folder.toString()), new Configuration()))
                .isInstanceOf(JobRefused.class)
                .hasMessageContaining(name);
    }

    @Test
    void nothingToBeReadIsRefused() throws IOException {
        Plans.write(folder, "empty/notes.txt", "x");

        for (String path : List.of("empty", "empty/notes.txt", "gone")) {
            assertThatThrownBy(() -> Listing.of(List.of(folder.resolve(path).toString()), new Configuration()))
                    .isInstanceOf(JobRefused.class);
        }
    }

    @Test
    void recordsOfTwoRunsAreNotMixed() throws IOException {
        Files.createDirectories(folder.resolve("out"));

        assertThatThrownBy(() -> Parts.begin(folder.resolve("out").toString(), new Configuration()))
                .isInstanceOf(JobRefused.class);
    }

    @Test
    void engineIsBuiltOnceForAllTasksOfAMachine() {
        assertThat(Engine.door()).isSameAs(Engine.door());
    }
}
