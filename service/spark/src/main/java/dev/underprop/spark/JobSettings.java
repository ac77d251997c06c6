package dev.underprop.spark;

import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.AnswerOptions.Detail;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.record.Extent;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * How an archive is checked.
 *
 * @param paths files and folders
 * @param out folder for the records; must not be there yet
 * @param detail {@code brief}, {@code compact} or {@code full}
 * @param units {@code us} or {@code si}
 * @param piece bytes of the archive that one task goes through, nearly
 */
record JobSettings(List<String> paths, String out, String detail, String units, long piece) implements Serializable {
    private static final long USUAL_PIECE = 32L << 20;
    private static final String USAGE =
            "Usage: [--detail brief|compact|full] [--units us|si] [--piece BYTES] --out FOLDER PATH...";

    JobSettings {
        paths = List.copyOf(paths);
        if (paths.isEmpty() || out.isEmpty() || piece < 1) {
            throw new IllegalArgumentException(USAGE);
        }
        check(detail, "brief", "compact", "full");
        check(units, "us", "si");
    }

    private static void check(String given, String... known) {
        if (!List.of(known).contains(given)) {
            throw new IllegalArgumentException("There is no " + given + ". " + USAGE);
        }
    }

    /** The usual records of some paths. */
    static JobSettings of(String... args) {
        List<String> paths = new ArrayList<>();
        String out = "";
        String detail = "compact";
        String units = "us";
        long piece = USUAL_PIECE;
        for (int i = 0; i < args.length; i++) {
            String arg = args[i];
            if (!arg.startsWith("--")) {
                paths.add(arg);
                continue;
            }
            i++;
            String value = i < args.length ? args[i] : "";
            switch (arg) {
                case "--out" -> out = value;
                case "--detail" -> detail = value;
                case "--units" -> units = value;
                case "--piece" -> piece = number(value);
                default -> throw new IllegalArgumentException("There is no option " + arg + ". " + USAGE);
            }
        }
        return new JobSettings(paths, out, detail, units, piece);
    }

    private static long number(String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("--piece is a number of bytes, not " + text + ". " + USAGE, e);
        }
    }

    /** How answers are written. */
    AnswerOptions answers() {
        Detail asked = switch (detail) {
            case "brief" -> Detail.BRIEF;
            case "full" -> Detail.FULL;
            default -> Detail.COMPACT;
        };
        return new AnswerOptions(units.equals("si") ? UnitSystem.SI : UnitSystem.US, asked);
    }

    /** How much records tell. */
    Extent extent() {
        return detail.equals("brief") ? Extent.BRIEF : Extent.WHOLE;
    }
}
