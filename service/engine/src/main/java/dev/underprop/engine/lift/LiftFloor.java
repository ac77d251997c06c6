package dev.underprop.engine.lift;

import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Rules;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The floor on its screws, under every bound: how far posts give, and how much of the sag has crept. What has crept carries no
 * stress; the rest of what bearings have come down acts as gaps under them, and the shores lie snug in the shape that follows.
 */
final class LiftFloor {

    /** Nothing changes but screws. */
    private static final int NONE = -1;

    /** Contacts answered for before a search for turns is given up: seconds, not minutes. */
    private static final long MOST = 50_000_000L;

    /** No jack lifts a floor further in one go (m). */
    private static final double MOST_LIFT = 1;

    /** Tries for the raise of a jack; two or three are the rule. */
    private static final int MOST_TRIES = 100;

    /** Clear space or overlap over a freed post that counts as none (m). */
    private static final double FREE = 1e-9;

    /** A change of contacts is found this closely (m): a jack on stiff posts gains some newtons by it. */
    private static final double CHANGE = 1e-7;

    private final StudiedFloor floor;
    private final Rules rules;
    private final List<Head> heads = new ArrayList<>();
    private final List<Bound> bounds = new ArrayList<>();
    private final List<Jack> jacks = new ArrayList<>();
    private int solved;

    /**
     * A post of the lift.
     *
     * @param contact its contact
     * @param place which post
     * @param x where it stands (m)
     * @param y where it stands (m)
     * @param unit unit of raising it
     */
    record Head(int contact, ContactPlace.OnPost place, double x, double y, int unit) {}

    /**
     * A jack beside a post.
     *
     * @param index among the jacks
     * @param post which it lifts free
     * @param contact its contact
     * @param place among the posts
     * @param unit unit of a metre of clear space over it
     * @param stroke how far it can lift (m)
     */
    record Jack(int index, int post, int contact, ContactPlace.OnPost place, int unit, double stroke) {}

    /**
     * One way in which things may be.
     *
     * @param stiffness of posts and ground
     * @param crept share of the sag
     * @param base unit of what bearings have come down and how shores lie snug, or {@code NONE}
     * @param found the floor as found
     * @param doubt how far heads are lower than their screws would have them
     */
    record Bound(StudiedFloor.Bound stiffness, double crept, int base, Solution found, Doubt doubt) {
        String words() {
            String words = stiffness.name() + ", " + StrictMath.round(100 * crept) + " % of the sag crept";
            return doubt.words().isEmpty() ? words : words + ", " + doubt.words();
        }
    }

    LiftFloor(StudiedFloor floor, Situation during, Sag sag, LiftRequest.Crept crept) {
        this(floor, during, sag, crept, List.of());
    }

    LiftFloor(StudiedFloor floor, Situation during, Sag sag, LiftRequest.Crept crept, List<LiftRequest.Jack> beside) {
        this.floor = floor;
        this.rules = floor.rules(during);
        StudiedFloor.Bound first = floor.bounds().get(0);
        for (int c = 0; c < floor.places().size(); c++) {
            if (floor.places().get(c) instanceof ContactPlace.OnPost head && !floor.isJack(c)) {
                int unit = first.solver().addOffsets(List.of(new UnitLoad.Offset(c, 1)));
                double y = floor.plan().shores().get(head.shore()).y();
                heads.add(new Head(c, head, floor.post(head).x(), y, unit));
            }
        }
        for (LiftRequest.Jack jack : beside) {
            jacks.add(jack(jack, first));
        }
        for (StudiedFloor.Bound stiffness : floor.bounds()) {
            for (double share : sag.shares(crept)) {
                bounds.add(bound(stiffness, share, sag.left(share)));
            }
        }
    }

    private LiftFloor(LiftFloor before, List<Bound> bounds, Rules rules) {
        this.floor = before.floor;
        this.rules = rules;
        this.heads.addAll(before.heads);
        this.jacks.addAll(before.jacks);
        this.bounds.addAll(bounds);
    }

