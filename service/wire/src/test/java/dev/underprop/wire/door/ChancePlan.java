package dev.underprop.wire.door;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A plan by chance, mostly valid, small so that very many can be judged, and without regard to what anyone would build: joists of a
 * hand's length, posts on one spot, loads of nothing and of a mountain. The same draws give the same plan.
 */
final class ChancePlan {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> SIZES = List.of("2x6", "2x8", "2x10", "2x12", "4x8");
    private static final List<String> SPECIES = List.of("hem-fir", "douglas fir-larch", "spruce-pine-fir");
    private static final List<String> GRADES = List.of("No.1", "No.2", "Select Structural");

    private final Random random;
    private final ObjectNode plan = NODES.objectNode();
    private double width;
    private double length;

    private ChancePlan(Random random) {
        this.random = random;
    }

    /** A plan from draws. */
    static ObjectNode of(Random random) {
        return new ChancePlan(random).make();
    }

    private ObjectNode make() {
        int joists = rare() ? 5 : 2 + random.nextInt(2);
        double spacing = between(2, 36);
        width = spacing * (joists - 1);
        length = rare() ? between(30, 60) : between(60, 240);
        plan.put("basis", "us-asd");
        ObjectNode floor = plan.putObject("floor");
        ObjectNode set = member(floor.putObject("joists"))
                .put("start", inches(rare() ? between(-20, 0) : 0))
                .put("length", inches(length))
                .put("selfWeight", random.nextBoolean() ? "added" : "included");
        if (random.nextInt(4) == 0) {
            ArrayNode each = set.putArray("each");
            for (int i = 0; i < joists; i++) {
                joist(each.addObject(), i, spacing);
            }
        } else {
            set.put("count", joists).put("spacing", inches(spacing));
        }
        bearings(floor.putArray("bearings"));
        loads(floor.putArray("loads"));
        ArrayNode shores = plan.putArray("shores");
        int count = rare() ? 2 : 1;
        for (int i = 0; i < count; i++) {
            shore(shores.addObject(), i);
        }
        situations(plan.putArray("situations"));
        if (random.nextBoolean()) {
            support();
        }
        if (!rare()) {
            plan.putObject("limits").put("fitUp", inches(0));
        }
        return plan;
    }

    private ObjectNode member(ObjectNode node) {
        return node.put("size", pick(SIZES))
                .put("species", pick(SPECIES))
                .put("grade", pick(GRADES))
                .put("moisture", random.nextInt(4) == 0 ? "wet" : "dry");
    }

    private void joist(ObjectNode joist, int i, double spacing) {
        joist.put("name", "J" + (i + 1)).put("at", inches(i * spacing));
        if (random.nextInt(3) == 0) {
            joist.put("breadth", inches(between(1, 4))).put("depth", inches(between(3, 12)));
        }
        if (random.nextInt(3) == 0) {
            joist.put("length", inches(between(0.8 * length, length)));
        }
    }

