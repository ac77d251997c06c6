package dev.underprop.spark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.GZIPOutputStream;

/** Small invented plans, and an archive that has all that an archive can have. */
final class Plans {
    private static final String MARK = "\uFEFF";

    private Plans() {}

    /**
     * A plan as JSON on one line.
     *
     * @param dead dead load of the floor (psf)
     */
    static String json(String id, int dead) {
        return """
                {"id": "%s", "basis": "us-asd", "floor": {"joists": {"size": "2x8", "species": "hem-fir", "grade": "No.2",\
                 "count": 2, "spacing": "16 in", "start": "0 in", "length": "12 ft"}, "bearings": [\
                {"name": "front", "at": "2 in", "length": "4 in", "kind": "rigid"},\
                 {"name": "rear", "at": "11 ft 10 in", "length": "4 in", "kind": "rigid"}],\
                 "loads": [{"name": "floor", "kind": "area", "dead": "%d psf"}]}, "shores": [{"name": "M", "at": "6 ft",\
                 "beam": {"size": "2x8", "plies": 3, "species": "hem-fir", "grade": "No.2", "start": "-1 ft", "length": "4 ft"},\
                 "posts": [{"name": "M1", "at": "0 in", "height": "3 ft 2 in", "rigid": true},\
                 {"name": "M2", "at": "16 in", "height": "3 ft 2 in", "rigid": true}]}],\
                 "situations": [{"name": "shored"}]}""".formatted(id, dead);
    }

    static String nameless(int dead) {
        return json("x", dead).replace("\"id\": \"x\", ", "");
    }

    /** Lines: blank ones, ends of both kinds, faulty, unreadable and nameless plans, and an id that comes again. */
    static String lines(String prefix, int count) {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < count; i++) {
            String plan = json(prefix + i, 10 + i % 60);
            lines.append(
                    switch (i % 11) {
                        case 2 -> plan.replace("12 ft", "12 kip");
                        case 4 -> plan.substring(9);
                        case 5 -> nameless(11);
                        case 7 -> json("again", 12);
                        case 9 -> "\t" + plan + "  ";
                        default -> plan;
                    });
            lines.append(i % 3 == 0 ? "\r\n" : "\n")
                    .append(i % 5 == 0 ? "\n" : "")
                    .append(i % 7 == 0 ? " \r\n" : "");
        }
        return lines.toString();
    }

    /** Lays an archive in a folder. */
    static void archive(Path folder) throws IOException {
        write(folder, "a/first.ndjson", MARK + lines("a", 60));
        write(folder, "a/second.jsonl", lines("b", 35).stripTrailing());
        write(folder, "a/c/one.yaml", "# Written by hand.\n" + json("yaml", 20));
        write(folder, "a/c/two.json", json("a3", 20));
        write(folder, "a/c/three.json", nameless(20));
        write(folder, "a/c/notes.txt", "not a plan");
        write(folder, "a/c/faulty.yml", "id: faulty\nflor: {}\n");
        bytes(folder, "b/packed.ndjson.gz", gzip(lines("c", 40)));
        byte[] whole = gzip(lines("d", 30));
        bytes(folder, "b/torn.jsonl.gz", Arrays.copyOf(whole, whole.length / 2));
        write(folder, "b/no-gzip.ndjson.gz", "plain");
        write(folder, "b/empty.ndjson", "");
        write(folder, "b/blank.ndjson", "\n \r\n\t\n".repeat(2000));
        bytes(folder, "b/utf16.ndjson", lines("e", 30).getBytes(StandardCharsets.UTF_16));
        write(
                folder,
                "b/huge.ndjson",
                json("before", 9) + "\n[" + "1,".repeat(700_000) + "\n" + json("after", 9) + "\n");
        write(folder, "b/\u00e9-\u6728.ndjson", lines("f", 20));
    }

    static void write(Path folder, String name, String text) throws IOException {
        bytes(folder, name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void bytes(Path folder, String name, byte[] bytes) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.resolveSibling("."));
        Files.write(file, bytes);
    }

    private static byte[] gzip(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
