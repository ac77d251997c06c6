package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Pointers;
import org.jspecify.annotations.Nullable;

/** A place in the plan, to which faults are tied; its pointer is put together only where there is one. */
final class Spot {
    private static final int MEMBER = -1;

    private final @Nullable Spot parent;
    private final String name;
    private final int index;
    private final Findings findings;

    /**
     * The place where a plan begins.
     *
     * @param pointer JSON pointer
     * @param findings where faults go
     */
    Spot(String pointer, Findings findings) {
        this(null, pointer, MEMBER, findings);
    }

    private Spot(@Nullable Spot parent, String name, int index, Findings findings) {
        this.parent = parent;
        this.name = name;
        this.index = index;
        this.findings = findings;
    }

    Spot member(String member) {
        return new Spot(this, member, MEMBER, findings);
    }

    Spot element(int element) {
        return new Spot(this, "", element, findings);
    }

    /** JSON pointer. */
    String pointer() {
        if (parent == null) {
            return name;
        }
        return index == MEMBER ? Pointers.member(parent.pointer(), name) : Pointers.element(parent.pointer(), index);
    }

    /** Where faults go. */
    Findings findings() {
        return findings;
    }

    /** A text of the object at this place; the generated models give null where it is absent. */
    Text text(String member, @Nullable String value) {
        return value == null
                ? new Text(member(member), member, "", false)
                : new Text(member(member), member, value, true);
    }

    /** A truth of the object at this place, as a text: {@code true}, {@code false}, or absent. */
    Text truth(String member, @Nullable Boolean value) {
        return text(member, value == null ? null : value.toString());
    }

    void report(Fault fault) {
        findings.add(fault.withPointer(pointer()));
    }

    void report(Messages message, String got, String... arguments) {
        report(message.fault(got, arguments));
    }
}
