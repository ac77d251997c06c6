package dev.underprop.engine.lift;

import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.pad.PadOverlap;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What every post is asked for, from levels and targets at points on the line of its shore. */
final class Wanted {

    /** A jack nearer than this to a post stands in the same place (m). */
    private static final double SAME_PLACE = 1e-3;

    private final List<Misfit> misfits = new ArrayList<>();
    private final List<StudiedFloor.Jack> jacks = new ArrayList<>();
    private final List<OfPost> posts = new ArrayList<>();
    private final List<Double> targets;

    /**
     * One post.
     *
     * @param name in the plan's names
     * @param post as planned
     * @param found level over it as found (m), NaN where it is not asked to move
     * @param now level over it when this plan begins (m)
     * @param target level there (m), NaN where it is not asked to move
     */
    record OfPost(String name, Post post, double found, double now, double target) {
        boolean moves() {
            return !Double.isNaN(target);
        }

        /** Raise that brings it to its target (m); 0 where it is above, or not asked to move. */
        double raise() {
            return moves() ? Math.max(0, target - now) : 0;
        }
    }

    Wanted(JobPlan plan, LiftRequest request) {
        List<LiftRequest.Point> points = request.survey().points();
        this.targets = targets(request);
        for (int i = 0; i < points.size(); i++) {
            if (!Levels.onFloor(plan, points.get(i).x(), points.get(i).y())) {
                misfits.add(new Misfit.OffFloor(i));
            }
        }
        for (Shore shore : plan.shores()) {
            Line found = new Line(
                    points,
                    shore.y(),
                    points.stream().map(LiftRequest.Point::level).toList());
            Line now = new Line(points, shore.y(), now(request));
            Line target = new Line(points, shore.y(), targets);
            double y = shore.y();
            shore.posts().forEach(post -> {
                double plane = request.target().plane().at(post.x(), y);
                OptionalDouble own = target.at(post.x());
                OptionalDouble wanted = own.isEmpty() && !Double.isNaN(plane) ? OptionalDouble.of(plane) : own;
                add(post, found.at(post.x()), now.at(post.x()), wanted);
            });
        }
        Screws screws = new Screws(request.screws(), request.limits());
        boolean down = !request.after().onto().isEmpty();
        for (int p = 0; p < posts.size(); p++) {
            if ((down || posts.get(p).raise() > 0) && !screws.fineEnough(p)) {
                misfits.add(new Misfit.TooCoarse(p, posts.get(p).name(), screws.step(p), screws.atMost()));
            }
        }
        if (request.byJacks()) {
            jacks(plan, request, down);
        }
        if (posts.stream().noneMatch(OfPost::moves) && misfits.isEmpty()) {
            misfits.add(new Misfit.NoTarget());
        }
    }

    private void jacks(JobPlan plan, LiftRequest request, boolean down) {
        for (int p = 0; p < posts.size(); p++) {
            int post = p;
            if ((down || posts.get(p).raise() > 0) && request.jacks().stream().noneMatch(j -> j.post() == post)) {
                misfits.add(new Misfit.NoJack(p, posts.get(p).name()));
            }
        }
        for (int j = 0; j < request.jacks().size(); j++) {
            LiftRequest.Jack jack = request.jacks().get(j);
            int of = shoreOf(plan, jack.post());
            jacks.add(new StudiedFloor.Jack(of, jack.stand()));
            double y = plan.shores().get(of).y();
            double x = jack.stand().x();
            if (x < plan.shores().get(of).start() || x > plan.shores().get(of).end()) {
                misfits.add(new Misfit.JackOffBeam(j, jack.stand().name()));
            }
            for (int k = 0; k < j; k++) {
                Post other = request.jacks().get(k).stand();
                if (jacks.get(k).shore() == of && Math.abs(other.x() - x) < SAME_PLACE) {
                    misfits.add(new Misfit.JackInTheWay(j, jack.stand().name(), other.name()));
                }
            }
            PadOverlap.Placed here = new PadOverlap.Placed(jack.stand(), y, 0);
            for (Shore shore : plan.shores()) {
                for (Post post : shore.posts()) {
                    boolean same = shore.y() == y && Math.abs(post.x() - x) < SAME_PLACE;
                    if (same || PadOverlap.overlap(here, new PadOverlap.Placed(post, shore.y(), 0))) {
                        misfits.add(new Misfit.JackInTheWay(j, jack.stand().name(), post.name()));
                    }
                }
            }
        }
    }

    private static int shoreOf(JobPlan plan, int post) {
        int left = post;
        for (int s = 0; s < plan.shores().size(); s++) {
            left -= plan.shores().get(s).posts().size();
            if (left < 0) {
                return s;
            }
        }
        throw new IllegalArgumentException("a jack beside a post that is not there");
    }

    /** The jacks, each under the shore of its post. */
    List<StudiedFloor.Jack> jacks() {
        return jacks;
    }

    private void add(Post post, OptionalDouble found, OptionalDouble now, OptionalDouble target) {
        if (target.isPresent() && now.isEmpty()) {
            misfits.add(new Misfit.NoLevel(posts.size(), post.name(), found.isPresent()));
        }
        posts.add(new OfPost(
                post.name(),
                post,
                found.orElse(Double.NaN),
                now.orElse(Double.NaN),
                now.isPresent() ? target.orElse(Double.NaN) : Double.NaN));
    }

    private static List<Double> targets(LiftRequest request) {
        return request.survey().points().stream()
                .map(p -> Double.isNaN(p.target()) ? request.target().plane().at(p.x(), p.y()) : p.target())
                .toList();
    }

    private static List<Double> now(LiftRequest request) {
        return request.progress().begun()
                ? request.progress().readings()
                : request.survey().points().stream()
                        .map(LiftRequest.Point::level)
                        .toList();
    }

    List<Misfit> misfits() {
        return misfits;
    }

    List<OfPost> posts() {
        return posts;
    }

    /** Target of every point (m), NaN where it has none. */
    List<Double> targets() {
        return targets;
    }
}
