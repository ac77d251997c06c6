package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.FaultList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The faults of one reading. A kind of fault is told once at a place, however many joists share the text. */
final class Findings {

    private static final int MOST = 100;

    private final FaultList faults = new FaultList(MOST);
    private final Set<String> seen = new HashSet<>();

    void add(Fault fault) {
        if (seen.add(fault.code() + ' ' + fault.pointer())) {
            faults.add(fault);
        }
    }

    boolean isEmpty() {
        return faults.isEmpty();
    }

    List<Fault> list() {
        return faults.list();
    }
}
