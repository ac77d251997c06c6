package dev.underprop.wire.fault;

/** JSON pointers as RFC 6901 writes them. */
public final class Pointers {
    private Pointers() {}

    /**
     * The pointer to a member of the object at {@code parent}.
     *
     * @param parent pointer to the object
     * @param name the member's name as it stands in the document
     */
    public static String member(String parent, String name) {
        return parent + '/' + name.replace("~", "~0").replace("/", "~1");
    }

    /**
     * The pointer to an element of the array at {@code parent}.
     *
     * @param parent pointer to the array
     * @param index zero-based index
     */
    public static String element(String parent, int index) {
        return parent + '/' + index;
    }

    /** The pointer to what holds the value at {@code pointer}; the document holds itself. */
    public static String parent(String pointer) {
        int slash = pointer.lastIndexOf('/');
        return slash < 0 ? "" : pointer.substring(0, slash);
    }
}
