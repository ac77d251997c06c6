package dev.underprop.wire.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * One table of the catalogue: lines of comma-separated fields without quotes; lines that begin with a number sign are
 * remarks, the first other line names the fields.
 *
 * @param bytes as they are in the resource
 * @param rows the fields of each line
 */
record Table(byte[] bytes, List<List<String>> rows) {

    static Table read(String name) {
        byte[] bytes = bytes(name);
        List<List<String>> rows = new ArrayList<>();
        int fields = 0;
        for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> row = List.of(line.split(",", -1));
            if (fields == 0) {
                fields = row.size();
            } else if (row.size() == fields) {
                rows.add(row);
            } else {
                throw new IllegalStateException(name + ": a line with " + row.size() + " fields: " + line);
            }
        }
        return new Table(bytes, List.copyOf(rows));
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Table.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the jar holds no " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