    private Jack jack(LiftRequest.Jack jack, StudiedFloor.Bound first) {
        for (int c = 0; c < floor.places().size(); c++) {
            if (floor.isJack(c)
                    && floor.places().get(c) instanceof ContactPlace.OnPost place
                    && floor.post(place).equals(jack.stand())) {
                int unit = first.solver().addOffsets(List.of(new UnitLoad.Offset(c, 1)));
                return new Jack(jacks.size(), jack.post(), c, place, unit, jack.stroke());
            }
        }
        throw new IllegalArgumentException("a jack that the floor does not have");
    }

    /** The floor as found in a bound: the shores lie snug under it, nothing is raised. */
    Solution found(int bound) {
        return bounds.get(bound).found();
    }

    private Bound bound(StudiedFloor.Bound stiffness, double share, List<UnitLoad.Offset> settled) {
        StudiedFloor.Found found = floor.found(stiffness, settled);
        List<UnitLoad.Offset> all = new ArrayList<>(settled);
        all.addAll(found.snug());
        int base = all.isEmpty() ? NONE : stiffness.solver().addOffsets(all);
        return new Bound(stiffness, share, base, found.solution(), Doubt.NONE);
    }

    /** The same floor, with every bound in every doubt. */
    LiftFloor doubting(List<Doubt> doubts) {
        List<Bound> all = new ArrayList<>();
        for (Doubt doubt : doubts) {
            bounds.forEach(b -> all.add(new Bound(b.stiffness(), b.crept(), b.base(), b.found(), doubt)));
        }
        return new LiftFloor(this, all, rules);
    }

    /** The same floor with its shores away. */
    LiftFloor withoutShores(Situation after) {
        return new LiftFloor(this, bounds, floor.withoutShores(after));
    }

    /** The same floor with contacts built up snug in a shape, by bound. */
    LiftFloor builtUp(List<Integer> contacts, Shape shape, Situation after) {
        List<Bound> changed = new ArrayList<>();
        for (int b = 0; b < bounds.size(); b++) {
            Bound bound = bounds.get(b);
            List<UnitLoad.Offset> snug = new ArrayList<>();
            for (int c : contacts) {
                double off = shape.dead(b).opening(c);
                if (off != 0) {
                    snug.add(new UnitLoad.Offset(c, -off));
                }
            }
            int base = bound.base();
            if (!snug.isEmpty()) {
                int extra = bound.stiffness().solver().addOffsets(snug);
                base = base == NONE ? extra : bound.stiffness().solver().addGroup(new int[] {base, extra});
            }
            changed.add(new Bound(bound.stiffness(), bound.crept(), base, bound.found(), bound.doubt()));
        }
        return new LiftFloor(this, changed, floor.rules(after));
    }

    /** Whether the floor stands on its bearings alone in every bound; a lift is measured from there. */
    boolean stands() {
        return bounds.stream().allMatch(b -> b.found().outcome() == Solution.Outcome.SETTLED);
    }

    /** What moves where it does not stand. */
    String moves() {
        return bounds.stream()
                .filter(b -> b.found().outcome() != Solution.Outcome.SETTLED)
                .map(b -> floor.moves(b.found()))
                .findFirst()
                .orElse("");
    }

    StudiedFloor study() {
        return floor;
    }

    List<Head> heads() {
        return heads;
    }

    List<Bound> bounds() {
        return bounds;
    }

    /** Jacks beside posts; none where screws are turned under load. */
    List<Jack> jacks() {
        return jacks;
    }

    /** The jack beside a post. */
    Optional<Jack> jack(int post) {
        return jacks.stream().filter(jack -> jack.post() == post).findFirst();
    }

    /** Whether so much was solved that a search for turns is given up. */
    boolean spent() {
        return (long) solved * floor.places().size() > MOST;
    }

    int solved() {
        return solved;
    }

    /**
     * The floor with its posts raised, under dead load and live load everywhere.
     *
     * @param raised of screws, by post, beyond touching (m); negative where a head stands clear
     */
    Shape at(double[] raised) {
        return at(raised, floor.gravity());
    }

    /** The same under other cases. */
    Shape at(double[] raised, List<StudiedFloor.Gravity> cases) {
        return following(
                cases, (b, i) -> solve(bounds.get(b), raised, cases.get(i).load()));
    }

    /** The floor under dead load and live load everywhere, with one screw turned from where it stood. */
    Shape turned(Shape from, int post, double by) {
        LoadCase turn = new LoadCase(new int[] {heads.get(post).unit()}, new double[] {-by});
        return following(floor.gravity(), (b, i) -> solver(b).varied(from.of(b, i), turn));
    }

