package dev.underprop.app.batch;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveOutputStream;
import org.apache.commons.compress.archivers.tar.TarConstants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder with every kind of bad file among good ones: each is told, and nothing else is lost. */
class HostileIT {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int ZEROS = 200 << 20;

    @TempDir
    private Path folder = Path.of("");

    /** Code of the fault that each bad place must be told with. */
    private final Map<String, String> bad = new LinkedHashMap<>();

    @Test
    void everyBadFileIsToldAndNothingElseIsLost() throws IOException, InterruptedException {
        badFiles();
        badLinks();
        badLines();
        badArchives();
        good("good-first.yaml", "first");
        good("zz/good-last.json5.yaml", "last");

        Run run = Run.in(folder, "check", ".", "--report", "ndjson", "--detail", "brief");

        assertThat(run.status()).as(run.err()).isEqualTo(2);
        Map<String, String> told = new LinkedHashMap<>();
        List<String> judged = new ArrayList<>();
        for (String line : run.out().lines().toList()) {
            JsonNode record = JSON.readTree(line);
            if (record.has("brief")) {
                judged.add(record.get("id").asText());
            } else if (record.has("problem")) {
                JsonNode error = record.at("/problem/errors/0");
                assertThat(error.path("detail").asText()).endsWith(".");
                assertThat(error.path("remedy").asText()).as(line).isNotEmpty();
                told.put(place(record), error.get("code").asText());
            }
        }
        assertThat(told).containsExactlyInAnyOrderEntriesOf(bad);
        assertThat(bad).hasSizeGreaterThanOrEqualTo(20);
        assertThat(judged)
                .containsExactly(
                        "in bomb",
                        "in broken",
                        "in nested",
                        "in slip",
                        "in tar",
                        "first",
                        "in torn",
                        "in lines",
                        "marked",
                        "last");
        assertThat(run.err()).contains(bad.size() + " not judged").doesNotContain("defect of the program");
        assertThat(folder.resolve("../evil.yaml")).doesNotExist();
    }

    private static String place(JsonNode record) {
        String path = record.get("path").asText().substring(2);
        return record.has("line") ? path + "#" + record.get("line").asText() : path;
    }

    private void badFiles() throws IOException {
        bad("empty.yaml", "document-empty", new byte[0]);
        bad("huge.json", "document-too-large", "[".repeat((1 << 20) + 1).getBytes(UTF_8));
        bad("utf32.json", "encoding-not-utf8", "{\"id\":1}".getBytes(Charset.forName("UTF-32BE")));
        bad("nul.json", "trailing-content", "{\"id\":\"x\"}\0".getBytes(UTF_8));
        bad("infinite.json", "number-not-finite", "{\"id\":NaN}".getBytes(UTF_8));
        bad("utf16.yaml", "encoding-not-utf8", Demos.text("bare.yaml").getBytes(StandardCharsets.UTF_16));
        bad("latin1.yaml", "encoding-not-utf8", "title: Caf\u00e9\n".getBytes(ISO_8859_1));
        bad("binary.json", "encoding-not-utf8", new byte[] {'"', 0, 1, 2, '"'});
        bad("deep.json", "depth-exceeded", ("[".repeat(60) + "]".repeat(60)).getBytes(UTF_8));
        bad("aliases.yaml", "yaml-anchor", aliasBomb().getBytes(UTF_8));
        bad("twice.json", "duplicate-key", "{\"id\":\"a\",\"id\":\"b\"}".getBytes(UTF_8));
        bad("two-documents.yaml", "yaml-several-documents", "a: 1\n---\nb: 2\n".getBytes(UTF_8));
        bad("syntax.yaml", "syntax", "floor: [1, 2\n".getBytes(UTF_8));
        bad("list.yaml", "wrong-kind", "- 1\n".getBytes(UTF_8));
        bad("faulty.yaml", "unknown-member", "id: x\nflor: {}\n".getBytes(UTF_8));
        bad(
                "repeated.yaml",
                "id-repeated",
                Demos.text("bare.yaml")
                        .replaceFirst("basis", "id: first\nbasis")
                        .getBytes(UTF_8));
        bad(".underpropignore", "ignore-file", new byte[] {(byte) 0xC3, (byte) 0x28, '\n'});
        write("mark.yaml", ("\uFEFFid: marked\n" + Demos.text("bare.yaml")).getBytes(UTF_8));
        write("notes.txt", "not a plan".getBytes(UTF_8));
    }

    private void badLinks() throws IOException, InterruptedException {
        Files.createSymbolicLink(folder.resolve("dangling.yaml"), Path.of("gone.yaml"));
        bad.put("dangling.yaml", "path-missing");
        Files.createDirectory(folder.resolve("below"));
        Files.createSymbolicLink(folder.resolve("below/loop"), folder);
        bad.put("below/loop", "folder-loop");
        assertThat(new ProcessBuilder("mkfifo", folder.resolve("pipe.yaml").toString())
                        .start()
                        .waitFor())
                .isZero();
        bad.put("pipe.yaml", "file-kind");
        Files.createSymbolicLink(folder.resolve("device.yaml"), Path.of("/dev/zero"));
        bad.put("device.yaml", "file-kind");
        Files.createSymbolicLink(folder.resolve("itself.yaml"), Path.of("itself.yaml"));
        bad.put("itself.yaml", "path-unreadable");
    }

