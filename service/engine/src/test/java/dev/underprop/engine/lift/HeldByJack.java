package dev.underprop.engine.lift;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.SituationResult;
import dev.underprop.engine.assess.SituationResult.PlainCase;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Another way to the states through which one turn by a jack goes: jack and posts are all posts of a plan, the jack raised until
 * the post beside it carries nothing. One shore of a beam without weight, a table for every post, live load everywhere or none.
 */
final class HeldByJack {

    /** All posts stand this far lower and are raised as much more, so that the jack can be away (m). */
    private static final double LOWER = 0.2;

    /** A jack so far down touches nothing (m). */
    private static final double AWAY = -0.1;

    /** Proof of a root: the post carries with the jack this much lower, and is clear with it this much higher (m). */
    private static final double NEAR = 2e-9;

    private final JobPlan plan;
    private final Shore shore;
    private final LiftRequest.Jack jack;
    private final double[] before;
    private final double[] after;
    private final double[] built;
    private final List<Post> posts;
    private final int own;
    private final int beside;
    private final StudiedFloor study;
    private final MemberLimits held;
    private final MemberLimits freed;
    private final int cases;
    private final Map<Limit.Kind, Double> used = new EnumMap<>(Limit.Kind.class);
    private final Map<Limit.Kind, Double> begun = new EnumMap<>(Limit.Kind.class);
    private Span load = Span.NOTHING;
    private Span lift = Span.NOTHING;
    private int solved;

    /**
     * @param built the screws when the near wall was rebuilt snug (m); empty while it is out
     */
    HeldByJack(JobPlan plan, LiftRequest.Jack jack, double[] before, double[] after, double[] built) {
        this.shore = plan.shores().get(0);
        this.jack = jack;
        this.before = before.clone();
        this.after = after.clone();
        this.built = built.clone();
        this.posts = new ArrayList<>(shore.posts());
        posts.add(jack.stand());
        posts.sort(Comparator.comparingDouble(Post::x));
        this.own = posts.indexOf(shore.posts().get(jack.post()));
        this.beside = posts.indexOf(jack.stand());
        List<Post> lower = posts.stream()
                .map(p ->
                        new Post(p.name(), p.x(), p.height(), p.stiffness(), LOWER, 0, p.type(), p.footing(), p.ends()))
                .toList();
        this.plan = new JobPlan(
                plan.basis(),
                plan.floor(),
                List.of(shore.with(lower)),
                plan.ground(),
                plan.situations(),
                plan.circumstances());
        this.study = StudiedFloor.of(this.plan);
        this.cases = study.gravity().size();
        EnumSet<LoadKind> kinds = cases > 1 ? EnumSet.of(LoadKind.DEAD, LoadKind.LIVE) : EnumSet.of(LoadKind.DEAD);
        List<Combination> combinations = Section2_4.gravity(kinds);
        this.held = MemberLimits.ofBeam(shore, shore.posts(), combinations);
        Post free = shore.posts().get(jack.post());
        this.freed = MemberLimits.ofBeam(
                shore, shore.posts().stream().filter(p -> p != free).toList(), combinations);
    }

    /**
     * A state.
     *
     * @param at how far the jack is up (m)
     * @param one by bound and case
     */
    private record State(double at, PlainCase[][] one) {}

    /** Goes through them: before, where the post just comes free, where the jack holds, after, and what was tried between. */
    void go(double step) {
        State start = solve(before, AWAY);
        State end = solve(after, AWAY);
        int p = jack.post();
        double[] low = before.clone();
        low[p] = Math.min(before[p], after[p]);
        double[] clear = before.clone();
        clear[p] = Math.max(before[p], after[p]) + step;
        for (int b = 0; b < start.one().length; b++) {
            double touching = AWAY + start.one()[b][0].openings().get(contact(beside));
            for (int c = 0; c < cases; c++) {
                note(start.one()[b][c], c, false, begun);
                note(end.one()[b][c], c, false, used);
                List<State> passed = new ArrayList<>();
                State free = freeing(low, b, c, touching, passed);
                State holding = freeing(clear, b, c, touching, new ArrayList<>());
                assertThat(holding.at()).isGreaterThanOrEqualTo(free.at());
                note(free.one()[b][c], c, true, used);
                note(holding.one()[b][c], c, true, used);
                for (State one : passed) {
                    if (one.at() >= touching && one.at() <= holding.at()) {
                        note(one.one()[b][c], c, one.at() > free.at(), used);
                    }
                }
                if (c == 0) {
                    lift = lift.with(holding.at() - touching);
                    load = load.with(force(holding.one()[b][0], beside));
                }
            }
        }
    }

