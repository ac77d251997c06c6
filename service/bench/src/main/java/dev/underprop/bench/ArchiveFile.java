package dev.underprop.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes an archive, a plan a line: {@code java -cp benchmarks.jar dev.underprop.bench.ArchiveFile FILE PLANS}. */
public final class ArchiveFile {
    private ArchiveFile() {}

    /**
     * Writes one.
     *
     * @param args file, number of plans
     */
    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), Integer.parseInt(args[1]));
    }

    static void write(Path file, int plans) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            for (int i = 0; i < plans; i++) {
                out.write(ArchivePlans.json(i));
                out.write('\n');
            }
        }
    }
}