    private void badLines() throws IOException {
        write("lines.ndjson", ("{\n\n" + SmallPlans.json("in lines") + "\r\n{\"x\":1}\n").getBytes(UTF_8));
        bad.put("lines.ndjson#1", "syntax");
        bad.put("lines.ndjson#4", "unknown-member");
        bad("lines-empty.ndjson", "lines-empty", "\n\n".getBytes(UTF_8));
        write("lines-torn.ndjson.gz", torn());
        bad.put("lines-torn.ndjson.gz#2", "archive-broken");
        write("lines-bomb.jsonl.gz", gzip(new byte[ZEROS]));
        bad.put("lines-bomb.jsonl.gz#1", "archive-bomb");
        write("lines-no-gzip.ndjson.gz", "{}".getBytes(UTF_8));
        bad.put("lines-no-gzip.ndjson.gz#1", "archive-broken");
        bad("lines-utf16.jsonl", "encoding-not-utf8", "{}\n".getBytes(StandardCharsets.UTF_16));
    }

    private void badArchives() throws IOException {
        zip("a-bomb.zip", Map.of("a.json", SmallPlans.json("in bomb").getBytes(UTF_8), "b.yaml", new byte[ZEROS]));
        bad.put("a-bomb.zip!b.yaml", "archive-bomb");
        byte[] whole = zipped(ordered("a.json", SmallPlans.json("in broken").getBytes(UTF_8), "b.yaml", noise()));
        write("b-broken.zip", Arrays.copyOf(whole, whole.length / 2));
        bad.put("b-broken.zip!b.yaml", "archive-broken");
        zip(
                "c-nested.zip",
                ordered("a.json", SmallPlans.json("in nested").getBytes(UTF_8), "b.zip", new byte[] {'P', 'K'}));
        bad.put("c-nested.zip!b.zip", "archive-nested");
        zip(
                "d-slip.zip",
                ordered(
                        "../evil.yaml",
                        "id: evil".getBytes(UTF_8),
                        "a.json",
                        SmallPlans.json("in slip").getBytes(UTF_8)));
        bad.put("d-slip.zip!../evil.yaml", "archive-entry-name");
        write("e.tar.gz", tar());
        bad.put("e.tar.gz!link.yaml", "archive-entry-kind");
        zip("d-upwards.zip", Map.of("a/..\\..\\evil.yaml", new byte[] {'x'}));
        bad.put("d-upwards.zip!a/..\\..\\evil.yaml", "archive-entry-name");
        zip("d-whole.zip", Map.of("/etc/evil.yaml", new byte[] {'x'}));
        bad.put("d-whole.zip!/etc/evil.yaml", "archive-entry-name");
        bad("f-empty.zip", "archive-empty", zipped(Map.of("readme.txt", new byte[] {'x'})));
        bad("g-no-archive.tar.gz", "archive-broken", "not packed at all".getBytes(UTF_8));
    }

    private void bad(String name, String code, byte[] bytes) throws IOException {
        write(name, bytes);
        bad.put(name, code);
    }

    private void good(String name, String id) throws IOException {
        Files.createDirectories(folder.resolve(name).resolveSibling("."));
        write(name, ("id: " + id + "\n" + Demos.text("bare.yaml")).getBytes(UTF_8));
    }

    private void write(String name, byte[] bytes) throws IOException {
        Files.write(folder.resolve(name), bytes);
    }

    private static byte[] gzip(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return out.toByteArray();
    }

    /** One whole line, and the beginning of noise that cannot be unpacked. */
    private static byte[] torn() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out, 512, true)) {
            gzip.write((SmallPlans.json("in torn") + "\n").getBytes(UTF_8));
            gzip.flush();
            int whole = out.size();
            gzip.write(noise());
            gzip.finish();
            return Arrays.copyOf(out.toByteArray(), whole + 20);
        }
    }

    private static String aliasBomb() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            text.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [*a")
                    .append(i - 1)
                    .append(", *a")
                    .append(i - 1)
                    .append("]\n");
        }
        return text.toString();
    }

    private static byte[] noise() {
        byte[] bytes = new byte[4000];
        new Random(7).nextBytes(bytes);
        return bytes;
    }

    private static Map<String, byte[]> ordered(String first, byte[] one, String second, byte[] other) {
        Map<String, byte[]> map = new LinkedHashMap<>();
        map.put(first, one);
        map.put(second, other);
        return map;
    }

    private void zip(String name, Map<String, byte[]> entries) throws IOException {
        write(name, zipped(new TreeMap<>(entries)));
    }

    private static byte[] zipped(Map<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return out.toByteArray();
    }

    private static byte[] tar() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream gzip = new GZIPOutputStream(out);
                TarArchiveOutputStream tar = new TarArchiveOutputStream(gzip)) {
            byte[] text = SmallPlans.json("in tar").getBytes(UTF_8);
            TarArchiveEntry file = new TarArchiveEntry("jobs/a.json");
            file.setSize(text.length);
            tar.putArchiveEntry(file);
            tar.write(text);
            tar.closeArchiveEntry();
            TarArchiveEntry link = new TarArchiveEntry("link.yaml", TarConstants.LF_SYMLINK);
            link.setLinkName("/etc/hostname");
            tar.putArchiveEntry(link);
            tar.closeArchiveEntry();
        }
        return out.toByteArray();
    }
}
