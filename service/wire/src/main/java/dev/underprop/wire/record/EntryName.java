package dev.underprop.wire.record;

/**
 * Where a plan stands in the input.
 *
 * @param path the file as given, with forward slashes; inside an archive {@code archive!entry}
 * @param line line of a file that holds a plan a line, 1-based; 0 when the file is one plan
 */
public record EntryName(String path, int line) {

    /** A whole file. */
    public static EntryName file(String path) {
        return new EntryName(path, 0);
    }

    /** The key of a plan without an id: {@code path!entry#line}. */
    public String key() {
        return line == 0 ? path : path + "#" + line;
    }
}
