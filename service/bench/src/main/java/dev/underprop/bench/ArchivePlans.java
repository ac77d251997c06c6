package dev.underprop.bench;

import dev.underprop.wire.door.Documents;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Invented plans by number, the same on every machine: one shore on two or three posts under two to four joists, shored or with a
 * bearing out, some with post types, pads and ground; 3 in 100 broken, each in one of twelve ways. They are small on purpose, so that
 * what stands around the engine can be measured.
 */
final class ArchivePlans {
    private static final long SEED = 20_260_101L;
    private static final double BROKEN = 0.03;

    private static final List<String> SIZES = List.of("2x6", "2x8", "2x10", "2x12");
    private static final List<String> SPECIES = List.of("hem-fir", "douglas fir-larch", "spruce-pine-fir");
    private static final List<String> GRADES = List.of("No.1", "No.2", "Select Structural");
    private static final List<String> SPACINGS = List.of("12 in", "16 in", "24 in");

    private ArchivePlans() {}

    /** A plan as one line of JSON. */
    static String json(int number) {
        SplittableRandom random = new SplittableRandom(SEED + number);
        String text = new String(Documents.json(plan(number, random), false), StandardCharsets.UTF_8).strip();
        return random.nextDouble() < BROKEN ? broken(text, random.nextInt(12)) : text;
    }

    /** The same plan as YAML. */
    static String yaml(int number) {
        SplittableRandom random = new SplittableRandom(SEED + number);
        StringBuilder out = new StringBuilder("# Invented.\n");
        Map<String, Object> plan = plan(number, random);
        plan.forEach((name, value) -> {
            String text = new String(Documents.json(value, false), StandardCharsets.UTF_8).strip();
            out.append(name).append(": ").append(text).append('\n');
        });
        return random.nextDouble() < BROKEN ? broken(out.toString(), random.nextInt(12)) : out.toString();
    }

    private static String broken(String text, int way) {
        return switch (way) {
            case 0 -> text.substring(0, text.length() / 2);
            case 1 -> text.replace(" ft\"", " feet\"");
            case 2 -> text.replace("\"shored\"", "1");
            case 3 ->
                text.replace("hem-fir", "hem-fur").replace("douglas", "duglas").replace("spruce", "sprouce");
            case 4 -> text.replace("psf", "plf");
            case 5 -> text.replace("\"shores\"", "\"shors\"").replace("shores:", "shors:");
            case 6 -> text.replace("us-asd", "no-such-basis");
            case 7 -> text.replace("\"M2\"", "\"M1\"");
            case 8 -> text.replace("\"rigid\"", "\"firm\"");
            case 9 -> "";
            case 10 -> text.replace("in\"", "\"");
            default -> text.replace("\"length\":", "\"length\":-");
        };
    }

    private static Map<String, Object> plan(int number, SplittableRandom random) {
        int joists = random.nextInt(10) < 7 ? 2 : 3 + random.nextInt(2);
        int span = 8 + random.nextInt(7);
        String spacing = pick(SPACINGS, random);
        int width = Integer.parseInt(spacing.replace(" in", "")) * (joists - 1);
        boolean whole = random.nextInt(10) < 3;
        boolean out = random.nextInt(10) < 2;
        Map<String, Object> plan = new LinkedHashMap<>();
        plan.put("id", "job-" + number);
        plan.put("title", "Invented job " + number);
        plan.put("basis", "us-asd");
        plan.put("floor", floor(joists, span, spacing, random));
        plan.put("shores", List.of(shore(span, width, whole, random)));
        plan.put("situations", situations(out));
        plan.put("limits", Map.of("fitUp", "0 in"));
        if (whole) {
            plan.put("postTypes", List.of(postType()));
            plan.put(
                    "pads",
                    List.of(of(
                            "name",
                            "block",
                            "kind",
                            "concrete",
                            "along",
                            "16 in",
                            "across",
                            "16 in",
                            "thickness",
                            "8 in",
                            "strength",
                            "3000 psi")));
            plan.put(
                    "ground",
                    of(
                            "table",
                            "ibc-1806.2",
                            "class",
                            "silty sand",
                            "foundingDepth",
                            "12 in",
                            "condition",
                            "undisturbed"));
        }
        return plan;
    }

    private static Map<String, Object> floor(int joists, int span, String spacing, SplittableRandom random) {
        Map<String, Object> set =
                of("size", pick(SIZES, random), "species", pick(SPECIES, random), "grade", pick(GRADES, random));
        set.put("moisture", "dry");
        set.put("count", joists);
        set.put("spacing", spacing);
        set.put("start", "0 in");
        set.put("length", span + " ft");
        Map<String, Object> floor = new LinkedHashMap<>();
        floor.put("joists", set);
        floor.put(
                "bearings",
                List.of(
                        of("name", "front", "at", "2 in", "length", "4 in", "kind", "rigid"),
                        of("name", "rear", "at", span - 1 + " ft 10 in", "length", "4 in", "kind", "rigid")));
        floor.put(
                "loads",
                List.of(of(
                        "name",
                        "floor",
                        "kind",
                        "area",
                        "dead",
                        8 + random.nextInt(25) + " psf",
                        "live",
                        random.nextInt(3) * 10 + 20 + " psf")));
        return floor;
    }

    private static Map<String, Object> shore(int span, int width, boolean whole, SplittableRandom random) {
        Map<String, Object> beam =
                of("size", pick(SIZES, random), "species", pick(SPECIES, random), "grade", pick(GRADES, random));
        beam.put("plies", 2 + random.nextInt(2));
        beam.put("moisture", "dry");
        beam.put("start", "-6 in");
        beam.put("length", width + 12 + " in");
        List<Object> posts = new ArrayList<>();
        int count = width > 40 ? 3 : 2;
        for (int i = 0; i < count; i++) {
            Map<String, Object> post = of(
                    "name",
                    "M" + (i + 1),
                    "at",
                    width * i / (count - 1) + " in",
                    "height",
                    4 + random.nextInt(4) + " ft " + random.nextInt(12) + " in");
            if (whole) {
                post.put("type", "screw");
                post.put("pad", "block");
            }
            post.put("rigid", true);
            posts.add(post);
        }
        Map<String, Object> shore = new LinkedHashMap<>();
        shore.put("name", "M");
        shore.put("at", span / 2 + " ft");
        shore.put("beam", beam);
        shore.put("posts", posts);
        return shore;
    }

    private static List<Object> situations(boolean out) {
        Map<String, Object> removed = of("name", "front out");
        removed.put("removed", List.of("front"));
        return out ? List.of(of("name", "shored"), removed) : List.of(of("name", "shored"));
    }

    private static Map<String, Object> postType() {
        Map<String, Object> rating = of("kind", "allowable", "source", "invented sheet");
        rating.put("rows", List.of(of("height", "5 ft", "load", "14 kip"), of("height", "8 ft", "load", "9 kip")));
        Map<String, Object> type = of("name", "screw");
        type.put("rating", rating);
        type.put("headPlate", of("along", "6 in", "across", "6 in"));
        type.put("basePlate", of("along", "6 in", "across", "6 in"));
        return type;
    }

    private static Map<String, Object> of(String... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return map;
    }

    private static String pick(List<String> from, SplittableRandom random) {
        return from.get(random.nextInt(from.size()));
    }
}