    /** The floor as it stands, under other cases. */
    Shape under(Shape from, List<StudiedFloor.Gravity> cases) {
        LoadCase dead = floor.gravity().get(0).load();
        List<LoadCase> more = cases.stream().map(one -> one.load().minus(dead)).toList();
        return following(cases, (b, i) -> solver(b).varied(from.dead(b), more.get(i)));
    }

    /** Solves a case in a bound. */
    private interface Solving {
        Solution of(int bound, int one);
    }

    private Shape following(List<StudiedFloor.Gravity> cases, Solving solving) {
        int[] combinations =
                cases.stream().mapToInt(StudiedFloor.Gravity::combination).toArray();
        Solution[][] solutions = new Solution[bounds.size()][combinations.length];
        for (int b = 0; b < bounds.size(); b++) {
            for (int i = 0; i < combinations.length; i++) {
                solved++;
                solutions[b][i] = solving.of(b, i);
                if (solutions[b][i].outcome() != Solution.Outcome.SETTLED) {
                    return new Shape(solutions, combinations, moves(solutions[b][i], cases.get(i)));
                }
            }
        }
        return new Shape(solutions, combinations, "");
    }

    private ContactSolver solver(int bound) {
        return bounds.get(bound).stiffness().solver();
    }

    private String moves(Solution solution, StudiedFloor.Gravity one) {
        return floor.moves(solution) + " (" + one.name() + ")";
    }

    private Solution solve(Bound bound, double[] raised, LoadCase load) {
        return solve(bound, gaps(bound, raised), load, rules);
    }

    private LoadCase gaps(Bound bound, double[] raised) {
        int first = bound.base() == NONE ? 0 : 1;
        int[] units = new int[first + raised.length];
        double[] factors = new double[units.length];
        if (first == 1) {
            units[0] = bound.base();
            factors[0] = 1;
        }
        for (int p = 0; p < raised.length; p++) {
            units[first + p] = heads.get(p).unit();
            factors[first + p] = bound.doubt().lower(p) - raised[p];
        }
        return new LoadCase(units, factors);
    }

    /** Gaps come before loads, so that statics begins each case where the same loads ended last. */
    private Solution solve(Bound bound, LoadCase gaps, LoadCase load, Rules by) {
        int[] units = new int[gaps.size() + load.size()];
        double[] factors = new double[units.length];
        for (int i = 0; i < gaps.size(); i++) {
            units[i] = gaps.unit(i);
            factors[i] = gaps.factor(i);
        }
        for (int i = 0; i < load.size(); i++) {
            units[gaps.size() + i] = load.unit(i);
            factors[gaps.size() + i] = load.factor(i);
        }
        return bound.stiffness().solver().solve(new LoadCase(units, factors), by);
    }

    /**
     * The floor while a jack holds it clear of a post: the jack is raised, in every bound and case, until what lies over the
     * post is where the head then just touches without load. Where the post is free without it, the jack stays where it touches.
     *
     * @param jack which
     * @param raised of screws, by post (m); that of the post to be freed is where the beam must be for it
     * @param screw how far the freed post's own screw may be up then (m)
     * @param touching how far the jack's head is up where it touches, by bound (m)
     */
    Jacked onJack(Jack jack, double[] raised, double[] screw, double[] touching) {
        List<StudiedFloor.Gravity> cases = floor.gravity();
        Rules by = floor.withoutPost(
                floor.withJack(rules, jack.contact()), heads.get(jack.post()).contact());
        int[] combinations =
                cases.stream().mapToInt(StudiedFloor.Gravity::combination).toArray();
        Solution[][] solutions = new Solution[bounds.size()][combinations.length];
        double[][] lifts = new double[bounds.size()][combinations.length];
        for (int b = 0; b < bounds.size(); b++) {
            for (int i = 0; i < combinations.length; i++) {
                Freeing freeing =
                        new Freeing(jack, bounds.get(b), raised, cases.get(i).load(), by);
                lifts[b][i] = freeing.raise(touching[b]) - touching[b];
                solutions[b][i] = freeing.solution;
                String moves = freeing.fails();
                if (!moves.isEmpty()) {
                    String words = moves + " (" + cases.get(i).name() + ")";
                    return new Jacked(jack, raised, screw, touching, new Shape(solutions, combinations, words), lifts);
                }
            }
        }
        return new Jacked(jack, raised, screw, touching, new Shape(solutions, combinations, ""), lifts);
    }

