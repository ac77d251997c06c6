package dev.underprop.engine.sizing;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.soil.Stress;
import java.util.ArrayList;
import java.util.List;

/**
 * What all other proposed pads together add below the middle of one, at the depth at which they add most.
 *
 * @param post its name
 * @param depth below the pads (m)
 * @param own stress of its own load there (Pa)
 * @param added stress of all others there (Pa)
 * @param pressure of its own load right under its pad (Pa)
 * @param allowed what the ground is allowed to take right under the pad (Pa), NaN where that is not known
 */
public record Below(String post, double depth, double own, double added, double pressure, double allowed) {

    /** A load aside adds most at so many times its distance: where the point load of Boussinesq does, root 3/2. */
    private static final double DEEPEST = Math.sqrt(1.5);

    /** A pad further off than so many times its size presses like a point (m/m): within a part in a hundred. */
    private static final double FAR = 4;

    static List<Below> of(List<PostSizing> posts) {
        List<Below> list = new ArrayList<>();
        List<PostSizing> made =
                posts.stream().filter(p -> !p.proposals().isEmpty()).toList();
        for (PostSizing one : made) {
            if (made.size() > 1) {
                list.add(of(one, made));
            }
        }
        return list;
    }

    private static Below of(PostSizing one, List<PostSizing> all) {
        double depth = 0;
        double most = -1;
        for (PostSizing other : all) {
            double z = other == one ? 0 : DEEPEST * one.post().apart(other.post());
            double added = z > 0 ? added(one, all, z) : -1;
            depth = added > most ? z : depth;
            most = Math.max(most, added);
        }
        Pad pad = pad(one);
        double pressure = one.post().load().greatest() / pad.area();
        double own = depth > 0 ? pressure * Stress.share(pad.along(), pad.across(), 0, 0, depth) : pressure;
        return new Below(one.post().post().name(), depth, own, Math.max(0, most), pressure, allowed(one));
    }

    private static double added(PostSizing one, List<PostSizing> all, double depth) {
        double sum = 0;
        for (PostSizing other : all) {
            sum += other == one ? 0 : added(one, other, depth);
        }
        return sum;
    }

    private static double added(PostSizing one, PostSizing other, double depth) {
        Pad near = pad(other);
        double force = other.post().load().greatest();
        double apart = one.post().apart(other.post());
        if (apart > FAR * Math.max(near.along(), near.across())) {
            return Stress.point(force, apart, depth).value();
        }
        double x = one.post().post().x() - other.post().post().x();
        double y = one.post().y() - other.post().y();
        return force / near.area() * Stress.share(near.along(), near.across(), x, y, depth);
    }

    private static Pad pad(PostSizing post) {
        return post.proposals().get(0).trial().candidate().pad();
    }

    private static double allowed(PostSizing post) {
        return post.proposals().get(0).checks().stream()
                .filter(c -> c.id() == CheckId.PAD_SOIL_BEARING && c.finding() instanceof CheckResult.Judged)
                .mapToDouble(c -> ((CheckResult.Judged) c.finding()).capacity())
                .findFirst()
                .orElse(Double.NaN);
    }
}
