package dev.underprop.wire.tree;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.wire.fault.FaultList;
import dev.underprop.wire.fault.Messages;

/**
 * Reads the bytes of one document. Any bytes give a tree or faults, never an exception. Duplicate names, numbers out of
 * range, texts too long and what is not read of YAML are all collected; a syntax fault ends the list.
 */
public final class TreeReader {
    private final Limits limits;

    /**
     * A reader with limits; it holds no state, so several threads may use it.
     *
     * @param limits how large a document may be
     */
    public TreeReader(Limits limits) {
        this.limits = limits;
    }

    /**
     * Reads one document.
     *
     * @param bytes UTF-8, with or without a byte order mark
     * @param format how it is written
     * @return the tree, or everything that is wrong with the bytes
     */
    public TreeReading read(byte[] bytes, Format format) {
        FaultList faults = new FaultList(limits.faults());
        try {
            JsonNode root = tree(bytes, format, faults);
            if (faults.isEmpty()) {
                return new TreeReading.Tree(root);
            }
        } catch (Stopped stopped) {
            faults.add(stopped.fault());
        }
        return new TreeReading.Unreadable(faults.list());
    }

    private JsonNode tree(byte[] bytes, Format format, FaultList faults) {
        if (bytes.length > limits.bytes()) {
            throw new Stopped(
                    Messages.DOCUMENT_TOO_LARGE.fault(bytes.length + " bytes").withLimit(limits.bytes() + " bytes"));
        }
        TokenSource source = source(Utf8.text(bytes), format);
        return new TreeBuilder(source, limits, faults).build();
    }

    static TokenSource source(String text, Format format) {
        return switch (format) {
            case JSON -> new JsonSource(text);
            case YAML -> new YamlSource(text);
        };
    }
}
