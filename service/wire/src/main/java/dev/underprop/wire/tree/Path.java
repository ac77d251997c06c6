package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Pointers;
import java.util.ArrayList;
import java.util.List;

/** Where a walk over tokens stands. */
final class Path {
    /** One object or list on the way; the name or the index is that of the value in it. */
    private static final class Step {
        private final boolean object;
        private String name = "";
        private int index = -1;

        Step(boolean object) {
            this.object = object;
        }
    }

    private final List<Step> steps = new ArrayList<>();

    int depth() {
        return steps.size();
    }

    void enter(boolean object) {
        steps.add(new Step(object));
    }

    void leave() {
        steps.remove(steps.size() - 1);
    }

    void name(String name) {
        last().name = name;
    }

    /** To be called for every value before it is looked at. */
    void value() {
        if (!steps.isEmpty() && !last().object) {
            last().index++;
        }
    }

    private Step last() {
        return steps.get(steps.size() - 1);
    }

    /** Pointer to the value the walk stands at. */
    String pointer() {
        String pointer = "";
        for (Step step : steps) {
            pointer = step.object ? Pointers.member(pointer, step.name) : Pointers.element(pointer, step.index);
        }
        return pointer;
    }
}
