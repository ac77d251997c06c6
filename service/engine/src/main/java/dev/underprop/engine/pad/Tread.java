package dev.underprop.engine.pad;

import dev.underprop.engine.plan.Pad;

/**
 * How a pad presses on its ground.
 *
 * @param along x size of the part that bears (m), positive
 * @param across y size of that part (m), positive
 * @param breadth shorter side of the whole pad (m), which depth is measured by
 * @param pressure over that part (Pa), not negative
 * @param tilt sideways force over upright force, not negative
 */
record Tread(double along, double across, double breadth, double pressure, double tilt) {

    /** All over. */
    static Tread whole(Pad pad, double pressure, double tilt) {
        return new Tread(pad.along(), pad.across(), Math.min(pad.along(), pad.across()), pressure, tilt);
    }

    /**
     * On the part that has its middle under the load, which stands off the pad's middle by so much (m). Towards which side is not
     * known: both sides are taken to lose by it, which is the safe side.
     */
    static Tread part(Pad pad, double total, double off, double tilt) {
        double along = pad.along() - 2 * off;
        double across = pad.across() - 2 * off;
        return new Tread(along, across, Math.min(pad.along(), pad.across()), total / (along * across), tilt);
    }

    double area() {
        return along * across;
    }
}
