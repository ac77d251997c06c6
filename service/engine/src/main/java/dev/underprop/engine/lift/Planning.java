package dev.underprop.engine.lift;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.JobPlan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Works out one lift plan. */
final class Planning {

    private static final double ROUNDING = 1e-9;

    /** A force that counts as none (N). */
    private static final double NOTHING = 1;

    private final LiftRequest request;
    private final StudiedFloor study;
    private final LiftFloor floor;
    private final Wanted wanted;
    private final Sag sag;
    private final Screws screws;
    private LiftFloor asked;

    Planning(JobPlan plan, LiftRequest request, Halt halt) {
        this.request = request;
        this.wanted = new Wanted(plan, request);
        if (!wanted.misfits().isEmpty()) {
            throw new IllegalArgumentException("the request does not fit its plan: " + wanted.misfits());
        }
        this.study = StudiedFloor.of(plan, wanted.jacks(), halt);
        this.sag = new Sag(study, request.survey());
        this.floor = new LiftFloor(study, request.during(), sag, request.crept(), request.jacks());
        this.screws = new Screws(request.screws(), request.limits());
        this.asked = floor;
    }

    LiftPlan plan() {
        if (!floor.stands()) {
            return unstable("the floor does not stand on its bearings alone: " + floor.moves());
        }
        Shape snug = floor.at(new double[wanted.posts().size()]);
        if (!snug.stands()) {
            return unstable("the floor does not stand on its snug shores: " + snug.moves());
        }
        Begun begun = new Begun(floor, new Levels(floor, request.survey().points()), request, wanted);
        Run.Start sure = start(request, floor, begun);
        if (!begun.stop().isEmpty()) {
            return stopped(begun.stop(), begun, sure);
        }
        if (!sure.course().stands()) {
            return unstable("the floor does not stand safely where the lift begins: "
                    + sure.course().words());
        }
        Run.Start start = begun.doubts().isEmpty() ? sure : start(request, floor.doubting(begun.doubts()), begun);
        this.asked = start.floor();
        String unbounded = begun.doubts().isEmpty() ? "" : new Doubts(begun).unbounded(sure, start);
        return unbounded.isEmpty() ? searched(start, begun) : stopped(unbounded, begun, sure);
    }

    private LiftPlan searched(Run.Start start, Begun begun) {
        Levels levels = new Levels(start.floor(), request.survey().points());
        Steps steps = new Steps(request, wanted, screws, begun);
        Run run = new Run(start, request, levels, new BitSet());
        run.go(steps.catchUp(), steps.possible());
        return run.givenUp()
                ? stopped(
                        "the search for turns was given up: the job is too large for one answer; divide it, or state"
                                + " coarser turns",
                        begun,
                        start)
                : written(run, steps, start, begun, levels);
    }

    /** Where the lift begins, under a request that may differ from the one asked. */
    private Run.Start start(LiftRequest request, LiftFloor floor, Begun begun) {
        Shape shape = floor.at(begun.raised());
        boolean[] carried = new boolean[begun.raised().length];
        for (int p = 0; shape.stands() && p < carried.length; p++) {
            carried[p] = shape.force(floor.heads().get(p).contact()).greatest() > NOTHING;
        }
        Gauges gauges = new Gauges(floor, request, request.during(), carried);
        return Run.Start.of(floor, gauges, begun.raised(), begun.turned(), false);
    }

    /** The same start under a request with other screws. */
    Run.Start start(LiftRequest other, Run.Start start) {
        Gauges gauges =
                new Gauges(start.floor(), other, other.during(), start.gauges().carried());
        return Run.Start.of(start.floor(), gauges, start.course().raised(), start.turned(), false);
    }

    private LiftPlan unstable(String reason) {
        return none(LiftPlan.Outcome.UNSTABLE, reason, List.of(), List.of(), sag.unknown(), List.of());
    }

    /** Nobody turns a screw until what is said was looked at. */
    private LiftPlan stopped(String reason, Begun begun, Run.Start start) {
        List<String> open = new ArrayList<>(begun.open());
        open.addAll(new Unstated(request, sag).open());
        List<LiftPlan.PostCourse> posts = List.of();
        List<LiftPlan.PointCourse> points = List.of();
        if (start.course().stands()) {
            Levels levels = new Levels(start.floor(), request.survey().points());
            posts = posts(start.course(), begun);
            points = points(levels, start.course(), start.course(), begun);
        }
        return none(LiftPlan.Outcome.INCOMPLETE, reason, posts, points, open, begun.remarks());
    }

    private LiftPlan none(
            LiftPlan.Outcome outcome,
            String reason,
            List<LiftPlan.PostCourse> posts,
            List<LiftPlan.PointCourse> points,
            List<String> open,
            List<LiftPlan.Remark> remarks) {
        return new LiftPlan(
                outcome,
                reason,
                posts,
                points,
                List.of(),
                new LiftPlan.Count(0, 0, 0, ""),
                List.of(),
                open,
                remarks,
                new LiftPlan.NoObstacle(),
                new LiftPlan.Stay(),
                basis());
    }

