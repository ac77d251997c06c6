package dev.underprop.wire.tree;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.wire.fault.Fault;
import java.util.List;

/** What came of reading a document as text. */
public sealed interface TreeReading {
    /**
     * The document was read.
     *
     * @param root its value: objects, arrays, text, booleans, nulls, ints, longs and finite doubles, in document order
     */
    record Tree(JsonNode root) implements TreeReading {}

    /**
     * The document cannot be read.
     *
     * @param faults every fault found, at least one, in document order, each with its line and column unless it
     *     concerns the document as a whole
     */
    record Unreadable(List<Fault> faults) implements TreeReading {
        /** Copies the list. */
        public Unreadable {
            faults = List.copyOf(faults);
        }
    }
}
