package dev.underprop.app.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.underprop.app.Demos;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Plans that are valid or nearly so: demo plans in which a few members have been changed. */
final class NearPlans {
    private static final List<String> BASES = List.of(
            "two-spans.yaml", "sill-out-loose.yaml", "sill-out-tied.yaml", "overhanging-end-joist.yaml", "bare.yaml");
    private static final List<String> TEXTS = List.of(
            "",
            " ",
            "0 ft",
            "-1 in",
            "1 in",
            "12 ft",
            "1e9 ft",
            "1e999 ft",
            "NaN ft",
            "3/0 in",
            "40 psf",
            "40 psi",
            "300 kg",
            "8 kip",
            "6' 10 1/2\"",
            "6\u2019 10\u201d",
            "rigid",
            "none",
            "us-asd",
            "2x10",
            "\u0000",
            "\ud83e\uddf1",
            "a".repeat(70),
            "b".repeat(5000),
            "../../etc/passwd",
            "<b>&\"'");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Random random;

    NearPlans(Random random) {
        this.random = random;
    }

    /** A demo plan with none to three changes. */
    JsonNode next() {
        ObjectNode plan = demo(BASES.get(random.nextInt(BASES.size())));
        int changes = random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            change(plan);
        }
        return plan;
    }

    private static ObjectNode demo(String name) {
        Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(Demos.text(name));
        return MAPPER.convertValue(tree, ObjectNode.class);
    }

    private void change(ObjectNode plan) {
        List<ObjectNode> objects = new ArrayList<>();
        List<ArrayNode> arrays = new ArrayList<>();
        collect(plan, objects, arrays);
        if (!arrays.isEmpty() && random.nextInt(5) == 0) {
            changeList(arrays.get(random.nextInt(arrays.size())));
        } else {
            changeMember(objects.get(random.nextInt(objects.size())));
        }
    }

    private static void collect(JsonNode node, List<ObjectNode> objects, List<ArrayNode> arrays) {
        if (node instanceof ObjectNode object) {
            objects.add(object);
        } else if (node instanceof ArrayNode array) {
            arrays.add(array);
        }
        node.forEach(child -> collect(child, objects, arrays));
    }

    private void changeList(ArrayNode list) {
        int at = list.isEmpty() ? 0 : random.nextInt(list.size());
        switch (random.nextInt(4)) {
            case 0 -> list.removeAll();
            case 1 -> list.insert(at, value());
            case 2 -> list.remove(at);
            default -> list.add(list.isEmpty() ? value() : list.get(at).deepCopy());
        }
    }

    private void changeMember(ObjectNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        if (names.isEmpty()) {
            object.set("more", value());
            return;
        }
        String name = names.get(random.nextInt(names.size()));
        switch (random.nextInt(6)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(name + "s", object.get(name));
            case 2 -> object.set(name, NODES.textNode(longer(object.path(name).asText())));
            default -> object.set(name, value());
        }
    }

    /** The same quantity, a little other: what a slip of the hand makes of it. */
    private String longer(String text) {
        int at = random.nextInt(text.length() + 1);
        return switch (random.nextInt(3)) {
            case 0 -> text.substring(0, at) + random.nextInt(10) + text.substring(at);
            case 1 -> text.substring(0, at) + "-" + text.substring(at);
            default -> text.substring(0, at) + text.substring(Math.min(text.length(), at + 1));
        };
    }

    private JsonNode value() {
        return switch (random.nextInt(10)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.booleanNode(random.nextBoolean());
            case 2 -> NODES.numberNode(List.of(0, -1, 3, 1_000_000_000).get(random.nextInt(4)));
            case 3 -> NODES.numberNode(1.5);
            case 4 -> NODES.arrayNode().add(value());
            case 5 -> NODES.objectNode().set("x", value());
            default -> NODES.textNode(TEXTS.get(random.nextInt(TEXTS.size())));
        };
    }
}
