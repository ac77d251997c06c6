package dev.underprop.engine.sizing;

import dev.underprop.engine.pad.PadChecks.Standing;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;

/**
 * A post that wants a pad.
 *
 * @param post the post; what it stands on now does not count
 * @param shore name of its shore, empty where posts are given by their loads alone
 * @param y of its shore (m)
 * @param load greatest loads
 * @param least least load (N), not negative
 */
public record Loaded(Post post, String shore, double y, PadLoad load, double least) {

    /** On a pad. @param nearest distance to the nearest other post (m), infinite where there is none */
    Standing on(Pad pad, double nearest) {
        return new Standing(with(pad), y, load, least, nearest);
    }

    /** The post on another footing. */
    public Post with(Post.Footing footing) {
        return new Post(
                post.name(),
                post.x(),
                post.height(),
                post.stiffness(),
                post.gap(),
                post.lift(),
                post.type(),
                footing,
                post.ends());
    }

    /** The same post under a part of its load. */
    Loaded under(double part) {
        PadLoad less = new PadLoad(load.greatest() * part, load.factored() * part, load.lean(), load.foot());
        return new Loaded(post, shore, y, less, least * part);
    }

    /** The same post under the worse of its loads and others. */
    Loaded worse(Loaded other) {
        PadLoad most = new PadLoad(
                Math.max(load.greatest(), other.load.greatest()),
                Math.max(load.factored(), other.load.factored()),
                Math.max(load.lean(), other.load.lean()),
                load.foot().further(other.load.foot()));
        return new Loaded(post, shore, y, most, Math.min(least, other.least));
    }

    /** Distance in plan (m). */
    double apart(Loaded other) {
        double along = post.x() - other.post.x();
        double across = y - other.y;
        return Math.sqrt(along * along + across * across);
    }
}
