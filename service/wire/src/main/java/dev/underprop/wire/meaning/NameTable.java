package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Things of one kind by their names. */
final class NameTable<T> {

    private static final int LISTED = 12;

    private final String kind;
    private final Map<String, T> things = new LinkedHashMap<>();

    NameTable(String kind) {
        this.kind = kind;
    }

    /** Indices by name, without complaint about names that stand twice: that is said where the things are read. */
    static NameTable<Integer> indexed(String kind, List<String> names) {
        NameTable<Integer> table = new NameTable<>(kind);
        for (int i = 0; i < names.size(); i++) {
            table.things.putIfAbsent(names.get(i), i);
        }
        return table;
    }

    /** Adds a thing; a name that stands already is a fault at the spot. */
    void add(String name, T thing, Spot spot) {
        if (things.putIfAbsent(name, thing) != null) {
            spot.report(Messages.NAME_TWICE, name, kind, Fault.shown(name));
        }
    }

    /** The thing of a name; a name that nothing has is a fault at the spot. */
    Optional<T> find(String name, Spot spot) {
        T thing = things.get(name);
        if (thing == null) {
            reportUnknown(name, spot);
            return Optional.empty();
        }
        return Optional.of(thing);
    }

    private void reportUnknown(String name, Spot spot) {
        String shown = Fault.shown(name);
        String near = Nearest.to(name, things.keySet());
        if (near.isEmpty()) {
            spot.report(Messages.NAME_UNKNOWN, name, kind, shown, remedy());
        } else {
            spot.report(Messages.NAME_UNKNOWN_NEAR, name, kind, shown, Fault.shown(near));
        }
    }

    private String remedy() {
        if (things.isEmpty()) {
            return "Describe it, or take the name out.";
        }
        String names = String.join(
                ", ", things.keySet().stream().limit(LISTED).map(Fault::shown).toList());
        return "Use one of: " + names + (things.size() > LISTED ? ", and more." : ".");
    }
}
