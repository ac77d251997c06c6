package dev.underprop.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo plans as they stand in the sources. */
public final class Demos {
    /** The folder, relative to the module. */
    public static final Path FOLDER = Path.of("demo");

    private Demos() {}

    /** The names of the plans that can be judged, in order. */
    public static List<String> valid() {
        return names().filter(name -> !name.startsWith("invalid-")).toList();
    }

    /** The names of the plans that cannot. */
    public static List<String> invalid() {
        return names().filter(name -> name.startsWith("invalid-")).toList();
    }

    /** The text of a plan. */
    public static String text(String name) {
        try {
            return Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
