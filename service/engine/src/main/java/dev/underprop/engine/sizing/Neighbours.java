package dev.underprop.engine.sizing;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.pad.PadOverlap;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.soil.Stress;
import java.util.ArrayList;
import java.util.List;

/**
 * Two pads that press on the same ground.
 *
 * @param one name of a post
 * @param other name of the other
 * @param apart clear distance of their proposed pads (m), 0 where they touch or overlap
 * @param depth below the pads at which the stress is compared, the breadth of the pad of the first post (m)
 * @param share stress that the other pad adds below the middle of the first, over that of its own
 * @param combined one pad for both, where they touch; else none
 */
public record Neighbours(String one, String other, double apart, double depth, double share, List<Combined> combined) {

    /** Less than this is not told: common practice, no source. */
    private static final double TOLD = 0.1;

    public Neighbours {
        combined = List.copyOf(combined);
    }

    /**
     * A pad for two posts, its middle where their loads meet, so that the pressure is even. Only its size on the ground was worked
     * out: it bends between the posts, and that is for an engineer.
     *
     * @param names of both posts
     * @param x of its middle (m)
     * @param y of its middle (m)
     * @param along size in x (m)
     * @param across size in y (m)
     * @param load both loads (N)
     */
    public record Combined(List<String> names, double x, double y, double along, double across, double load) {
        public Combined {
            names = List.copyOf(names);
        }

        /** What was not worked out of it, each by name. */
        public List<CheckResult> open() {
            String both = "one pad for " + String.join(" and ", names);
            return List.of(
                    not(CheckId.PAD_STRENGTH, both, "how a pad under two posts bends between them is not worked out"),
                    not(CheckId.PAD_ECCENTRICITY, both, "two loads off the middle of one pad are not worked out"),
                    not(CheckId.PAD_SETTLEMENT, both, "how a pad under two posts settles and tilts is not worked out"));
        }

        private static CheckResult not(CheckId id, String place, String reason) {
            return new CheckResult(
                    id, place, new CheckResult.NotChecked(reason), new CheckResult.NoCase(), PadOverlap.citation());
        }
    }

    static List<Neighbours> of(List<PostSizing> posts) {
        List<Neighbours> list = new ArrayList<>();
        for (PostSizing one : posts) {
            for (PostSizing other : posts) {
                if (one != other
                        && !one.proposals().isEmpty()
                        && !other.proposals().isEmpty()) {
                    Neighbours pair = of(one, other);
                    boolean first = posts.indexOf(one) < posts.indexOf(other);
                    if (pair.share > TOLD || first && !pair.combined.isEmpty()) {
                        list.add(pair);
                    }
                }
            }
        }
        return list;
    }

    private static Neighbours of(PostSizing one, PostSizing other) {
        Pad pad = pad(one);
        Pad near = pad(other);
        double x = one.post().post().x() - other.post().post().x();
        double y = one.post().y() - other.post().y();
        double depth = Math.min(pad.along(), pad.across());
        double own = pressure(one, pad) * Stress.share(pad.along(), pad.across(), 0, 0, depth);
        double added = pressure(other, near) * Stress.share(near.along(), near.across(), x, y, depth);
        double along = Math.max(0, Math.abs(x) - (pad.along() + near.along()) / 2);
        double across = Math.max(0, Math.abs(y) - (pad.across() + near.across()) / 2);
        boolean touch = PadOverlap.overlap(placed(one), placed(other));
        return new Neighbours(
                one.post().post().name(),
                other.post().post().name(),
                touch ? 0 : Math.sqrt(along * along + across * across),
                depth,
                own > 0 ? added / own : 0,
                touch ? List.of(combined(one, other)) : List.of());
    }

    private static PadOverlap.Placed placed(PostSizing post) {
        return post.proposals().get(0).trial().standing().placed();
    }

    private static Pad pad(PostSizing post) {
        return post.proposals().get(0).trial().candidate().pad();
    }

    private static double pressure(PostSizing post, Pad pad) {
        return post.post().load().greatest() / pad.area();
    }

    private static Combined combined(PostSizing one, PostSizing other) {
        double p = one.post().load().greatest();
        double q = other.post().load().greatest();
        double x = (p * one.post().post().x() + q * other.post().post().x()) / (p + q);
        double y = (p * one.post().y() + q * other.post().y()) / (p + q);
        double along = 2
                * Math.max(
                        reach(x, one.post().post().x(), pad(one).along()),
                        reach(x, other.post().post().x(), pad(other).along()));
        double across = 2
                * Math.max(
                        reach(y, one.post().y(), pad(one).across()),
                        reach(y, other.post().y(), pad(other).across()));
        double wanted = pad(one).area() + pad(other).area();
        double wide = Math.max(across, wanted / along);
        return new Combined(
                List.of(one.post().post().name(), other.post().post().name()), x, y, along, wide, p + q);
    }

    private static double reach(double middle, double post, double size) {
        return Math.abs(post - middle) + size / 2;
    }
}
