package dev.underprop.engine.lift;

/**
 * The floor while a jack holds it clear of a post, so that the post's screw can be turned without load.
 *
 * @param jack which
 * @param raised of screws, by post (m); that of the freed post is where the beam over it is
 * @param screw how far the freed post's own screw may be up then (m), not beyond that
 * @param touching how far the jack's head is up where it touches, by bound (m)
 * @param shape the floor
 * @param lifts how far the jack lifts from where it touches, by bound and case (m)
 */
record Jacked(LiftFloor.Jack jack, double[] raised, double[] screw, double[] touching, Shape shape, double[][] lifts) {

    /** The same jack at the same post under other cases. */
    Jacked with(Shape other, double[][] otherLifts) {
        return new Jacked(jack, raised, screw, touching, other, otherLifts);
    }

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

    /** How far it stands taller than when the shores were snug, at most (m): it starts from a floor that was raised already. */
    double tallest() {
        double tallest = 0;
        for (int b = 0; b < lifts.length; b++) {
            for (double lift : lifts[b]) {
                tallest = Math.max(tallest, touching[b] + lift);
            }
        }
        return tallest;
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