    /**
     * The same while other loads come and go: the jack stays where it was raised to under dead load, or, if that is further,
     * under live load everywhere, and the post stands ready wherever its screw may be up then.
     *
     * @param held under dead load and live load everywhere
     * @param cases to be looked at
     */
    Jacked onJack(Jacked held, List<StudiedFloor.Gravity> cases) {
        Jack jack = held.jack();
        Rules by = floor.withJack(rules, jack.contact());
        int each = 2 * held.screw().length;
        int[] combinations = new int[each * cases.size()];
        Solution[][] solutions = new Solution[bounds.size()][combinations.length];
        double[][] lifts = new double[bounds.size()][combinations.length];
        for (int b = 0; b < bounds.size(); b++) {
            double[] ways = {
                held.lifts()[b][0], Arrays.stream(held.lifts()[b]).max().orElse(0)
            };
            for (int i = 0; i < combinations.length; i++) {
                StudiedFloor.Gravity one = cases.get(i / each);
                combinations[i] = one.combination();
                lifts[b][i] = ways[i % 2];
                double[] raised = held.raised().clone();
                raised[jack.post()] = held.screw()[i % each / 2];
                LoadCase gaps = gaps(bounds.get(b), raised).with(jack.unit(), -held.touching()[b] - lifts[b][i]);
                solved++;
                solutions[b][i] = solve(bounds.get(b), gaps, one.load(), by);
                if (solutions[b][i].outcome() != Solution.Outcome.SETTLED) {
                    String words = "held by " + floor.name(jack.contact()) + ", " + moves(solutions[b][i], one);
                    return held.with(new Shape(solutions, combinations, words), lifts);
                }
            }
        }
        return held.with(new Shape(solutions, combinations, ""), lifts);
    }

    /**
     * The floor on either side of every change of contacts while a jack is raised from where it touches to where it holds, its
     * post's screw at one height. Between changes all forces and movements go straight with the jack: the parameters for which one
     * set of contacts is right are convex (R. W. Cottle, J.-S. Pang, R. E. Stone, The Linear Complementarity Problem, 1992, on
     * parametric problems; from memory).
     *
     * @param held where the jack holds, under every case
     * @param from how far its head is up where it touches, by bound (m)
     * @param screw how far the post's screw is up (m)
     */
    List<Shape> onTheWay(Jacked held, double[] from, double screw) {
        double[] raised = held.raised().clone();
        raised[held.jack().post()] = screw;
        List<StudiedFloor.Gravity> cases = floor.gravity();
        List<List<List<Solution>>> ways = new ArrayList<>();
        int longest = 0;
        for (int b = 0; b < bounds.size(); b++) {
            List<List<Solution>> of = new ArrayList<>();
            for (int i = 0; i < cases.size(); i++) {
                Raising raising = new Raising(
                        held.jack(), bounds.get(b), raised, cases.get(i).load());
                raising.go(from[b], held.touching()[b] + held.lifts()[b][i]);
                of.add(raising.met);
                longest = Math.max(longest, raising.met.size());
            }
            ways.add(of);
        }
        List<Shape> shapes = new ArrayList<>();
        for (int k = 0; k < longest; k++) {
            int nth = k;
            shapes.add(following(cases, (b, i) -> {
                List<Solution> met = ways.get(b).get(i);
                return met.get(Math.min(nth, met.size() - 1));
            }));
        }
        return shapes;
    }

    /** A jack going up under one case: what is met where contacts change. */
    private final class Raising {

        private final Jack jack;
        private final Bound bound;
        private final double[] raised;
        private final LoadCase load;
        private final Rules by;
        private final List<Solution> met = new ArrayList<>();

        Raising(Jack jack, Bound bound, double[] raised, LoadCase load) {
            this.jack = jack;
            this.bound = bound;
            this.raised = raised;
            this.load = load;
            this.by = floor.withJack(rules, jack.contact());
        }

        private Solution at(double up) {
            solved++;
            return solve(bound, gaps(bound, raised).with(jack.unit(), -up), load, by);
        }

