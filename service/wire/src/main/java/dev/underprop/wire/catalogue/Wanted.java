package dev.underprop.wire.catalogue;

import java.util.Locale;

/**
 * Which entries of a part are wanted.
 *
 * @param words words that an entry must hold as they stand, one after the other; empty for any entry
 * @param table table that an entry must belong to; empty for any
 * @param limit entries to a page, 1 to {@link #MOST}
 * @param offset entries to pass over, not negative
 */
public record Wanted(String words, String table, int limit, int offset) {

    /** The most entries to a page. */
    public static final int MOST = 200;

    /** The entries to a page when nothing is said. */
    public static final int USUAL = 50;

    /** The most entries that can be passed over. */
    public static final int FARTHEST = 1_000_000;

    public Wanted {
        if (limit < 1 || limit > MOST || offset < 0 || offset > FARTHEST) {
            throw new IllegalArgumentException("limit " + limit + ", offset " + offset);
        }
    }

    /** The words as they are looked for: lower case, one blank between two. */
    String phrase() {
        return words.strip().toLowerCase(Locale.ROOT).replaceAll("[ \t]+", " ");
    }
}
