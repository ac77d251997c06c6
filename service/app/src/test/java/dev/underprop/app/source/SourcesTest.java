package dev.underprop.app.source;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.tree.Format;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SourcesTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void folderIsTakenInOrderOfNamesWithWhatItsListsLeaveOut() throws IOException {
        write("b.yaml", "b");
        write("a/z.json", "z");
        write("a/draft.yaml", "d");
        write("a/old/x.yaml", "x");
        write("a/old/keep.yaml", "k");
        write("c/old/y.yaml", "y");
        write("c/plan.txt", "no plan");
        write(".underpropignore", "# nothing of this\n\na/old/*\n!a/old/keep.yaml\n");
        write("a/.underpropignore", "draft.*\n");

        assertThat(keys(Selection.ALL, "."))
                .containsExactly("./a/old/keep.yaml", "./a/z.json", "./b.yaml", "./c/old/y.yaml");
    }

    @Test
    void patternsTakeAndLeaveOut() throws IOException {
        write("jobs/a.yaml", "a");
        write("jobs/deep/b.yaml", "b");
        write("jobs/old/c.yaml", "c");
        write("other/d.yaml", "d");

        assertThat(keys(new Selection(List.of("jobs/**/*.yaml"), List.of("old/"), "none"), "."))
                .containsExactly("./jobs/a.yaml", "./jobs/deep/b.yaml");
    }

    @Test
    void whatIsNamedItselfIsTakenOnceAndWhateverThePatternsSay() throws IOException {
        write("a.yaml", "a");
        write("b.yaml", "b");

        assertThat(keys(new Selection(List.of(), List.of("b.yaml"), "none"), "b.yaml", ".", "b.yaml", "./b.yaml"))
                .containsExactly("b.yaml", "./a.yaml");
    }

    @Test
    void ownFilesAreNoPlans() throws IOException {
        write("a.yaml", "a");
        write("results.ndjson", "{}");

        assertThat(keys(sources(Selection.ALL, false, List.of(at("results.ndjson")), ".")))
                .containsExactly("./a.yaml");
    }

    @Test
    void placesWithoutPlansAreToldUnlessThatIsAllowed() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        write("lines.ndjson", "\n  \n");

        List<Entry> told = all(sources(Selection.ALL, false, List.of(), "empty", "lines.ndjson"));
        assertThat(told).extracting(SourcesTest::code).containsExactly("folder-empty", "lines-empty");
        assertThat(all(sources(Selection.ALL, true, List.of(), "empty", "lines.ndjson")))
                .isEmpty();
    }

    @Test
    void linesKeepTheirNumbers() throws IOException {
        write("lines.ndjson", "\uFEFF{\"a\":1}\r\n\n \t\n{\"b\":2}");

        List<Entry> entries = all(sources(Selection.ALL, false, List.of(), "lines.ndjson"));

        assertThat(entries).extracting(entry -> entry.name().key()).containsExactly("lines.ndjson#1", "lines.ndjson#4");
        assertThat(entries).extracting(SourcesTest::text).containsExactly("{\"a\":1}", "{\"b\":2}");
    }

    @Test
    void archivesHoldPlansAndLinesUnderTheSamePatterns() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (String name : List.of("z.yaml", "old/x.yaml", "many.jsonl", "read.me")) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write("{}\n{}".getBytes(UTF_8));
            }
        }
        Files.write(folder.resolve("a.zip"), bytes.toByteArray());

        assertThat(keys(new Selection(List.of(), List.of("old/"), "none"), "a.zip"))
                .containsExactly("a.zip!z.yaml", "a.zip!many.jsonl#1", "a.zip!many.jsonl#2");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "`{\"a\": 1}\\n{\"b\": 2}`, auto, 2, JSON",
                "`{\"a\": \"}\\\\\"{\"}\\n\\n{`, auto, 2, JSON",
                "`{\"a\": 1}`, auto, 1, JSON",
                "`{\\n\"a\": 1}`, auto, 1, JSON",
                "`a: 1\\nb: 2`, auto, 1, YAML",
                "``, auto, 1, YAML",
                "`{a: 1}`, yaml, 1, YAML",
                "`{\"a\": 1}`, ndjson, 1, JSON",
            })
    void standardInputIsWhatItsBeginningShows(String text, String kind, int entries, Format format) throws IOException {
        byte[] bytes = text.replace("\\n", "\n").replace("\\\\", "\\").getBytes(UTF_8);
        StandardInput input = new StandardInput(new ByteArrayInputStream(bytes), kind);

        List<Entry> found = all(new Sources(List.of("-"), Selection.ALL, false, input, List.of()));

        assertThat(found)
                .hasSize(entries)
                .allSatisfy(entry -> assertThat(((Entry.Text) entry).format()).isEqualTo(format));
        assertThat(found.get(0).name().path()).isEqualTo("-");
    }

    @ParameterizedTest
    @CsvSource({
        "*.yaml, a/b.yaml, true",
        "*.yaml, b.yml, false",
        "a/*.yaml, a/b.yaml, true",
        "a/*.yaml, a/c/b.yaml, false",
        "a/**/b.yaml, a/b.yaml, true",
        "a/**, a/c/b.yaml, true",
        "old, x/old/b.yaml, true",
        "old/, x/older/b.yaml, false",
        "/old, x/old, false",
        "b?.yaml, b1.yaml, true",
        "b[12].yaml, b3.yaml, false",
        "b[!12].yaml, b3.yaml, true",
        "b.yaml, bxyaml, false",
    })
    void globsMatchAsTheyAreDescribed(String glob, String path, boolean matches) {
        assertThat(Glob.of(glob).matches(path)).isEqualTo(matches);
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.resolveSibling("."));
        Files.writeString(file, text);
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    private List<String> keys(Selection selection, String... paths) throws IOException {
        return keys(sources(selection, false, List.of(), paths));
    }

    private List<String> keys(Sources sources) {
        String root = folder.toString() + "/";
        return all(sources).stream()
                .map(entry -> entry.name().key().replace(root, ""))
                .toList();
    }

    private Sources sources(Selection selection, boolean allowEmpty, List<String> own, String... paths) {
        List<String> all = new ArrayList<>();
        for (String path : paths) {
            all.add(folder + "/" + path);
        }
        StandardInput nothing = new StandardInput(new ByteArrayInputStream(new byte[0]), "auto");
        return new Sources(all, selection, allowEmpty, nothing, own);
    }

    private List<Entry> all(Sources sources) {
        List<Entry> all = new ArrayList<>();
        try (sources) {
            sources.forEachRemaining(all::add);
        }
        return all.stream().map(this::shortened).toList();
    }

    private Entry shortened(Entry entry) {
        EntryName name = new EntryName(
                entry.name().path().replace(folder + "/", ""), entry.name().line());
        return entry instanceof Entry.Text text
                ? new Entry.Text(name, text.format(), text.bytes())
                : new Entry.Wrong(name, ((Entry.Wrong) entry).fault());
    }

    private static String code(Entry entry) {
        return ((Entry.Wrong) entry).fault().code();
    }

    private static String text(Entry entry) {
        return new String(((Entry.Text) entry).bytes(), UTF_8);
    }
}
