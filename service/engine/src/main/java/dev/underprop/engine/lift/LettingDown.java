package dev.underprop.engine.lift;

import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Securing and striking: bearings are built up snug to the raised floor, then the posts are let down turn by turn until no
 * joist rests on a shore under dead load in any bound, and taken out. The lift backwards, by the same rules.
 */
final class LettingDown {

    /** Nobody lets a floor down further than this to free a post, 3 in (m). */
    private static final double FURTHEST = 3 * 0.0254;

    /** A force that counts as none (N). */
    private static final double NOTHING = 1;

    private final LiftFloor floor;
    private final LiftRequest request;
    private final Levels levels;
    private final Screws screws;
    private final Set<String> open = new LinkedHashSet<>();

    LettingDown(LiftFloor floor, LiftRequest request, Levels levels) {
        this.floor = floor;
        this.request = request;
        this.levels = levels;
        this.screws = new Screws(request.screws(), request.limits());
    }

    /** What could not be checked of it and why, in words, once it was worked out. */
    Set<String> open() {
        return open;
    }

    LiftPlan.Release release(Course up, Begun begun) {
        List<Integer> onto = request.after().onto();
        if (onto.isEmpty()) {
            return new LiftPlan.Stay();
        }
        StudiedFloor study = floor.study();
        Situation after = without(request.during(), onto);
        List<Integer> contacts = new ArrayList<>();
        for (int c = 0; c < study.places().size(); c++) {
            if (study.places().get(c) instanceof ContactPlace.OnBearing seat && onto.contains(seat.bearing())) {
                contacts.add(c);
            }
        }
        LiftFloor secured = floor.builtUp(contacts, up.shape(), after);
        String bare = bare(secured.withoutShores(after), after, up.raised());
        if (!bare.isEmpty()) {
            return new LiftPlan.CannotLetDown("once the posts are gone, " + bare);
        }
        double[] turned = new double[up.raised().length];
        for (int p = 0; p < turned.length; p++) {
            turned[p] = begun.turned()[p] + up.raised()[p] - begun.raised()[p];
        }
        LiftRequest looser = request.with(request.limits().leaving(onto));
        Gauges gauges = new Gauges(secured, looser, after, new boolean[turned.length]);
        Run.Start start = Run.Start.of(secured, gauges, up.raised(), turned, true);
        if (!start.course().stands()) {
            return new LiftPlan.CannotLetDown(start.course().words());
        }
        int[] steps = free(secured, up.raised());
        if (steps.length == 0) {
            return new LiftPlan.CannotLetDown("even 3 in lower, posts still carry part of the floor");
        }
        Run run = new Run(start, request, levels, new BitSet());
        run.go(new int[steps.length], steps);
        open.addAll(gauges.open());
        return run.stopped() ? cannot(run) : down(run, onto, steps);
    }

    /** What the floor breaks without its shores, under every pattern of live load and bound; empty where it stands safely. */
    private String bare(LiftFloor bare, Situation after, double[] raised) {
        Gauges gauges = new Gauges(bare, request, after, new boolean[raised.length]);
        Watch watch = new Watch(bare, gauges, true);
        Course course = watch.held(watch.turned(Course.of(bare, gauges, raised, true)));
        open.addAll(gauges.open());
        if (!course.stands()) {
            return course.words();
        }
        Verdicts verdicts = new Verdicts(gauges.limits(), new BitSet());
        return verdicts.broken(course).stream()
                .reduce(Verdicts::worse)
                .map(LettingDown::beyond)
                .orElse("");
    }

    private static String beyond(LiftPlan.Running broken) {
        return "a limit is broken: " + words(broken.limit()) + ", " + StrictMath.round(100 * broken.used())
                + " % of what is allowed";
    }

    private LiftPlan.Release down(Run run, List<Integer> onto, int[] steps) {
        List<String> names = onto.stream()
                .map(b -> floor.study().plan().floor().bearings().get(b).name())
                .toList();
        List<Double> lowered = new ArrayList<>();
        for (int p = 0; p < steps.length; p++) {
            lowered.add(steps[p] * screws.step(p));
        }
        return new LiftPlan.LetDown(
                names, lowered, run.made(), levels.at(run.course().shape()));
    }

    private LiftPlan.CannotLetDown cannot(Run run) {
        if (run.givenUp()) {
            return new LiftPlan.CannotLetDown("the search for turns was given up: the job is too large for one answer");
        }
        Stager.Refusal refusal = run.refusal();
        String post = floor.study().name(floor.heads().get(refusal.post()).contact());
        if (refusal.limit() < 0) {
            String moves = refusal.after().stands()
                    ? "the order of turns leaves no way on"
                    : refusal.after().words();
            return new LiftPlan.CannotLetDown("letting down " + post + ": " + moves);
        }
        Limit limit = run.gauges().limits().get(refusal.limit());
        double value = refusal.after().values()[refusal.limit()];
        return new LiftPlan.CannotLetDown("letting down " + post + " would break a limit: " + words(limit) + ", "
                + StrictMath.round(100 * limit.used(value)) + " % of what is allowed");
    }

    static String words(Limit limit) {
        return switch (limit.kind()) {
            case POST -> "load of post " + limit.place();
            case PAD -> "ground under the pad of " + limit.place();
            case BEAM -> "bending or shear of " + limit.place();
            case JOIST -> "bending or shear of joist " + limit.place();
            case CONTACT -> "clear space at " + limit.place();
            case TIE -> "pull on the fastening of " + limit.place();
            case SLACK -> "clear space over post " + limit.place();
            case SLOPE -> "change of slope from " + limit.place();
            case TRAVEL -> "travel of the screw of " + limit.place();
            case TOTAL -> "raise of " + limit.place();
        };
    }

    /** Fewest smallest turns down, the same length for all posts, after which no joist rests on a shore; empty if none. */
    private int[] free(LiftFloor secured, double[] raised) {
        double high = 0.0254 / 16;
        while (high < FURTHEST && !free(secured, raised, high)) {
            high = Math.min(2 * high, FURTHEST);
        }
        if (!free(secured, raised, high)) {
            return new int[0];
        }
        double low = high / 2;
        for (int i = 0; i < 12; i++) {
            double middle = (low + high) / 2;
            if (free(secured, raised, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return steps(raised, high);
    }

    private int[] steps(double[] raised, double length) {
        int[] steps = new int[raised.length];
        for (int p = 0; p < steps.length; p++) {
            steps[p] = (int) Math.ceil(length / screws.step(p) - 1e-9);
        }
        return steps;
    }

    private boolean free(LiftFloor secured, double[] raised, double length) {
        double[] lowered = raised.clone();
        int[] steps = steps(raised, length);
        for (int p = 0; p < lowered.length; p++) {
            lowered[p] -= steps[p] * screws.step(p);
        }
        Shape shape = secured.at(lowered);
        if (!shape.stands()) {
            return false;
        }
        for (int c = 0; c < floor.study().places().size(); c++) {
            boolean seat = floor.study().places().get(c) instanceof ContactPlace.OnShore;
            if (seat && shape.force(c).greatest() > NOTHING) {
                return false;
            }
        }
        return true;
    }

    private static Situation without(Situation during, List<Integer> onto) {
        return new Situation(
                during.name(),
                during.removed().stream().filter(b -> !onto.contains(b)).toList(),
                during.lifts(),
                during.parts().stream().filter(p -> !onto.contains(p.bearing())).toList(),
                during.piers().stream().filter(p -> !onto.contains(p.bearing())).toList(),
                during.clear().stream().filter(b -> !onto.contains(b)).toList());
    }
}
