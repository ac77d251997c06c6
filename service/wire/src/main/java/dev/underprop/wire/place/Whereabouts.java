package dev.underprop.wire.place;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.wire.fault.Pointers;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.Locator;
import dev.underprop.wire.tree.Place;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Finds the line of a post, beam, joist, bearing, pad or question in the text of its plan. */
public final class Whereabouts {
    private static final TreeReader TREES = new TreeReader(Limits.USUAL);

    /** Pointers by the words that an answer uses for what stands there; the first to use a word keeps it. */
    private final Map<String, String> pointers = new HashMap<>();

    private final JsonNode plan;

    private Whereabouts(JsonNode plan) {
        this.plan = plan;
        bearings();
        joists();
        shores();
        each("/pads", "name");
        each("/situations", "name");
        each("/intake", "question");
        put("floor", plan.has("restraint") ? "/restraint" : "/floor");
        put("plan", "");
    }

    /**
     * Lines and columns of places, each the place of the thing itself or of the nearest around it that the text has; places that
     * cannot be told are those of the whole plan.
     *
     * @param words places as answers write them
     * @param text text of the plan
     * @param format how it is written
     */
    public static Map<String, Place> find(Collection<String> words, byte[] text, Format format) {
        if (!(TREES.read(text, format) instanceof TreeReading.Tree tree)) {
            return Map.of();
        }
        Whereabouts whereabouts = new Whereabouts(tree.root());
        Map<String, String> wanted = new LinkedHashMap<>();
        words.forEach(word -> wanted.put(word, whereabouts.pointer(word)));
        Set<String> all = new HashSet<>(wanted.values());
        Map<String, Place> places = Locator.places(all, text, format);
        Map<String, Place> found = new LinkedHashMap<>();
        wanted.forEach((word, pointer) -> {
            Place place = places.get(pointer);
            if (place != null) {
                found.put(word, place);
            }
        });
        return found;
    }

    /** The words themselves, or the longest beginning of them that is known: {@code J1 on A} stands where J1 stands. */
    private String pointer(String words) {
        String begin = words;
        while (!begin.isEmpty()) {
            String pointer = pointers.get(begin);
            if (pointer != null) {
                return pointer;
            }
            begin = begin.substring(0, Math.max(0, Math.max(begin.lastIndexOf(' '), begin.lastIndexOf(','))));
        }
        return "";
    }

    private void bearings() {
        String list = "/floor/bearings";
        for (int i = 0; i < plan.at(list).size(); i++) {
            String bearing = Pointers.element(list, i);
            put(name(bearing), bearing);
            each(bearing + "/piers", "name");
        }
    }

    /** Joists that are listed one by one have places of their own; the others share that of their set. */
    private void joists() {
        String set = "/floor/joists";
        String list = set + "/each";
        int listed = plan.at(list).size();
        for (int i = 0; i < listed; i++) {
            String joist = Pointers.element(list, i);
            put(name(joist), joist);
            put("J" + (i + 1), joist);
        }
        for (int i = listed; i < plan.at(set).path("count").asInt(); i++) {
            put("J" + (i + 1), set);
        }
    }

    private void shores() {
        for (int i = 0; i < plan.path("shores").size(); i++) {
            String shore = Pointers.element("/shores", i);
            String name = name(shore);
            put("beam of " + name, shore + "/beam");
            put("heads of " + name, plan.at(shore).has("heads") ? shore + "/heads" : shore);
            each(shore + "/posts", "name");
            put(name, shore);
        }
    }

    private void each(String list, String member) {
        for (int i = 0; i < plan.at(list).size(); i++) {
            String one = Pointers.element(list, i);
            put(plan.at(one).path(member).asText(), one);
        }
    }

    private String name(String pointer) {
        return plan.at(pointer).path("name").asText();
    }

    private void put(String word, String pointer) {
        if (!word.isEmpty()) {
            pointers.putIfAbsent(word, pointer);
        }
    }
}
