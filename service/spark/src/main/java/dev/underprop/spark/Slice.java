package dev.underprop.spark;

import dev.underprop.wire.lines.FileKind;
import java.io.Serializable;

/**
 * A file, or a part of one that holds a plan a line.
 *
 * @param name the file as records name it
 * @param at where the cluster finds it
 * @param kind what it holds
 * @param from where the part begins (bytes)
 * @param to where it ends (bytes)
 * @param whole whether it is all of the file
 * @param before lines of the file that end before the part
 */
record Slice(String name, String at, FileKind kind, long from, long to, boolean whole, int before)
        implements Serializable {

    /** All of a file. */
    static Slice whole(String name, String at, FileKind kind, long length) {
        return new Slice(name, at, kind, 0, length, true, 0);
    }

    /** A part of it. */
    Slice part(long from, long to) {
        return new Slice(name, at, kind, from, to, false, 0);
    }

    /** The same part, now that the lines before it are counted. */
    Slice after(int lines) {
        return new Slice(name, at, kind, from, to, whole, lines);
    }

    /** What it weighs (bytes of text, nearly): plans shrink some ten times when they are packed. */
    long weight() {
        return kind == FileKind.LINES_GZ ? 10 * (to - from) : to - from;
    }
}
