package dev.underprop.app.earlier;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Few things that come again and again, each held once and known by its number. */
final class Numbered<T> {
    private final Map<T, Integer> numbers = new HashMap<>();
    private final List<T> things = new ArrayList<>();

    /** The number of a thing, given to it when it is new. */
    int number(T thing) {
        Integer known = numbers.putIfAbsent(thing, things.size());
        if (known == null) {
            things.add(thing);
        }
        return known == null ? things.size() - 1 : known;
    }

    /** The number of a thing; below 0 when it has none. */
    int find(T thing) {
        return numbers.getOrDefault(thing, -1);
    }

    T get(int number) {
        return things.get(number);
    }
}