    private void bearings(ArrayNode bearings) {
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            ObjectNode bearing = bearings.addObject()
                    .put("name", "B" + i)
                    .put("at", inches(count == 1 ? between(1, length - 1) : 2 + (length - 4) * i / (count - 1)))
                    .put("length", inches(between(1, 6)));
            if (random.nextInt(4) == 0) {
                bearing.put("kind", "spring").put("stiffness", amount(1e-3, 1e4) + " kip/in");
            } else {
                bearing.put("kind", "rigid");
            }
            if (random.nextInt(3) == 0) {
                bearing.putObject("fastened")
                        .put("uplift", amount(1, 2000) + " lb")
                        .put("by", "ties");
            }
        }
    }

    private void loads(ArrayNode loads) {
        load(loads, "floor", "area", "psf", 60);
        if (random.nextBoolean()) {
            load(loads, "wall", "line", "plf", 500)
                    .put("along", "x")
                    .put("at", inches(between(length / 3, length / 2)));
        }
        if (random.nextInt(3) == 0) {
            load(loads, "tub", "point", "lb", 900)
                    .put("x", inches(between(0, width)))
                    .put("y", inches(between(0, length)));
        }
    }

    private ObjectNode load(ArrayNode loads, String name, String kind, String unit, double usual) {
        ObjectNode load = loads.addObject().put("name", name).put("kind", kind);
        load.put("dead", (rare() ? amount(1e-6, 1e5) : amount(1, usual)) + " " + unit);
        if (random.nextBoolean()) {
            load.put("live", (rare() ? amount(1e-6, 1e5) : amount(1, usual)) + " " + unit);
        }
        if (random.nextInt(4) == 0) {
            load.put("snow", amount(1, usual) + " " + unit).put("snowLevel", "allowable");
        }
        return load;
    }

    private void shore(ObjectNode shore, int number) {
        double over = rare() ? between(0, 60) : between(1, 10);
        double run = Math.max(14, width + 2 * over);
        shore.put("name", "S" + number)
                .put("at", inches(rare() ? between(0, length) : length * (1.4 + 1.1 * number) / 4));
        member(shore.putObject("beam"))
                .put("plies", 1 + random.nextInt(4))
                .put("start", inches(-over))
                .put("length", inches(run));
        ArrayNode posts = shore.putArray("posts");
        int count = rare() ? 4 : 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            double at = -over + (rare() ? between(0, run) : run * (i + between(0.05, 0.95)) / count);
            post(posts.addObject()
                    .put("name", "S" + number + "P" + i)
                    .put("at", inches(at))
                    .put("height", inches(rare() ? between(2, 240) : between(30, 90))));
        }
    }

    private void post(ObjectNode post) {
        switch (random.nextInt(4)) {
            case 0 -> post.put("rigid", true);
            case 1 -> post.put("stiffness", (rare() ? amount(1e-4, 1e6) : amount(5, 500)) + " kip/in");
            case 2 -> {
                double soft = amount(1, 60);
                post.put("soft", soft + " kip/in").put("stiff", soft * (1 + random.nextInt(20)) + " kip/in");
            }
            default -> post.put("stiffness", "90 kip/in");
        }
        if (random.nextInt(5) == 0) {
            post.put("gap", inches(random.nextInt(9) / 16.0));
        }
    }

    private void situations(ArrayNode situations) {
        situations.addObject().put("name", "shored");
        if (random.nextInt(3) != 0) {
            situations.addObject().put("name", "out").putArray("removed").add("B0");
        }
        if (random.nextInt(4) == 0 && !plan.at("/shores/0/posts/0").has("gap")) {
            situations
                    .addObject()
                    .put("name", "raised")
                    .putArray("lifts")
                    .addObject()
                    .put("post", "S0P0")
                    .put("lift", inches(random.nextInt(17) / 8.0));
        }
    }

    /** Post types, ground and pads, for all posts alike. */
    private void support() {
        ObjectNode type = plan.putArray("postTypes").addObject().put("name", "screw");
        type.putObject("rating")
                .put("kind", "allowable")
                .put("source", "invented")
                .putArray("rows")
                .addObject()
                .put("height", "7 ft")
                .put("load", amount(0.1, 40) + " kip");
        type.putObject("headPlate").put("along", inches(between(2, 8))).put("across", inches(between(2, 8)));
        type.putObject("basePlate").put("along", inches(between(3, 8))).put("across", inches(between(3, 8)));
        plan.putObject("ground")
                .put("allowable", amount(100, 9000) + " psf")
                .put("source", "invented")
                .put("condition", "undisturbed");
        ObjectNode pad = plan.putArray("pads").addObject().put("name", "pad");
        pad.put("kind", random.nextBoolean() ? "concrete" : "timber")
                .put("along", inches(between(9, 40)))
                .put("across", inches(between(9, 40)))
                .put("thickness", inches(between(2, 14)));
        if (pad.get("kind").textValue().equals("concrete")) {
            pad.put("strength", "2500 psi");
        }
        plan.get("shores")
                .forEach(shore -> shore.get("posts")
                        .forEach(
                                post -> ((ObjectNode) post).put("type", "screw").put("pad", "pad")));
    }

    private boolean rare() {
        return random.nextInt(8) == 0;
    }

    private double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    /** Every power of ten alike, three digits. */
    private double amount(double least, double most) {
        double value = least * StrictMath.pow(most / least, random.nextDouble());
        return Double.parseDouble(String.format(Locale.ROOT, "%.2e", value));
    }

    private static String inches(double value) {
        return String.format(Locale.ROOT, "%.3f in", value);
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
