package dev.underprop.engine.assess;

import java.util.List;

/**
 * A straight column of several pieces, pinned at both ends, loaded along its axis. Between the pins the moment is the load
 * times the deflection, so each piece bends as a sine of its own; the least load at which they fit together is found by
 * halving, from below.
 *
 * @param pieces from one end to the other, at least one
 */
record SteppedColumn(List<Piece> pieces) {

    /** Halvings; what is left is rounding. */
    private static final int HALVINGS = 60;

    /** So that the range holds the answer where all pieces are alike. */
    private static final double WIDER = 1e-9;

    /**
     * One piece.
     *
     * @param length (m), positive
     * @param rigidity E·I (N·m²), positive
     */
    record Piece(double length, double rigidity) {}

    SteppedColumn {
        pieces = List.copyOf(pieces);
    }

    /** The least elastic critical load (N). */
    double critical() {
        double length = pieces.stream().mapToDouble(Piece::length).sum();
        double factor = Math.PI * Math.PI / (length * length);
        double holds = factor
                * (1 - WIDER)
                * pieces.stream().mapToDouble(Piece::rigidity).min().orElseThrow();
        double fails = factor
                * (1 + WIDER)
                * pieces.stream().mapToDouble(Piece::rigidity).max().orElseThrow();
        for (int i = 0; i < HALVINGS; i++) {
            double load = (holds + fails) / 2;
            if (buckles(load)) {
                fails = load;
            } else {
                holds = load;
            }
        }
        return holds;
    }

    /** Whether the deflection that starts at one pin comes back to zero before the other: the load is then critical or more. */
    private boolean buckles(double load) {
        double deflection = 0;
        double slope = 1;
        for (Piece piece : pieces) {
            double wave = Math.sqrt(load / piece.rigidity);
            double turn = wave * piece.length;
            if (StrictMath.atan2(deflection * wave, slope) + turn >= Math.PI) {
                return true;
            }
            double cos = StrictMath.cos(turn);
            double sin = StrictMath.sin(turn);
            double next = deflection * cos + slope / wave * sin;
            slope = -deflection * wave * sin + slope * cos;
            deflection = next;
        }
        return false;
    }
}
