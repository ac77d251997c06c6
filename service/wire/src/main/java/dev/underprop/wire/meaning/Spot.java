package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Pointers;
import org.jspecify.annotations.Nullable;

/**
 * A place in the plan, to which faults are tied.
 *
 * @param pointer JSON pointer
 * @param findings where faults go
 */
record Spot(String pointer, Findings findings) {

    Spot member(String name) {
        return new Spot(Pointers.member(pointer, name), findings);
    }

    Spot element(int index) {
        return new Spot(Pointers.element(pointer, index), findings);
    }

    /** A text of the object at this place; the generated models give null where it is absent. */
    Text text(String name, @Nullable String value) {
        return value == null ? new Text(member(name), name, "", false) : new Text(member(name), name, value, true);
    }

    /** A truth of the object at this place, as a text: {@code true}, {@code false}, or absent. */
    Text truth(String name, @Nullable Boolean value) {
        return text(name, value == null ? null : value.toString());
    }

    void report(Fault fault) {
        findings.add(fault.withPointer(pointer));
    }

    void report(Messages message, String got, String... arguments) {
        report(message.fault(got, arguments));
    }
}