    private LiftPlan written(Run run, Steps steps, Run.Start start, Begun begun, Levels levels) {
        LiftPlan.Obstacle obstacle = run.stopped()
                ? also(new Help(this, start, levels).stopped(run, steps), steps)
                : steps.obstacle(request);
        List<LiftPlan.PostCourse> posts = posts(run.course(), begun);
        boolean whole = obstacle instanceof LiftPlan.NoObstacle;
        Set<String> open = new LinkedHashSet<>(begun.open());
        open.addAll(run.gauges().open());
        open.addAll(new Unstated(request, sag).open());
        LiftPlan.Release release = new LiftPlan.Stay();
        if (whole) {
            LettingDown down = new LettingDown(start.floor(), request, levels);
            release = down.release(run.course(), begun);
            open.addAll(down.open());
        }
        if (release instanceof LiftPlan.CannotLetDown held) {
            open.add("The floor cannot be let down onto what is built up: " + held.reason() + ".");
        }
        boolean asFar = request.target().asFar();
        LiftPlan.Outcome outcome = whole
                ? (open.isEmpty() ? LiftPlan.Outcome.PLANNED : LiftPlan.Outcome.INCOMPLETE)
                : asFar ? LiftPlan.Outcome.SHORT : LiftPlan.Outcome.IMPOSSIBLE;
        List<LiftPlan.Stage> stages = whole || asFar ? run.made() : List.of();
        Remarks remarks = new Remarks(request, wanted, begun);
        return new LiftPlan(
                outcome,
                "",
                posts,
                points(levels, start.course(), run.course(), begun),
                stages,
                count(run, steps, stages.size()),
                run.verdicts().broken(new Watch(start.floor(), start.gauges(), false).held(start.course())),
                List.copyOf(open),
                remarks.of(posts, stages, release),
                obstacle,
                release,
                basis());
    }

    /** Screws that are too short, or a total that is too small, stand in the way besides. */
    private LiftPlan.Stopped also(LiftPlan.Stopped stopped, Steps steps) {
        if (!(steps.obstacle(request) instanceof LiftPlan.Stopped besides)) {
            return stopped;
        }
        List<LiftPlan.Help> help = new ArrayList<>(stopped.help());
        help.addAll(besides.help());
        return new LiftPlan.Stopped(
                stopped.stage(),
                stopped.post(),
                stopped.raised(),
                stopped.limit(),
                stopped.value(),
                stopped.moves(),
                help);
    }

    private List<LiftPlan.PostCourse> posts(Course end, Begun begun) {
        List<LiftPlan.PostCourse> posts = new ArrayList<>();
        for (int p = 0; p < wanted.posts().size(); p++) {
            Wanted.OfPost post = wanted.posts().get(p);
            double raise = end.raised()[p] - begun.raised()[p];
            double turned = begun.turned()[p] + raise;
            double slack = begun.slack(p);
            posts.add(new LiftPlan.PostCourse(
                    post.name(),
                    post.now(),
                    post.target(),
                    post.raise() + (post.raise() > 0 ? slack : 0),
                    raise,
                    raise / screws.of(p).lead(),
                    post.post().height() + turned - post.post().gap(),
                    screws.of(p).travel() - turned));
        }
        return posts;
    }

    private List<LiftPlan.PointCourse> points(Levels levels, Course start, Course end, Begun begun) {
        List<Span> from = levels.at(start.shape());
        List<Span> to = levels.at(end.shape());
        List<LiftPlan.PointCourse> points = new ArrayList<>();
        for (int i = 0; i < from.size(); i++) {
            points.add(new LiftPlan.PointCourse(
                    request.survey().points().get(i),
                    wanted.targets().get(i),
                    from.get(i),
                    to.get(i),
                    begun.readings().isEmpty()
                            ? LiftPlan.Reading.NONE
                            : begun.readings().get(i)));
        }
        return points;
    }

    private LiftPlan.Count count(Run run, Steps steps, int stages) {
        double largest = 0;
        int least = 0;
        for (int p = 0; p < wanted.posts().size(); p++) {
            double raise = wanted.posts().get(p).raise();
            largest = Math.max(largest, raise);
            // Rounding may leave up to a smallest turn of it.
            double parts = (raise - screws.step(p)) / request.limits().stage();
            least = Math.max(least, (int) Math.ceil(parts - ROUNDING));
        }
        return new LiftPlan.Count(stages, least, largest, stages > least ? why(steps.possible(), run) : "");
    }

    private String why(int[] steps, Run run) {
        if (run.caughtUp()) {
            return "what has sunk is made up for first";
        }
        int count = run.stages(steps);
        for (int p = 0; p < steps.length; p++) {
            int most = screws.inStage(p);
            double inStage = most * screws.step(p);
            if (steps[p] > 0
                    && (steps[p] + most - 1) / most == count
                    && inStage < request.limits().stage() * (1 - ROUNDING)) {
                return "whole smallest turns of " + wanted.posts().get(p).name()
                        + " do not add up to the limit per stage";
            }
        }
        return "a raise rounded up to whole smallest turns, or a gap to be taken up first, is more than the raise of the"
                + " floor";
    }

    LiftPlan.Basis basis() {
        return new LiftPlan.Basis(
                study.gravity().stream().map(StudiedFloor.Gravity::name).toList(),
                asked.bounds().stream().map(LiftFloor.Bound::words).toList(),
                study.said(),
                asked.solved());
    }

    LiftRequest request() {
        return request;
    }

    Wanted wanted() {
        return wanted;
    }
}
