package dev.underprop.engine.standard;

/**
 * Where a rule or a value stands.
 *
 * @param document short name of the document, such as {@code NDS}
 * @param edition edition, such as {@code 2018}; empty for what has none
 * @param locator section, table or equation
 * @param standing how it was taken from there
 */
public record Citation(String document, String edition, String locator, Standing standing) {

    /** How a rule or a value was taken from its source. */
    public enum Standing {
        /** Read in the document or in a public copy of it. */
        READ("read"),
        /** Remembered; to be compared with the document before it is relied upon. */
        FROM_MEMORY("from memory");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        /** The standing as reports write it. */
        public String words() {
            return words;
        }
    }

    public Citation {
        if (document.isBlank() || locator.isBlank()) {
            throw new IllegalArgumentException("a citation names a document and a place in it");
        }
    }

    /** A citation that was read. */
    public static Citation read(String document, String edition, String locator) {
        return new Citation(document, edition, locator, Standing.READ);
    }

    /** A citation from memory. */
    public static Citation remembered(String document, String edition, String locator) {
        return new Citation(document, edition, locator, Standing.FROM_MEMORY);
    }

    /** Document, edition and place in one line, such as {@code NDS 2018, 3.3.3.7}. */
    public String text() {
        return edition.isBlank() ? document + ", " + locator : document + " " + edition + ", " + locator;
    }
}
