package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.pad.GroundStiffness;
import dev.underprop.engine.pad.PostStiffness;
import dev.underprop.engine.pad.Spring;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How stiff posts and ground may be: rigid, soft and stiff. What the plan states by a range holds; a single value is known no
 * better than within a factor of three; where nothing is stated, named ranges of post and ground in series.
 *
 * @param stiffness for each bound that differs from the others, stiffness (N/m) of every post's contact, NaN elsewhere
 * @param said what was taken that the plan does not state, in words
 */
record PostBounds(Map<Give, double[]> stiffness, List<String> said) {

    /** Half the range of a single value: three in all. Common practice, no source. */
    private static final double SPREAD = Math.sqrt(3);

    static PostBounds of(PlanFrame frame) {
        Map<Give, double[]> stiffness = new EnumMap<>(Give.class);
        Set<String> said = new LinkedHashSet<>();
        stiffness.put(Give.RIGID, of(frame, Give.RIGID, said));
        double[] soft = of(frame, Give.SOFT, said);
        double[] stiff = of(frame, Give.STIFF, said);
        if (gives(soft)) {
            stiffness.put(Give.SOFT, soft);
        }
        if (gives(stiff) && !java.util.Arrays.equals(soft, stiff)) {
            stiffness.put(Give.STIFF, stiff);
        }
        return new PostBounds(stiffness, new ArrayList<>(said));
    }

    private static boolean gives(double[] stiffness) {
        return java.util.Arrays.stream(stiffness).anyMatch(Double::isFinite);
    }

    private static double[] of(PlanFrame frame, Give give, Set<String> said) {
        double[] stiffness = new double[frame.contacts()];
        java.util.Arrays.fill(stiffness, Double.NaN);
        for (int c = 0; c < stiffness.length; c++) {
            if (frame.places().get(c) instanceof ContactPlace.OnPost head) {
                Post post = frame.plan().shores().get(head.shore()).posts().get(head.post());
                stiffness[c] =
                        give == Give.RIGID ? Double.POSITIVE_INFINITY : of(frame.plan(), post, give == Give.SOFT, said);
            }
        }
        return stiffness;
    }

    private static double of(JobPlan plan, Post post, boolean soft, Set<String> said) {
        if (post.stiffness() instanceof Post.Rigid) {
            return Double.POSITIVE_INFINITY;
        }
        if (post.stiffness() instanceof Post.Between range) {
            return soft ? range.soft() : range.stiff();
        }
        if (post.stiffness() instanceof Post.About about) {
            said.add(
                    "A stiffness of posts given by one value is known within a factor of three: it is taken divided and"
                            + " multiplied by the square root of three (common practice, no source), and as rigid.");
            return soft ? about.value() / SPREAD : about.value() * SPREAD;
        }
        return byRange(plan, post, soft, said);
    }

    private static double byRange(JobPlan plan, Post post, boolean soft, Set<String> said) {
        Spring steel = PostStiffness.of(post);
        if (!(post.footing() instanceof Pad pad)) {
            said.add(
                    "Posts of whose stiffness and pad nothing is stated are taken as rigid, and between the soft and stiff"
                            + " end of this range alone: " + steel.name() + " ("
                            + steel.citation().document() + ").");
            return soft ? steel.soft() : steel.stiff();
        }
        Spring ground = GroundStiffness.of(plan.ground(), pad);
        said.add(
                "Posts of whose stiffness nothing is stated are taken as rigid, and between the soft and stiff end of two"
                        + " ranges in series: " + steel.name() + " ("
                        + steel.citation().document() + "); " + ground.name()
                        + " (" + ground.citation().text() + ").");
        return soft ? steel.softOn(ground) : steel.stiffOn(ground);
    }
}
