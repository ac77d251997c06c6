package dev.underprop.engine.lift;

import dev.underprop.engine.clause.powerscrew.Thread;
import dev.underprop.engine.lift.LiftPlan.Remark;
import java.util.ArrayList;
import java.util.List;

/** What a crew and its engineer must know besides the turns. */
final class Remarks {

    /** Lengths below this are rounding of numbers, not of turns (m). */
    private static final double NOTHING = 1e-9;

    private final LiftRequest request;
    private final Wanted wanted;
    private final Begun begun;

    Remarks(LiftRequest request, Wanted wanted, Begun begun) {
        this.request = request;
        this.wanted = wanted;
        this.begun = begun;
    }

    List<Remark> of(List<LiftPlan.PostCourse> posts, List<LiftPlan.Stage> stages, LiftPlan.Release release) {
        List<Remark> remarks = new ArrayList<>(begun.remarks());
        for (int p = 0; p < posts.size(); p++) {
            LiftPlan.PostCourse post = posts.get(p);
            Wanted.OfPost asked = wanted.posts().get(p);
            if (asked.moves() && asked.now() > asked.target() + NOTHING) {
                remarks.add(new Remark(
                        Remark.Kind.TARGET,
                        post.name(),
                        "the floor over it stands above its target already; it is left where it is"));
            }
            if (!stages.isEmpty() && Math.abs(post.left()) > NOTHING && Math.abs(post.left()) <= step(p)) {
                remarks.add(new Remark(
                        Remark.Kind.ROUNDING,
                        post.name(),
                        "its raise is rounded to whole smallest turns of its screw"));
            }
            if (!stages.isEmpty() && post.planned() == 0 && !asked.post().ends().fastened()) {
                remarks.add(new Remark(
                        Remark.Kind.TARGET,
                        post.name(),
                        "it is not raised, and the floor may leave it: after every turn see whether it still stands tight,"
                                + " and fasten it, or take it away where it carries nothing"));
            }
            addScrew(p, post.name(), remarks);
        }
        addPulls(stages, "", remarks);
        if (release instanceof LiftPlan.LetDown down) {
            addPulls(down.stages(), " when it is let down", remarks);
        }
        return remarks;
    }

    private double step(int post) {
        return request.screws().get(post).step();
    }

    private void addScrew(int p, String name, List<Remark> remarks) {
        LiftScrew screw = request.screws().get(p);
        LiftScrew.Rubbing rubbing = screw.thread();
        if (rubbing.stated()
                && !new Thread(rubbing.mean(), screw.lead(), rubbing.halfAngle()).selfLocking(rubbing.least())) {
            remarks.add(
                    new Remark(
                            Remark.Kind.SCREW,
                            name,
                            "at its least friction the load turns the screw back by itself: it must be locked after every turn"));
        }
    }

    private void addPulls(List<LiftPlan.Stage> stages, String when, List<Remark> remarks) {
        for (int p = 0; p < wanted.posts().size(); p++) {
            int post = p;
            double most = stages.stream()
                    .flatMap(s -> s.turns().stream())
                    .filter(t -> t.post() == post && t.pull().known())
                    .mapToDouble(t -> Math.max(
                            Math.abs(t.pull().least()), Math.abs(t.pull().greatest())))
                    .max()
                    .orElse(0);
            double allowed = request.screws().get(p).pull();
            if (most > allowed) {
                remarks.add(new Remark(
                        Remark.Kind.WRENCH,
                        wanted.posts().get(p).name(),
                        "the pull on the wrench may be more than one person is to be asked for" + when
                                + ": use a longer wrench, or take load off the screw"));
            }
        }
    }
}
