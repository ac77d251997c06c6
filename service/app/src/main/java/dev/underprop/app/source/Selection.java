package dev.underprop.app.source;

import java.util.ArrayList;
import java.util.List;

/**
 * Which files below a folder or in an archive are taken. What is named on the command line itself is always taken.
 *
 * @param includes patterns of which one must match; none takes all
 * @param excludes patterns of which none may match
 * @param ignoreFile name of the file in a folder that lists what is left out below it
 */
public record Selection(List<String> includes, List<String> excludes, String ignoreFile) {
    /** The usual name of the file that lists what is left out. */
    public static final String IGNORE_FILE = ".underpropignore";

    /** Takes everything that is named as a plan. */
    public static final Selection ALL = new Selection(List.of(), List.of(), IGNORE_FILE);

    public Selection {
        includes = List.copyOf(includes);
        excludes = List.copyOf(excludes);
    }

    /**
     * Reads the patterns, to see that all can be read.
     *
     * @throws IllegalArgumentException when one cannot
     */
    public void check() {
        rules();
    }

    Rules rules() {
        return new Rules(globs(includes), globs(excludes));
    }

    private static List<Glob> globs(List<String> texts) {
        return texts.stream().map(Glob::of).toList();
    }

    /**
     * The patterns, read.
     *
     * @param includes one must match, unless there are none
     * @param excludes none may match
     */
    record Rules(List<Glob> includes, List<Glob> excludes) {

        /** True when a file is taken, by its path below the folder or in the archive. */
        boolean take(String path) {
            boolean included = includes.isEmpty() || includes.stream().anyMatch(glob -> glob.matches(path));
            return included && enter(path);
        }

        /** True when a folder may hold files that are taken. */
        boolean enter(String path) {
            return excludes.stream().noneMatch(glob -> glob.matches(path));
        }
    }

    /** Lines of a file that lists what is left out; a line that begins with an exclamation mark takes back in. */
    static final class Ignored {
        private record Line(Glob glob, boolean back) {}

        static final Ignored NOTHING = new Ignored(List.of());

        private final List<Line> lines;

        private Ignored(List<Line> lines) {
            this.lines = lines;
        }

        static Ignored read(List<String> text) {
            List<Line> lines = new ArrayList<>();
            for (String raw : text) {
                String line = raw.strip();
                boolean back = line.startsWith("!");
                if (!line.isEmpty() && !line.startsWith("#")) {
                    lines.add(new Line(Glob.of(back ? line.substring(1) : line), back));
                }
            }
            return new Ignored(lines);
        }

        /** True when a path below the folder of the file is left out; the last line that matches decides. */
        boolean leavesOut(String path) {
            boolean out = false;
            for (Line line : lines) {
                if (line.glob().matches(path)) {
                    out = !line.back();
                }
            }
            return out;
        }
    }
}
