package dev.underprop.engine.pad;

import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;

/** How far an adjustable steel post itself gives: tube, screw, pin and plates, without pad and ground. */
public final class PostStiffness {

    /** One kip to the inch (N/m). */
    private static final double KIP_PER_INCH = 4448.2216152605 / 0.0254;

    /** Height that the bounds are for, 7 ft (m). */
    private static final double HEIGHT = 84 * 0.0254;

    /*
     * A 3 in tube of 11 to 16 gauge has 0.6 to 1.1 in2 of steel: by E A / L about 200 to 400 kip/in at 7 ft. A thick pipe
     * with a short screw gives more than twice that. A thin inner tube, a slender pin that bends, thread and plates that
     * are not seated give much less, a third to a half. Hence 100 to 1000.
     */
    private static final double SOFT = 100 * KIP_PER_INCH;

    private static final double STIFF = 1000 * KIP_PER_INCH;

    private static final Citation PRACTICE = Citation.remembered(
            "common practice, no source", "", "adjustable steel post, 100 to 1000 kip/in at 7 ft, over its height");

    private PostStiffness() {}

    /** Soft and stiff spring of a post of its height as set. */
    public static Spring of(Post post) {
        return of(post.height());
    }

    /** @param height of the post (m), positive */
    public static Spring of(double height) {
        double scale = HEIGHT / Admissible.positive(height, "height");
        return new Spring(
                SOFT * scale,
                STIFF * scale,
                "adjustable steel post, 100 to 1000 kip/in at 7 ft, over its height",
                PRACTICE);
    }
}
