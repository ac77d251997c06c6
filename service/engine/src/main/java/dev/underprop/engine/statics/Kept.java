package dev.underprop.engine.statics;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Bounds what all contact states of a solver keep together of one kind that can be made again: those drop theirs first that used it
 * longest ago.
 */
final class Kept {

    private final int memory;
    private final Consumer<ContactState> drop;
    private final Map<ContactState, Integer> held = new LinkedHashMap<>(16, 0.75f, true);
    private int all;

    private Kept(int memory, Consumer<ContactState> drop) {
        this.memory = memory;
        this.drop = drop;
    }

    /**
     * What the states of one solver keep.
     *
     * @param rows rows of members; by far the largest part, asked for only where members are looked at in line
     * @param ways ways to neighbours; of use again only where the same contacts change
     */
    record Parts(Kept rows, Kept ways) {
        Parts() {
            this(new Kept(ROWS, ContactState::dropRows), new Kept(WAYS, ContactState::dropWays));
        }

        void dropAll(ContactState state) {
            rows.drop(state);
            ways.drop(state);
        }
    }

    /** Numbers in rows: 4 MB a solver. */
    private static final int ROWS = 500_000;

    /** Numbers in ways to neighbours: 4 MB a solver. */
    private static final int WAYS = 500_000;

    /** Notes that a state keeps so many numbers more, or fewer, and has others drop theirs where it becomes too much. */
    void more(ContactState state, int numbers) {
        held.merge(state, numbers, Integer::sum);
        all += numbers;
        Iterator<Map.Entry<ContactState, Integer>> eldest = held.entrySet().iterator();
        while (all > memory && held.size() > 1) {
            Map.Entry<ContactState, Integer> next = eldest.next();
            all -= next.getValue();
            drop.accept(next.getKey());
            eldest.remove();
        }
    }

    /** Whether one state alone keeps too much. */
    boolean tooMuch() {
        return all > memory;
    }

    private void drop(ContactState state) {
        Integer numbers = held.remove(state);
        if (numbers != null) {
            all -= numbers;
            drop.accept(state);
        }
    }
}