    /** The jack as high as the post needs to carry nothing, and no higher than proves it. */
    private State freeing(double[] raised, int b, int c, double touching, List<State> passed) {
        State state = solve(raised, touching);
        passed.add(state);
        double low = touching;
        double carries = force(state.one()[b][c], own);
        if (carries <= 0) {
            return state;
        }
        double high = touching + 0.04;
        double step = 0.0005;
        while (carries > 0) {
            low = state.at();
            state = solve(raised, low + step);
            passed.add(state);
            carries = force(state.one()[b][c], own);
            step *= 2;
            assertThat(state.at()).isLessThan(high);
        }
        high = state.at();
        while (high - low > NEAR) {
            state = solve(raised, guess(passed, b, c, low, high));
            passed.add(state);
            if (force(state.one()[b][c], own) > 0) {
                low = state.at();
            } else {
                high = state.at();
            }
        }
        double found = high;
        return passed.stream().filter(s -> s.at() == found).findFirst().orElseThrow();
    }

    /** Where the straight line through the last two below comes to nothing, a little to its far side in turn; else the middle. */
    private double guess(List<State> passed, int b, int c, double low, double high) {
        double[] below = passed.stream()
                .mapToDouble(State::at)
                .filter(at -> at <= low)
                .sorted()
                .distinct()
                .toArray();
        if (below.length < 2) {
            return (low + high) / 2;
        }
        double one = below[below.length - 2];
        double of = force(at(passed, one).one()[b][c], own);
        double last = force(at(passed, low).one()[b][c], own);
        double root = low + last * (low - one) / (of - last);
        for (double near : new double[] {root + NEAR / 3, root - NEAR / 3}) {
            if (near > low && near < high) {
                return near;
            }
        }
        return (low + high) / 2;
    }

    private static State at(List<State> passed, double at) {
        return passed.stream().filter(s -> s.at() == at).findFirst().orElseThrow();
    }

    private State solve(double[] raised, double up) {
        solved++;
        List<Situation> situations = new ArrayList<>();
        if (built.length > 0) {
            situations.add(new Situation("built up", Lifts.NEAR_OUT.removed(), lifts(built, AWAY)));
        }
        situations.add(
                new Situation("held", built.length > 0 ? List.of() : Lifts.NEAR_OUT.removed(), lifts(raised, up)));
        JobPlan all =
                new JobPlan(plan.basis(), plan.floor(), plan.shores(), plan.ground(), situations, plan.circumstances());
        List<SituationResult> results = Assessor.assess(all).situations();
        Map<String, List<PlainCase>> bounds = new LinkedHashMap<>();
        for (PlainCase one : results.get(results.size() - 1).plainCases()) {
            boolean plain = one.bound().history().equals("as found")
                    && one.bound().fitUp().isEmpty()
                    && one.bound().fastenings().equals("as described");
            if (plain) {
                bounds.computeIfAbsent(one.bound().posts(), k -> new ArrayList<>())
                        .add(one);
            }
        }
        assertThat(bounds).isNotEmpty();
        assertThat(bounds.values()).allSatisfy(one -> assertThat(one).hasSize(cases));
        return new State(
                up,
                bounds.values().stream().map(o -> o.toArray(PlainCase[]::new)).toArray(PlainCase[][]::new));
    }

    private List<Situation.PostLift> lifts(double[] raised, double up) {
        List<Situation.PostLift> lifts = new ArrayList<>();
        for (int p = 0; p < posts.size(); p++) {
            int index = shore.posts().indexOf(posts.get(p));
            lifts.add(new Situation.PostLift(0, p, LOWER + (index < 0 ? up : raised[index])));
        }
        return lifts;
    }

