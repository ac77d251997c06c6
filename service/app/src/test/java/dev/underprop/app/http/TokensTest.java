package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a file of tokens says now is what counts. */
class TokensTest {
    private static final String OURS = TokenLine.newToken();
    private static final String OTHER = TokenLine.newToken();

    private final Path file = TokenFiles.file(OURS);

    /** Files change within a tick of the clock here; people are slower. */
    private void change(String... lines) throws IOException {
        FileTime before = Files.getLastModifiedTime(file);
        TokenFiles.write(file, lines);
        Files.setLastModifiedTime(file, FileTime.fromMillis(before.toMillis() + 2000));
    }

    @Test
    void knowsWhoseATokenIs() throws IOException {
        Tokens tokens = new Tokens(file);

        assertThat(tokens.owner(OURS)).contains("office");
        assertThat(tokens.owner(OTHER)).isEmpty();
        assertThat(tokens.owner(OURS.substring(1))).isEmpty();
        assertThat(tokens.owner("")).isEmpty();
    }

    @Test
    void tokensAreTakenInAndOutWhileItRuns() throws IOException {
        Tokens tokens = new Tokens(file);

        change(TokenLine.of("office", OURS).text(), TokenLine.of("site", OTHER).text());
        assertThat(tokens.owner(OURS)).contains("office");
        assertThat(tokens.owner(OTHER)).contains("site");

        change(TokenLine.of("site", OTHER).text());
        assertThat(tokens.owner(OURS)).isEmpty();
        assertThat(tokens.owner(OTHER)).contains("site");
    }

    @Test
    void whatCannotBeReadLetsNobodyInUntilItIsMended() throws IOException {
        Tokens tokens = new Tokens(file);

        change(TokenLine.of("office", OURS).text(), "half a li");
        assertThat(tokens.owner(OURS)).isEmpty();

        change(TokenLine.of("office", OURS).text());
        assertThat(tokens.owner(OURS)).contains("office");

        Files.delete(file);
        assertThat(tokens.owner(OURS)).isEmpty();
    }

    @Test
    void fileThatOthersCanWriteLetsNobodyIn() throws IOException {
        Tokens tokens = new Tokens(file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        change(TokenLine.of("office", OURS).text());
        assertThat(tokens.owner(OURS)).isEmpty();

        assertThatThrownBy(() -> new Tokens(file))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("can be written by others");
        assertThat(Optional.of(file)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "office",
                "office sha256:12",
                "two words sha256:0000000000000000000000000000000000000000000000000000000000000000",
                "office md5:0000000000000000000000000000000000000000000000000000000000000000",
                "office sha256:0000000000000000000000000000000000000000000000000000000000000000 x",
                "\u00fcro sha256:0000000000000000000000000000000000000000000000000000000000000000"
            })
    void lineThatIsNoneIsToldByItsNumberAndNotByWhatItHolds(String line) {
        TokenFiles.write(file, "# first", line);

        assertThatThrownBy(() -> new Tokens(file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("line 2")
                .hasMessageNotContaining("000000");
    }

    @Test
    void fileWithoutATokenIsRefused() {
        TokenFiles.write(file, "# nobody", "");

        assertThatThrownBy(() -> new Tokens(file)).hasMessageContaining("has no token");
    }

    @Test
    void tokensAreOfAKindThatNobodyGuesses() {
        assertThat(OURS).matches("underprop_[A-Za-z0-9_-]{43}").isNotEqualTo(OTHER);
        assertThat(TokenLine.of("office", "abc").text())
                .isEqualTo("office sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
