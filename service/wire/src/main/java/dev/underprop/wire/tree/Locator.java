package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Pointers;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A second pass over a document that was read before, made only when there is something to point at: gives faults
 * their line and column.
 */
public final class Locator {
    private static final String AT_NAME = Messages.UNKNOWN_MEMBER.code();

    private Locator() {}

    /**
     * The same faults with line and column: those of the value, or of the name when the member is unknown, or of the
     * nearest object or list around it when there is no such member. Faults that have a place keep it.
     *
     * @param faults faults found in the document
     * @param bytes the document, as given to {@link TreeReader#read}
     * @param format how it is written
     */
    public static List<Fault> locate(List<Fault> faults, byte[] bytes, Format format) {
        Set<String> wanted = new HashSet<>();
        for (Fault fault : faults) {
            if (!fault.placed()) {
                addWithHolders(wanted, fault.pointer());
            }
        }
        if (wanted.isEmpty()) {
            return faults;
        }
        Map<String, Spot> spots = spots(wanted, bytes, format);
        return faults.stream()
                .map(fault -> fault.placed() ? fault : placed(fault, spots))
                .toList();
    }

    /**
     * Where values stand.
     *
     * @param pointers pointers to values; those that lead nowhere have no place in the answer
     * @param bytes the document, as given to {@link TreeReader#read}
     * @param format how it is written
     */
    public static Map<String, Place> places(Set<String> pointers, byte[] bytes, Format format) {
        Map<String, Place> places = new HashMap<>();
        spots(pointers, bytes, format).forEach((pointer, spot) -> places.put(pointer, spot.value()));
        return places;
    }

    /** Where a value stands, and its name; the same place twice for an element of a list. */
    private record Spot(Place name, Place value) {}

    private static void addWithHolders(Set<String> wanted, String pointer) {
        String at = pointer;
        while (wanted.add(at) && !at.isEmpty()) {
            at = Pointers.parent(at);
        }
    }

    private static Fault placed(Fault fault, Map<String, Spot> spots) {
        String at = fault.pointer();
        while (!spots.containsKey(at) && !at.isEmpty()) {
            at = Pointers.parent(at);
        }
        Spot spot = spots.get(at);
        if (spot == null) {
            return fault;
        }
        boolean atName = fault.code().equals(AT_NAME) && at.equals(fault.pointer());
        Place place = atName ? spot.name() : spot.value();
        return fault.at(place.line(), place.column());
    }

    private static Map<String, Spot> spots(Set<String> wanted, byte[] bytes, Format format) {
        Map<String, Spot> spots = new HashMap<>();
        try {
            walk(TreeReader.source(Utf8.text(bytes), format), wanted, spots);
        } catch (Stopped stopped) {
            // What was found up to the syntax fault is still right.
            return spots;
        }
        return spots;
    }

    private static void walk(TokenSource source, Set<String> wanted, Map<String, Spot> spots) {
        Path path = new Path();
        Map<String, Place> names = new HashMap<>();
        Token token = source.next();
        while (token != Token.END && spots.size() < wanted.size()) {
            switch (token) {
                case KEY -> {
                    path.name(source.text());
                    if (wanted.contains(path.pointer())) {
                        names.putIfAbsent(path.pointer(), place(source));
                    }
                }
                case OBJECT_END, LIST_END -> path.leave();
                default -> {
                    path.value();
                    if (wanted.contains(path.pointer())) {
                        note(path.pointer(), names, spots, place(source));
                    }
                    enter(token, path);
                }
            }
            token = source.next();
        }
    }

    private static void note(String pointer, Map<String, Place> names, Map<String, Spot> spots, Place value) {
        spots.putIfAbsent(pointer, new Spot(names.getOrDefault(pointer, value), value));
    }

    private static void enter(Token token, Path path) {
        if (token == Token.OBJECT_START || token == Token.LIST_START) {
            path.enter(token == Token.OBJECT_START);
        }
    }

    private static Place place(TokenSource source) {
        return new Place(source.line(), source.column());
    }
}