        private Solution lower(Solution from, double by) {
            solved++;
            return bound.stiffness().solver().varied(from, new LoadCase(new int[] {jack.unit()}, new double[] {by}));
        }

        void go(double from, double to) {
            Solution highest = at(to);
            boolean settled = highest.outcome() == Solution.Outcome.SETTLED;
            Solution first = settled ? lower(highest, to - from) : at(from);
            met.add(first);
            between(from, first, to, highest);
        }

        private void between(double low, Solution under, double high, Solution over) {
            boolean known = under.outcome() == Solution.Outcome.SETTLED && over.outcome() == Solution.Outcome.SETTLED;
            if (known && alike(under, over)) {
                return;
            }
            if (!known || high - low <= CHANGE) {
                met.add(under);
                met.add(over);
                return;
            }
            double middle = (low + high) / 2;
            Solution half = lower(over, high - middle);
            between(low, under, middle, half);
            between(middle, half, high, over);
        }

        private boolean alike(Solution one, Solution other) {
            for (int c = 0; c < floor.places().size(); c++) {
                if (one.closed(c) != other.closed(c)) {
                    return false;
                }
            }
            return true;
        }
    }

    /** How far the head of a jack is up where it touches the beam in a shape under dead load, by bound (m). */
    double[] touching(Jack jack, Shape shape) {
        double[] touching = new double[bounds.size()];
        for (int b = 0; b < touching.length; b++) {
            touching[b] = shape.dead(b).opening(jack.contact());
        }
        return touching;
    }

    /** Searches for the raise of a jack that leaves a post just free: the beam over the post rises with it, straight piece by piece. */
    private final class Freeing {

        private final Jack jack;
        private final Bound bound;
        private final double[] raised;
        private final LoadCase load;
        private final Rules by;
        private Solution solution;
        private boolean free = true;

        Freeing(Jack jack, Bound bound, double[] raised, LoadCase load, Rules by) {
            this.jack = jack;
            this.bound = bound;
            this.raised = raised;
            this.load = load;
            this.by = by;
            this.solution = bound.found();
        }

        /** What stands in the way; empty where nothing does. */
        String fails() {
            if (solution.outcome() != Solution.Outcome.SETTLED) {
                return moves();
            }
            return free ? "" : "raising " + floor.name(jack.contact()) + " does not free the post beside it";
        }

        private String moves() {
            return "held by " + floor.name(jack.contact()) + ", " + floor.moves(solution);
        }

        /** Clear space over the post's head (m) with the jack's head so far up; negative where it would still carry. */
        private double clear(double up) {
            LoadCase gaps = gaps(bound, raised).with(jack.unit(), -up);
            solved++;
            solution = solve(bound, gaps, load, by);
            return solution.outcome() == Solution.Outcome.SETTLED
                    ? solution.opening(heads.get(jack.post()).contact())
                    : Double.NaN;
        }

        double raise(double touching) {
            double low = touching;
            double under = clear(low);
            if (!(under < 0)) {
                return low;
            }
            double step = -1.25 * under;
            double high = low + step;
            double over = clear(high);
            while (over < 0 && high - touching < MOST_LIFT) {
                low = high;
                under = over;
                step *= 2;
                high = low + step;
                over = clear(high);
            }
            if (Double.isNaN(over) || over < 0) {
                free = false;
                return Double.POSITIVE_INFINITY;
            }
            return between(low, under, high, over);
        }

        /** Regula falsi in the way of Illinois (M. Dowell, P. Jarratt, BIT 11, 1971; from memory). */
        private double between(double from, double fromClear, double to, double toClear) {
            double low = from;
            double under = fromClear;
            double high = to;
            double over = toClear;
            int last = 0;
            double at = high;
            double clear = over;
            for (int i = 0; i < MOST_TRIES && Math.abs(clear) > FREE; i++) {
                at = (low * over - high * under) / (over - under);
                clear = clear(at);
                if (clear < 0) {
                    low = at;
                    under = clear;
                    over = last < 0 ? over / 2 : over;
                    last = -1;
                } else {
                    high = at;
                    over = clear;
                    under = last > 0 ? under / 2 : under;
                    last = 1;
                }
            }
            free = Math.abs(clear) <= FREE;
            return at;
        }
    }
}
