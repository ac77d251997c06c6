package dev.underprop.engine.lift;

import java.util.List;

/** How many smallest turns every post is to make, and how many its screw and the limit of the total allow. */
final class Steps {

    private static final double ROUNDING = 1e-9;

    private final Screws screws;
    private final int[] asked;
    private final int[] possible;
    private final int[] catchUp;
    private final double[] turned;
    private int stopped = -1;
    private Limit limit = new Limit(Limit.Kind.TRAVEL, "", 0);
    private double value;

    Steps(LiftRequest request, Wanted wanted, Screws screws, Begun begun) {
        this.screws = screws;
        this.turned = begun.turned();
        int posts = wanted.posts().size();
        this.asked = new int[posts];
        this.possible = new int[posts];
        this.catchUp = new int[posts];
        for (int p = 0; p < posts; p++) {
            Wanted.OfPost post = wanted.posts().get(p);
            if (post.raise() > 0) {
                double slack = begun.slack(p);
                double before = post.now() - post.found();
                asked[p] = screws.nearest(p, post.raise() + slack);
                double total = request.limits().total();
                boolean over =
                        !Double.isNaN(total) && before + asked[p] * screws.step(p) - slack > total * (1 + ROUNDING);
                if (over && before + post.raise() <= total * (1 + ROUNDING)) {
                    asked[p] = screws.within(p, total - before + slack);
                }
                possible[p] = asked[p];
                within(p, Limit.Kind.TOTAL, post.name(), total, before - slack);
                within(p, Limit.Kind.TRAVEL, post.name(), screws.of(p).travel(), turned[p]);
                catchUp[p] = Math.min(possible[p], screws.nearest(p, begun.sunk()[p]));
            }
        }
    }

    private void within(int p, Limit.Kind kind, String name, double allowed, double already) {
        if (Double.isNaN(allowed)) {
            return;
        }
        int most = Math.max(0, screws.within(p, allowed - already));
        if (asked[p] > most) {
            possible[p] = Math.min(possible[p], most);
            if (stopped < 0) {
                stopped = p;
                limit = new Limit(kind, name, allowed);
                value = already + asked[p] * screws.step(p);
            }
        }
    }

    /** The part of them that makes up for what has sunk. */
    int[] catchUp() {
        return catchUp.clone();
    }

    /** As far as screws and the limit of the total go. */
    int[] possible() {
        return possible.clone();
    }

    /** What stands in the way before anything else does. */
    LiftPlan.Obstacle obstacle(LiftRequest request) {
        if (stopped < 0) {
            return new LiftPlan.NoObstacle();
        }
        String words = limit.kind() == Limit.Kind.TOTAL
                ? "allow a greater total raise, or a lower target"
                : "give the post more travel: a longer screw, or packing under it while its load is held otherwise";
        return new LiftPlan.Stopped(
                1,
                limit.place(),
                turned[stopped] + possible[stopped] * screws.step(stopped),
                limit,
                value,
                "",
                List.of(new LiftPlan.Help(words, limit, value)));
    }
}
