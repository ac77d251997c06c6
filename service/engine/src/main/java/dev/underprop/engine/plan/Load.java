package dev.underprop.engine.plan;

/**
 * A load on the floor or directly on a shore. Every place is in plan coordinates (m); extents may be infinite, meaning
 * as far as the floor or the beam goes.
 */
public sealed interface Load {

    /** As the plan calls it. */
    String name();

    /** Values by kind: Pa for areas, N/m for lines, N for points. */
    Intensity intensity();

    /** On an area of the floor. */
    record Area(String name, Intensity intensity, double fromX, double toX, double fromY, double toY) implements Load {}

    /** Along x on the floor, at y. */
    record Across(String name, Intensity intensity, double y, double from, double to) implements Load {}

    /** Along y on the floor, at x; shared by lever rule between the joists beside it. */
    record Along(String name, Intensity intensity, double x, double from, double to) implements Load {}

    /** At a point of the floor; shared by lever rule between the joists beside it. */
    record Point(String name, Intensity intensity, double x, double y) implements Load {}

    /** Along a shore's beam, directly on it. */
    record OnShore(String name, Intensity intensity, int shore, double from, double to) implements Load {}

    /** At a point of a shore's beam, directly on it. */
    record PointOnShore(String name, Intensity intensity, int shore, double x) implements Load {}
}
