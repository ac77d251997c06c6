package dev.underprop.wire.tree;

import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.wire.fault.Fault;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Short ways to read documents in tests. */
final class Documents {
    private Documents() {}

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static JsonNode tree(String text, Format format) {
        return tree(utf8(text), format);
    }

    static JsonNode tree(byte[] bytes, Format format) {
        TreeReading reading = new TreeReader(Limits.USUAL).read(bytes, format);
        return reading instanceof TreeReading.Tree tree ? tree.root() : fail("was refused: " + reading);
    }

    static List<Fault> faults(String text, Format format) {
        return faults(utf8(text), format, Limits.USUAL);
    }

    static List<Fault> faults(byte[] bytes, Format format, Limits limits) {
        TreeReading reading = new TreeReader(limits).read(bytes, format);
        return reading instanceof TreeReading.Unreadable unreadable
                ? unreadable.faults()
                : fail("was read: " + reading);
    }

    /** A fault as "code pointer line:column". */
    static String brief(Fault fault) {
        return fault.code() + " " + fault.pointer() + " " + fault.line() + ":" + fault.column();
    }
}
