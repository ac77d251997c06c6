package dev.underprop.engine.lift;

/**
 * The floor while a jack holds it clear of a post, so that the post's screw can be turned without load.
 *
 * @param jack which
 * @param raised of screws, by post (m); that of the freed post is where the beam over it is
 * @param touching how far the jack's head is up where it touches, by bound (m)
 * @param shape the floor
 * @param lifts how far the jack lifts from where it touches, by bound and case (m)
 */
record Jacked(LiftFloor.Jack jack, double[] raised, double[] touching, Shape shape, double[][] lifts) {

    /** Greatest lift over all bounds and cases (m). */
    double furthest() {
        double furthest = 0;
        for (double[] bound : lifts) {
            for (double lift : bound) {
                furthest = Math.max(furthest, lift);
            }
        }
        return furthest;
    }

    /** Lift under dead load, over all bounds (m). */
    Span lift() {
        Span span = Span.NOTHING;
        for (double[] bound : lifts) {
            span = span.with(bound[0]);
        }
        return span;
    }

    /** What it carries under dead load, over all bounds (N). */
    Span load() {
        return shape.force(jack.contact());
    }
}