    private int contact(int post) {
        for (int c = 0; c < study.places().size(); c++) {
            if (study.places().get(c) instanceof ContactPlace.OnPost head && head.post() == post) {
                return c;
            }
        }
        throw new IllegalArgumentException("no such post");
    }

    private double force(PlainCase one, int post) {
        return one.forces().get(contact(post));
    }

    private void note(PlainCase one, int c, boolean free, Map<Limit.Kind, Double> into) {
        for (int p = 0; p < posts.size(); p++) {
            double carried = Math.max(0, force(one, p));
            double rated = ((PostType.Table) ((PostType) posts.get(p).type()).rating())
                    .rows()
                    .get(1)
                    .load();
            into.merge(Limit.Kind.POST, carried / rated, Math::max);
            CheckResult.Judged pad = (CheckResult.Judged) study.pad(new ContactPlace.OnPost(0, p), carried);
            into.merge(Limit.Kind.PAD, pad.demand() / pad.capacity(), Math::max);
        }
        into.merge(Limit.Kind.BEAM, beam(one, c, free ? freed : held), Math::max);
        if (c == 0) {
            into.merge(Limit.Kind.SLOPE, slope(one), Math::max);
        }
    }

    /** A load on the beam or a post under it (N), upward positive. */
    private record Force(double x, double up) {}

    /** Bending and shear of the beam by statics from the forces at its contacts. */
    private double beam(PlainCase one, int c, MemberLimits limits) {
        List<Force> forces = new ArrayList<>();
        for (int i = 0; i < study.places().size(); i++) {
            ContactPlace place = study.places().get(i);
            double force = one.forces().get(i);
            if (place instanceof ContactPlace.OnShore seat) {
                forces.add(new Force(plan.floor().joists().get(seat.joist()).x(), -force));
            } else if (place instanceof ContactPlace.OnPost head) {
                forces.add(new Force(posts.get(head.post()).x(), force));
            }
        }
        forces.sort(Comparator.comparingDouble(Force::x));
        double sagging = 0;
        double hogging = 0;
        double most = 0;
        double shear = 0;
        double moment = 0;
        double x = forces.get(0).x();
        for (int n = 0; n < forces.size(); n++) {
            Force force = forces.get(n);
            moment += shear * (force.x() - x);
            x = force.x();
            shear += force.up();
            boolean between = n + 1 < forces.size() && forces.get(n + 1).x() > x;
            most = between ? Math.max(most, Math.abs(shear)) : most;
            sagging = Math.max(sagging, moment);
            hogging = Math.max(hogging, -moment);
        }
        return Math.max(
                limits.shearStress(most) / limits.shear(c),
                Math.max(
                        limits.bendingStress(sagging) / limits.sagging(c),
                        limits.bendingStress(hogging) / limits.hogging(c)));
    }

    /** Change of slope between neighbouring posts: a beam without weight was straight as found. */
    private double slope(PlainCase one) {
        double greatest = 0;
        for (int p = 0; p + 1 < shore.posts().size(); p++) {
            int from = posts.indexOf(shore.posts().get(p));
            int to = posts.indexOf(shore.posts().get(p + 1));
            double moved = one.movements().get(contact(to)) - one.movements().get(contact(from));
            greatest = Math.max(
                    greatest,
                    Math.abs(moved) / (posts.get(to).x() - posts.get(from).x()));
        }
        return greatest;
    }

    /** Part of each limit that is used at most once the turn begins; a slope is told as such. */
    Map<Limit.Kind, Double> used() {
        return used;
    }

    /** The same before the turn. */
    Map<Limit.Kind, Double> begun() {
        return begun;
    }

    /** What the jack carries under dead load while it holds, over all bounds (N). */
    Span load() {
        return load;
    }

    /** How far it lifts for that (m). */
    Span lift() {
        return lift;
    }

    /** Plans assessed. */
    int solved() {
        return solved;
    }
}
