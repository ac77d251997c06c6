package dev.underprop.wire.tree;

/**
 * How large a document may be.
 *
 * @param bytes greatest size (bytes)
 * @param values greatest number of objects, lists and single values; bounds memory, which a document of many short ones takes most of
 * @param depth greatest number of objects and lists inside one another
 * @param textLength greatest length of a text or a name (UTF-16 units)
 * @param numberLength greatest length of a number as written (characters)
 * @param faults greatest number of faults listed
 */
public record Limits(int bytes, int values, int depth, int textLength, int numberLength, int faults) {
    /** One mebibyte, 40 deep: far above any real job, far below what would hurt. No plan says so much in ten bytes a value. */
    public static final Limits USUAL = new Limits(1 << 20, 100_000, 40, 4096, 64, 100);

    /**
     * Checks that every limit is above zero.
     *
     * @throws IllegalArgumentException when one is not
     */
    public Limits {
        if (bytes < 1 || values < 1 || depth < 1 || textLength < 1 || numberLength < 1 || faults < 1) {
            throw new IllegalArgumentException("A limit is at least 1");
        }
    }
}
