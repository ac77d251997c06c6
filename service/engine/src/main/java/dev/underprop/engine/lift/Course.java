package dev.underprop.engine.lift;

/**
 * How things stand between two turns.
 *
 * @param raised of every post beyond snug (m)
 * @param shape the floor
 * @param values of every limit
 */
record Course(double[] raised, Shape shape, double[] values) {

    Course turned(LiftFloor floor, Gauges gauges, int post, double by) {
        double[] after = raised.clone();
        after[post] += by;
        return of(floor, gauges, after, by < 0);
    }

    static Course of(LiftFloor floor, Gauges gauges, double[] raised, boolean down) {
        Shape shape = floor.at(raised);
        return new Course(raised, shape, shape.stands() ? gauges.read(shape, raised, down) : new double[0]);
    }
}
