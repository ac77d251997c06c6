package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Shore;
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

    private AsFound(PlanFrame frame, Solution solution, BitSet set) {
        this.frame = frame;
        this.solution = solution;
        this.set = set;
    }

    static AsFound of(PlanFrame frame, LoadModel model, ContactSolver solver) {
        return of(frame, solver, new LoadCase(new int[] {model.dead()}, new double[] {1}));
    }

    /** The same where bearings have come down, as changed gaps among the units of the case. */
    static AsFound of(PlanFrame frame, ContactSolver solver, LoadCase dead) {
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
                boolean alone = shore(frame, head.shore()).posts().size() < 2;
                absent.set(c, alone);
                fastened.set(c, !alone);
            }
        }
        absent.or(set);
        return new AsFound(frame, solver.solve(dead, new Rules(absent, fastened)), set);
    }

    private static Shore shore(PlanFrame frame, int shore) {
        return frame.plan().shores().get(shore);
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
        boolean alone = frame.places().get(c) instanceof ContactPlace.OnShore seat
                && shore(frame, seat.shore()).posts().size() < 2;
        return alone ? solution.movement(c) : contact.gap() - solution.opening(c);
    }
}
