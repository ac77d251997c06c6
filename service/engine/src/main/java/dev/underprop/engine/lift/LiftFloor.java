package dev.underprop.engine.lift;

import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Rules;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.List;

/**
 * The floor on its screws, under every bound: how far posts give, and how much of the sag has crept. What has crept carries no
 * stress; the rest of what bearings have come down acts as gaps under them, and the shores lie snug in the shape that follows.
 */
final class LiftFloor {

    /** Nothing changes but screws. */
    private static final int NONE = -1;

    /** Contacts answered for before a search for turns is given up: seconds, not minutes. */
    private static final long MOST = 50_000_000L;

    private final StudiedFloor floor;
    private final Rules rules;
    private final List<Head> heads = new ArrayList<>();
    private final List<Bound> bounds = new ArrayList<>();
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
        this.floor = floor;
        this.rules = floor.rules(during);
        StudiedFloor.Bound first = floor.bounds().get(0);
        for (int c = 0; c < floor.places().size(); c++) {
            if (floor.places().get(c) instanceof ContactPlace.OnPost head) {
                int unit = first.solver().addOffsets(List.of(new UnitLoad.Offset(c, 1)));
                double y = floor.plan().shores().get(head.shore()).y();
                heads.add(new Head(c, head, floor.post(head).x(), y, unit));
            }
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
        this.bounds.addAll(bounds);
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
        int[] combinations =
                cases.stream().mapToInt(StudiedFloor.Gravity::combination).toArray();
        Solution[][] solutions = new Solution[bounds.size()][combinations.length];
        for (int b = 0; b < bounds.size(); b++) {
            for (int i = 0; i < combinations.length; i++) {
                solutions[b][i] = solve(bounds.get(b), raised, cases.get(i).load());
                if (solutions[b][i].outcome() != Solution.Outcome.SETTLED) {
                    return new Shape(solutions, combinations, moves(solutions[b][i], cases.get(i)));
                }
            }
        }
        return new Shape(solutions, combinations, "");
    }

    private String moves(Solution solution, StudiedFloor.Gravity one) {
        return floor.moves(solution) + " (" + one.name() + ")";
    }

    /** Gaps come before loads, so that statics begins each case where the same loads ended last. */
    private Solution solve(Bound bound, double[] raised, LoadCase load) {
        int first = bound.base() == NONE ? 0 : 1;
        int[] units = new int[first + raised.length + load.size()];
        double[] factors = new double[units.length];
        if (first == 1) {
            units[0] = bound.base();
            factors[0] = 1;
        }
        int n = first;
        for (int p = 0; p < raised.length; p++) {
            units[n] = heads.get(p).unit();
            factors[n++] = bound.doubt().lower(p) - raised[p];
        }
        for (int i = 0; i < load.size(); i++) {
            units[n] = load.unit(i);
            factors[n++] = load.factor(i);
        }
        solved++;
        return bound.stiffness().solver().solve(new LoadCase(units, factors), rules);
    }
}
