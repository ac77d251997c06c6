package dev.underprop.wire.lines;

import dev.underprop.wire.tree.Format;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a file holds, by its name alone. */
public enum FileKind {
    JSON,
    YAML,
    LINES,
    LINES_GZ,
    ZIP,
    TAR,
    TAR_GZ,
    OTHER;

    /** Longer endings before the shorter ones that they hold. */
    private static final List<Map.Entry<String, FileKind>> ENDINGS = List.of(
            Map.entry(".tar.gz", TAR_GZ),
            Map.entry(".tgz", TAR_GZ),
            Map.entry(".tar", TAR),
            Map.entry(".zip", ZIP),
            Map.entry(".ndjson.gz", LINES_GZ),
            Map.entry(".jsonl.gz", LINES_GZ),
            Map.entry(".ndjson", LINES),
            Map.entry(".jsonl", LINES),
            Map.entry(".json", JSON),
            Map.entry(".yaml", YAML),
            Map.entry(".yml", YAML));

    /** The kind that a name ends as. */
    public static FileKind of(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return ENDINGS.stream()
                .filter(ending -> lower.endsWith(ending.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(OTHER);
    }

    /** True when it holds files. */
    public boolean archive() {
        return this == ZIP || this == TAR || this == TAR_GZ;
    }

    /** True when it holds a plan a line. */
    public boolean lines() {
        return this == LINES || this == LINES_GZ;
    }

    /** How a plan is written; lines are JSON each. */
    public Format format() {
        return this == YAML ? Format.YAML : Format.JSON;
    }
}
