package dev.underprop.app.batch;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Format;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * A path that was asked for or found: a plan to be read, or what is wrong with the path.
 *
 * @param name the path as given, with forward slashes
 * @param path where it is
 * @param faults why it is not a plan to be read; none when it is one
 */
record PlanFile(String name, Path path, List<Fault> faults) {

    PlanFile {
        faults = List.copyOf(faults);
    }

    static PlanFile at(Path path) {
        return new PlanFile(name(path), path, List.of());
    }

    static PlanFile wrong(Path path, Fault fault) {
        return new PlanFile(name(path), path, List.of(fault));
    }

    /** True when the name of a file says that it is a plan. */
    static boolean named(Path path) {
        String name = lowerName(path);
        return name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
    }

    Format format() {
        return lowerName(path).endsWith(".json") ? Format.JSON : Format.YAML;
    }

    private static String name(Path path) {
        return path.toString().replace(path.getFileSystem().getSeparator(), "/");
    }

    private static String lowerName(Path path) {
        Path last = path.getFileName();
        return last == null ? "" : last.toString().toLowerCase(Locale.ROOT);
    }
}
