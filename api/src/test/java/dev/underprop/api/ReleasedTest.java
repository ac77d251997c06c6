package dev.underprop.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.openapitools.openapidiff.core.OpenApiCompare;
import org.openapitools.openapidiff.core.model.ChangedOpenApi;

/**
 * What was released still holds: a change that breaks clients moves the major version, while that is 0 the minor one. A release
 * puts its contract into {@code src/released} as {@code openapi-VERSION.yaml}.
 */
class ReleasedTest {
    private static final Path RELEASED = Path.of("src/released");
    private static final String PREFIX = "openapi-";
    private static final String SUFFIX = ".yaml";

    private final Contract contract = new Contract();

    static List<String> versions() throws IOException {
        try (Stream<Path> files = Files.list(RELEASED)) {
            return files.map(file -> file.getFileName().toString())
                    .map(name -> name.substring(PREFIX.length(), name.length() - SUFFIX.length()))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("versions")
    void clientsOfAReleaseAreNotBroken(String version) throws IOException {
        String now = contract.tree().at("/info/version").asText();
        ChangedOpenApi change = change(released(version), contract.text());

        System.out.println("contract " + version + " to " + now + ": " + change.isChanged());
        assertThat(change.isCompatible() || mayBreak(version, now))
                .as(
                        "new %s, gone %s, changed %s",
                        change.getNewEndpoints(), change.getMissingEndpoints(), change.getChangedOperations())
                .isTrue();
    }

    /** The comparison sees what breaks clients, so that its silence means something. */
    @Test
    void whatBreaksIsSeen() throws IOException {
        String version = versions().get(0);
        String before = released(version);

        assertThat(change(before, before).isCompatible()).isTrue();
        assertThat(change(before, once(before, "  /v1/plan-checks:\n", "  /v1/plan-verdicts:\n"))
                        .isCompatible())
                .as("an operation is gone")
                .isFalse();
        assertThat(change(
                                before,
                                once(
                                        before,
                                        "      required: [basis, floor, shores, situations]\n",
                                        "      required: [basis, floor, shores, situations, title]\n"))
                        .isCompatible())
                .as("a request must say more")
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "0.1.0, 0.1.9, false",
        "0.1.0, 0.2.0, true",
        "0.9.0, 1.0.0, true",
        "1.2.0, 1.9.0, false",
        "1.2.0, 2.0.0, true"
    })
    void breakingGoesByTheVersion(String before, String now, boolean may) {
        assertThat(mayBreak(before, now)).isEqualTo(may);
    }

    private static boolean mayBreak(String before, String now) {
        String[] one = before.split("\\.");
        String[] other = now.split("\\.");
        return !one[0].equals(other[0]) || (one[0].equals("0") && !one[1].equals(other[1]));
    }

    private static ChangedOpenApi change(String before, String now) {
        return OpenApiCompare.fromContents(before, now);
    }

    private static String released(String version) throws IOException {
        return Files.readString(RELEASED.resolve(PREFIX + version + SUFFIX));
    }

    private static String once(String text, String passage, String other) {
        assertThat(text.split(java.util.regex.Pattern.quote(passage), -1)).hasSize(2);
        return text.replace(passage, other);
    }
}
