package dev.underprop.engine.plan;

import java.util.List;

/** Whether the ground is cut near the pads. */
public sealed interface Excavation {

    /** The plan says nothing. */
    record Unstated() implements Excavation {}

    /** Stated: none. */
    record None() implements Excavation {}

    /** Stated, where. */
    record Cuts(List<Cut> cuts) implements Excavation {
        public Cuts {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * A pit or trench with upright sides.
     *
     * @param name as the plan calls it
     * @param fromX (m), may be minus infinity
     * @param toX (m), may be plus infinity
     * @param fromY (m), may be minus infinity
     * @param toY (m), may be plus infinity
     * @param depth below the underside of the pads (m), positive
     */
    record Cut(String name, double fromX, double toX, double fromY, double toY, double depth) {
        public Cut {
            Sense.positive(depth, "depth");
            if (!(toX > fromX) || !(toY > fromY)) {
                throw new IllegalArgumentException("a cut must end after it begins");
            }
        }
    }
}
