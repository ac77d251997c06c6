package dev.underprop.app.source;

import dev.underprop.wire.tree.Format;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a file holds, by its name alone. */
enum FileKind {
    JSON,
    YAML,
    LINES,
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
            Map.entry(".ndjson", LINES),
            Map.entry(".jsonl", LINES),
            Map.entry(".json", JSON),
            Map.entry(".yaml", YAML),
            Map.entry(".yml", YAML));

    static FileKind of(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return ENDINGS.stream()
                .filter(ending -> lower.endsWith(ending.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(OTHER);
    }

    boolean archive() {
        return this == ZIP || this == TAR || this == TAR_GZ;
    }

    /** How a plan is written; lines are JSON each. */
    Format format() {
        return this == YAML ? Format.YAML : Format.JSON;
    }
}
