package dev.underprop.engine.statics;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** A structure with its loads and the cases asked of it, and the seed it came from. */
record Layout(long seed, Frame frame, List<UnitLoad> units, List<LoadCase> cases) {

    /** Sum of the magnitudes of a case's loads (N). */
    double total(LoadCase loadCase) {
        double sum = 0;
        for (int i = 0; i < loadCase.size(); i++) {
            for (UnitLoad.Piece piece : units.get(loadCase.unit(i)).pieces()) {
                sum += Math.abs(loadCase.factor(i) * piece.total());
            }
        }
        return sum;
    }

    /** Forces of a solution at every contact (N). */
    static double[] forces(Solution solution, int contacts) {
        return IntStream.range(0, contacts).mapToDouble(solution::force).toArray();
    }

    /** This layout with every contact changed. */
    Layout with(UnaryOperator<Contact> change) {
        List<Contact> changed = frame.contacts().stream().map(change).toList();
        return new Layout(seed, new Frame(frame.joists(), frame.carriers(), changed), units, cases);
    }

    ContactSolver solver() {
        return new ContactSolver(frame, units);
    }

    Reference.Answer reference(LoadCase loadCase) {
        return Reference.solve(new EnergyProblem(this, loadCase));
    }

    /** Whether some member moves further than its own length in the reference: so short a lever holds nothing. */
    boolean adrift(Reference.Answer answer) {
        for (int c = 0; answer.held() && c < answer.movement().length; c++) {
            double joist = answer.movement()[c];
            Contact contact = frame.contacts().get(c);
            boolean gone;
            if (contact instanceof Contact.OnGround seat) {
                gone = Math.abs(joist) > length(seat.joist());
            } else if (contact instanceof Contact.OnCarrier seat) {
                double carrier = joist + answer.opening()[c] - seat.gap();
                gone = Math.abs(joist) > length(seat.joist())
                        || Math.abs(carrier) > length(frame.carrierMember(seat.carrier()));
            } else {
                gone = Math.abs(joist) > length(frame.carrierMember(((Contact.OnProp) contact).carrier()));
            }
            if (gone) {
                return true;
            }
        }
        return false;
    }

    private double length(int member) {
        if (member < frame.joists().size()) {
            Frame.Joist joist = frame.joists().get(member);
            return joist.end() - joist.start();
        }
        Frame.Carrier carrier = frame.carriers().get(member - frame.joists().size());
        return carrier.end() - carrier.start();
    }
}
