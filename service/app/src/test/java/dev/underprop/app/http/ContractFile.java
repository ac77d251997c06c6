package dev.underprop.app.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The contract as it stands in the sources: as a tree, and as lines in which the value of an example can be replaced. */
final class ContractFile {
    private static final Path FILE = Path.of("../../api/src/main/openapi/openapi.yaml");
    private static final String VALUE = "      value:";
    private static final String INSIDE = " ".repeat(8);

    private final List<String> lines;

    private ContractFile(List<String> lines) {
        this.lines = new ArrayList<>(lines);
    }

    static ContractFile read() {
        try {
            return new ContractFile(List.of(Files.readString(FILE).split("\n", -1)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void write() {
        try {
            Files.writeString(FILE, text());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String text() {
        return String.join("\n", lines);
    }

    JsonNode tree() {
        Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(text());
        return new ObjectMapper().valueToTree(tree);
    }

    /** Method and path of every operation, in order. */
    List<String> operations() {
        List<String> operations = new ArrayList<>();
        tree().path("paths")
                .fields()
                .forEachRemaining(path -> path.getValue()
                        .fieldNames()
                        .forEachRemaining(
                                method -> operations.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey())));
        return operations.stream().sorted().toList();
    }

    /** The text of a request example, as a reader would copy it. */
    byte[] plan(String example) {
        int value = valueOf(example);
        return lines.subList(value + 1, endOf(value)).stream()
                .map(line -> line.substring(INSIDE.length()) + "\n")
                .collect(Collectors.joining())
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Puts another value in the place of an example's; nothing else changes. */
    void replace(String example, JsonNode value) {
        int from = valueOf(example);
        List<String> old = lines.subList(from, endOf(from));
        old.clear();
        old.addAll(ExampleText.member("value", value, VALUE.indexOf('v')));
    }

    private int valueOf(String example) {
        int at = lines.lastIndexOf("    " + example + ":") + 1;
        while (at > 0 && !lines.get(at).startsWith(VALUE)) {
            if (!lines.get(at).startsWith("      ")) {
                throw new IllegalStateException("The example " + example + " has no value");
            }
            at++;
        }
        if (at == 0) {
            throw new IllegalStateException("There is no example " + example);
        }
        return at;
    }

    /** After the last line of the value that begins in a line. */
    private int endOf(int value) {
        int end = value + 1;
        for (int at = end; at < lines.size(); at++) {
            if (lines.get(at).startsWith(INSIDE)) {
                end = at + 1;
            } else if (!lines.get(at).isEmpty()) {
                break;
            }
        }
        return end;
    }
}
