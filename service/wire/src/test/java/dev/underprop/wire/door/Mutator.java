package dev.underprop.wire.door;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Changes a plan at random, mostly so that it stays readable: the same seed gives the same plan. */
final class Mutator {
    private static final List<String> UNITS =
            List.of("ft", "in", "m", "mm", "psf", "plf", "lb", "kip", "kN", "kip/in", "N/m", "pcf", "psi");
    private static final List<String> NUMBERS = List.of(
            "0", "-1", "1", "0.001", "1e-9", "1e-3", "2", "3 1/2", "7", "10", "14", "15", "24", "40", "100", "999",
            "1e6", "1e12");
    private static final List<String> WORDS = List.of(
            "",
            " ",
            "A",
            "B",
            "J1",
            "J2",
            "rear",
            "front",
            "x",
            "y",
            "rigid",
            "spring",
            "allowable",
            "2x10",
            "4x12",
            "2x4",
            "hem-fir",
            "sp",
            "Stud",
            "No.1",
            "wet",
            "dry",
            "\u0000",
            "1/0 in",
            "6'-4\"",
            "peat",
            "NaN ft",
            "girder",
            "jack post",
            "east pier",
            "preserved",
            "fire retardant",
            "none",
            "wind",
            "seismic",
            "yes",
            "no",
            "chimney",
            "decay or notches");

    private final Random random;

    Mutator(long seed) {
        this.random = new Random(seed);
    }

    /** A copy of a plan with one to four changes. */
    JsonNode mutant(JsonNode plan) {
        JsonNode copy = plan.deepCopy();
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            List<JsonNode> holders = new ArrayList<>();
            collect(copy, holders);
            JsonNode holder = holders.get(random.nextInt(holders.size()));
            if (holder instanceof ObjectNode object) {
                change(object);
            } else {
                change((ArrayNode) holder);
            }
        }
        return copy;
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainerNode() && !node.isEmpty()) {
            holders.add(node);
            node.forEach(child -> collect(child, holders));
        }
    }

    private void change(ObjectNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        String name = names.get(random.nextInt(names.size()));
        JsonNode value = object.get(name);
        switch (random.nextInt(12)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(name, TextNode.valueOf(pick(WORDS)));
            case 2 -> object.set(name, TextNode.valueOf(pick(NUMBERS) + " " + pick(UNITS)));
            case 3 -> object.set(names.get(random.nextInt(names.size())), value.deepCopy());
            default -> object.set(name, nudged(value));
        }
    }

    private void change(ArrayNode list) {
        int index = random.nextInt(list.size());
        switch (random.nextInt(4)) {
            case 0 -> list.remove(index);
            case 1 -> list.add(list.get(index).deepCopy());
            default -> list.set(index, nudged(list.get(index)));
        }
    }

    /** The same kind of value with another number: the unit stays, so that many mutants still make sense. */
    private JsonNode nudged(JsonNode value) {
        if (value.isInt()) {
            return IntNode.valueOf(random.nextInt(9));
        }
        if (value.isBoolean()) {
            return BooleanNode.valueOf(random.nextBoolean());
        }
        if (!value.isTextual() || !value.textValue().matches("-?[0-9].* [a-zA-Z/]+")) {
            return value;
        }
        String text = value.textValue();
        String unit = text.substring(text.lastIndexOf(' ') + 1);
        String number = random.nextBoolean() ? pick(NUMBERS) : Integer.toString(random.nextInt(200) - 20);
        return TextNode.valueOf(number + " " + unit);
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
