package dev.underprop.app.report;

import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.EntryName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The record of a command that answers for one file, as a list of one like those of many, and people's text beside it.
 *
 * @param file where the record goes, {@code -} for the standard output, empty for nowhere; people's text goes to the standard
 *     output, or to the error output when the other belongs to a program
 */
record OneRecord(String file) {

    private boolean machine() {
        return file.equals(Sink.STANDARD_OUTPUT);
    }

    Paint paint() {
        return machine() ? new Paint(false) : Paint.forTerminal();
    }

    void say(String text) {
        try (Sink out = machine() ? Sink.error() : Sink.to(Sink.STANDARD_OUTPUT)) {
            out.write(text);
            out.flush();
        }
    }

    /**
     * Writes the record.
     *
     * @param kind {@code result} or {@code problem}
     * @param what it
     */
    void write(EntryName name, String kind, Object what) {
        if (file.isEmpty()) {
            return;
        }
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("path", name.path());
        record.put(kind, what);
        try (Sink out = Sink.to(file)) {
            out.write(Documents.json(List.of(record), true));
            out.complete();
        }
    }
}
