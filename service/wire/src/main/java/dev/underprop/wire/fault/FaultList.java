package dev.underprop.wire.fault;

import java.util.ArrayList;
import java.util.List;

/** Faults in the order they were found, up to a bound, so that a hostile document cannot make a huge answer. */
public final class FaultList {
    private final int most;
    private final List<Fault> faults = new ArrayList<>();

    /**
     * An empty list.
     *
     * @param most the greatest number of faults kept, at least 1
     */
    public FaultList(int most) {
        if (most < 1) {
            throw new IllegalArgumentException("A list of faults holds at least one, not " + most);
        }
        this.most = most;
    }

    /** Adds a fault; the first one past the bound is replaced by a note that there are more. */
    public void add(Fault fault) {
        if (faults.size() < most) {
            faults.add(fault);
        } else if (faults.size() == most) {
            faults.add(Messages.TOO_MANY_FAULTS.fault("").withLimit(Integer.toString(most)));
        }
    }

    /** Adds faults that lie at one pointer. */
    public void addAll(List<Fault> more, String pointer) {
        for (Fault fault : more) {
            add(fault.withPointer(pointer));
        }
    }

    /** True once the bound was passed: looking further brings nothing. */
    public boolean full() {
        return faults.size() > most;
    }

    /** True when nothing was found. */
    public boolean isEmpty() {
        return faults.isEmpty();
    }

    /** The faults, first found first. */
    public List<Fault> list() {
        return List.copyOf(faults);
    }
}
