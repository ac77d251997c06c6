package dev.underprop.engine.lift;

/**
 * How things stand between two turns.
 *
 * @param raised of the screw of every post beyond touching (m); negative where its head stands clear
 * @param shape the floor
 * @param values of every limit
 * @param moves what moves in a case besides those of the shape, in words; empty where nothing does, or none was looked at
 */
record Course(double[] raised, Shape shape, double[] values, String moves) {

    Course turned(LiftFloor floor, Gauges gauges, int post, double by) {
        double[] after = raised.clone();
        after[post] += by;
        return of(floor, gauges, after, by < 0);
    }

    static Course of(LiftFloor floor, Gauges gauges, double[] raised, boolean down) {
        Shape shape = floor.at(raised);
        return new Course(raised, shape, shape.stands() ? gauges.read(shape, raised, down) : new double[0], "");
    }

    /** Whether nothing moves in any case that was looked at. */
    boolean stands() {
        return shape.stands() && moves.isEmpty();
    }

    /** What moves, in words. */
    String words() {
        return shape.stands() ? moves : shape.moves();
    }

    /** The same with whatever values were greater in more cases. */
    Course worse(double[] more) {
        double[] worst = values.clone();
        for (int i = 0; i < worst.length; i++) {
            worst[i] = Math.max(worst[i], more[i]);
        }
        return new Course(raised, shape, worst, moves);
    }

    Course moving(String words) {
        return new Course(raised, shape, values, words);
    }
}
