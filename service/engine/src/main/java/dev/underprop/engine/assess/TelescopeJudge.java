package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import java.util.ArrayList;
import java.util.List;

/** A telescopic post: what is declared of it decides whether it can be judged; the weakest of column, pin and thread rules. */
final class TelescopeJudge {

    private static final String LOCATOR =
            "E3 with the critical load of the stepped column, H1.1, J3, J4 and J7, second order at 1.6 of the load";

    static final Citation RULE = Citation.remembered("AISC", "360-16", LOCATOR);

    private TelescopeJudge() {}

    /** As {@link #judge(Telescope, double, double, double, Working)}, without a record. */
    static PostMethods.Ruling judge(Telescope post, double height, double load, double lean) {
        return judge(post, height, load, lean, Working.OFF);
    }

    /**
     * @param height between the pins (m), positive
     * @param load (N), not negative
     * @param lean of posts (rad), not negative
     */
    static PostMethods.Ruling judge(Telescope post, double height, double load, double lean, Working working) {
        String missing = missing(post);
        if (!missing.isEmpty()) {
            return new PostMethods.Ruling(
                    new CheckResult.NotChecked("of the telescopic post is not stated: " + missing), RULE);
        }
        double below = post.outerLength() + (post.thread() instanceof Telescope.Screw screw ? screw.exposed() : 0);
        if (!(height > below)) {
            return new PostMethods.Ruling(
                    new CheckResult.NotChecked(
                            "the outer tube and the screw of the telescopic post reach the height of the post alone"),
                    RULE);
        }
        return judge(
                post,
                (Telescope.Pin) post.pin(),
                new TelescopeColumn(post, (Telescope.Pin) post.pin(), height, lean),
                load,
                working);
    }

    private static PostMethods.Ruling judge(
            Telescope post, Telescope.Pin pin, TelescopeColumn column, double load, Working working) {
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        String refusal = holes(post, pin);
        if (refusal.isEmpty()) {
            refusal = column.refusal();
        }
        if (!refusal.isEmpty()) {
            CheckResult.Finding refused = new CheckResult.Refused(Measure.FORCE, load, refusal);
            return new PostMethods.Ruling(working.compared("P", "", refused), RULE);
        }
        List<PinJoint.Limit> limits = new ArrayList<>();
        limits.add(column.limit());
        column.tell(limits.get(0).capacity(), working);
        limits.addAll(PinJoint.pin(post, pin, working));
        boolean threaded = post.thread() instanceof Telescope.Screw;
        if (post.thread() instanceof Telescope.Screw screw) {
            limits.add(PinJoint.thread(screw, working));
        }
        PinJoint.Limit least = limits.stream()
                .reduce((one, other) -> one.capacity() <= other.capacity() ? one : other)
                .orElseThrow();
        String all = threaded ? "min( Pm , P1 , P2 , P3 , P4 , P5 )" : "min( Pm , P1 , P2 , P3 , P4 )";
        working.step("Pa", "allowed, the least of them", Dimension.FORCE, least.capacity(), all);
        return new PostMethods.Ruling(
                working.compared("P", "Pa", new CheckResult.Judged(Measure.FORCE, load, least.capacity())),
                Citation.remembered("AISC", "360-16", LOCATOR + "; first comes " + least.name()));
    }

    /** A hole that takes half of a tube's width leaves nothing that these rules cover; a choice, no standard's. */
    private static String holes(Telescope post, Telescope.Pin pin) {
        double narrow = post.inner().tube().diameter();
        return pin.hole() > narrow / 2 ? "the pin's holes are wider than half of the inner tube" : "";
    }

    private static String missing(Telescope post) {
        List<String> missing = new ArrayList<>();
        if (Double.isNaN(post.outer().yield())) {
            missing.add("the yield stress of the outer tube (declare: yieldStress)");
        }
        if (Double.isNaN(post.inner().yield())) {
            missing.add("the yield stress of the inner tube (declare: yieldStress)");
        }
        if (post.pin() instanceof Telescope.NoPin) {
            missing.add("the pin (declare: pin)");
        }
        if (post.thread() instanceof Telescope.UnstatedScrew) {
            missing.add("the screw, or that there is none (declare: screw)");
        }
        return String.join(", ", missing);
    }
}
