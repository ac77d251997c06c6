package dev.underprop.app.working;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * A plan that makes a judge take one of its ways.
 *
 * @param name of the way
 * @param check that is looked at
 * @param symbols that its record holds then
 * @param plan the fully declared demo with some of its words changed
 */
record Way(String name, String check, List<String> symbols, String plan) {

    static List<Way> all() {
        try (InputStream file = Way.class.getResourceAsStream("/working/ways.yaml")) {
            Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(file);
            List<Way> ways = new ArrayList<>();
            new ObjectMapper().<JsonNode>valueToTree(tree).forEach(node -> ways.add(read(node)));
            return ways;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Way read(JsonNode node) {
        String plan = Demos.text("adequate.yaml");
        for (JsonNode change : node.get("change")) {
            String from = change.get("from").asText();
            if (!plan.contains(from)) {
                throw new AssertionError("the demo does not say: " + from);
            }
            plan = plan.replace(from, change.get("to").asText());
        }
        List<String> symbols = new ArrayList<>();
        node.get("symbols").forEach(symbol -> symbols.add(symbol.asText()));
        return new Way(node.get("name").asText(), node.get("check").asText(), symbols, plan);
    }

    @Override
    public String toString() {
        return name;
    }
}
