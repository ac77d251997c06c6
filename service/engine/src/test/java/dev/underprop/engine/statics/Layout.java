package dev.underprop.engine.statics;

import java.util.List;

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

    ContactSolver solver() {
        return new ContactSolver(frame, units);
    }

    Reference.Answer reference(LoadCase loadCase) {
        return Reference.solve(new EnergyProblem(this, loadCase));
    }
}
