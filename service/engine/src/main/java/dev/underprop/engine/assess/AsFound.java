package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.statics.Contact;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Rules;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The floor as it was found: on its bearings under dead load, the shores set snug under it and carrying nothing but
 * themselves. From this shape gaps and lifts are measured.
 */
final class AsFound {

    private final PlanFrame frame;
    private final Solution solution;
    private final BitSet set;
    private final int[] posts;

    private AsFound(PlanFrame frame, Solution solution, BitSet set, int[] posts) {
        this.frame = frame;
        this.solution = solution;
        this.set = set;
        this.posts = posts;
    }

    static AsFound of(PlanFrame frame, LoadModel model, ContactSolver solver) {
        return of(frame, solver, new LoadCase(new int[] {model.dead()}, new double[] {1}));
    }

    /** The same where bearings have come down, as changed gaps among the units of the case. */
    static AsFound of(PlanFrame frame, ContactSolver solver, LoadCase dead) {
        return of(frame, solver, dead, new BitSet());
    }

    /** The same with contacts under shores that are not there yet, such as jacks. */
    static AsFound of(PlanFrame frame, ContactSolver solver, LoadCase dead, BitSet away) {
        int[] posts = posts(frame, away);
        BitSet set = new BitSet();
        BitSet absent = new BitSet();
        BitSet fastened = frame.fastened(Ties.HOLD);
        for (int c = 0; c < frame.contacts(); c++) {
            ContactPlace place = frame.places().get(c);
            if (place instanceof ContactPlace.OnShore) {
                set.set(c);
            } else if (place instanceof ContactPlace.OnBearing seat && clear(frame, seat)) {
                set.set(c);
            } else if (place instanceof ContactPlace.OnPost head) {
                // A beam that lies snug on its posts; on a single one it is held by hand until the joists rest on it.
                boolean held = !away.get(c) && posts[head.shore()] > 1;
                absent.set(c, !held);
                fastened.set(c, held);
            }
        }
        absent.or(set);
        return new AsFound(frame, solver.solve(dead, new Rules(absent, fastened)), set, posts);
    }

    /** Number of posts by shore. */
    private static int[] posts(PlanFrame frame, BitSet away) {
        int[] posts = new int[frame.plan().shores().size()];
        for (int c = 0; c < frame.contacts(); c++) {
            if (frame.places().get(c) instanceof ContactPlace.OnPost head && !away.get(c)) {
                posts[head.shore()]++;
            }
        }
        return posts;
    }

    private static boolean clear(PlanFrame frame, ContactPlace.OnBearing seat) {
        Bearing bearing = frame.plan().floor().bearings().get(seat.bearing());
        return bearing.gapUnder(seat.joist()) > 0;
    }

    /** Whether the floor stands on its bearings alone. */
    boolean stands() {
        return solution.outcome() == Solution.Outcome.SETTLED;
    }

    /** The floor under dead load. */
    Solution solution() {
        return solution;
    }

    /** Force at a contact under dead load (N). */
    double force(int contact) {
        return solution.force(contact);
    }

    /** What must be added to the frame's own gaps so that shores are snug, and gaps as stated, in the shape as found. */
    List<UnitLoad.Offset> shifts() {
        List<UnitLoad.Offset> shifts = new ArrayList<>();
        for (int c = set.nextSetBit(0); c >= 0; c = set.nextSetBit(c + 1)) {
            shifts.add(new UnitLoad.Offset(c, shift(c)));
        }
        return shifts;
    }

    private double shift(int c) {
        Contact contact = frame.frame().contacts().get(c);
        boolean alone = frame.places().get(c) instanceof ContactPlace.OnShore seat && posts[seat.shore()] < 2;
        return alone ? solution.movement(c) : contact.gap() - solution.opening(c);
    }
}
