package dev.underprop.engine.assess;

import java.util.List;

/**
 * A column of several pieces with kinks between them, pinned at both ends, its load off the middle there. How far its axis
 * comes to lie off the line of the load, exactly in second order: y'' = -P/EI·y in each piece, the slope jumping at kinks.
 *
 * @param pieces from one end to the other, at least one
 * @param off of the load at both ends, to the side of the kinks (m), not negative
 */
record BentColumn(List<Piece> pieces, double off) {

    /**
     * One piece.
     *
     * @param part which part of the post it belongs to, from 0
     * @param length (m), positive
     * @param rigidity E·I (N·m²), positive
     * @param kink at its far end (rad), not negative
     */
    record Piece(int part, double length, double rigidity, double kink) {}

    /** Where the axis lies and where it points. */
    private record State(double offset, double slope) {
        State through(Piece piece, double load) {
            double wave = Math.sqrt(load / piece.rigidity);
            double cos = StrictMath.cos(wave * piece.length);
            double sin = StrictMath.sin(wave * piece.length);
            return new State(offset * cos + slope / wave * sin, -offset * wave * sin + slope * cos);
        }

        State turned(double kink) {
            return new State(offset, slope - kink);
        }
    }

    BentColumn {
        pieces = List.copyOf(pieces);
    }

    /**
     * The greatest distance of each part from the line of the load (m).
     *
     * @param load (N), positive, below the critical load
     * @param parts how many
     */
    double[] offsets(double load, int parts) {
        State bent = new State(off, 0);
        State unit = new State(0, 1);
        for (Piece piece : pieces) {
            bent = bent.through(piece, load).turned(piece.kink);
            unit = unit.through(piece, load);
        }
        double[] greatest = new double[parts];
        State state = new State(off, (off - bent.offset) / unit.offset);
        for (Piece piece : pieces) {
            greatest[piece.part] = Math.max(greatest[piece.part], within(state, piece, load));
            state = state.through(piece, load).turned(piece.kink);
        }
        return greatest;
    }

    /** The greatest distance within a piece: of the sine's crest where it lies there, else at an end. */
    private static double within(State start, Piece piece, double load) {
        double wave = Math.sqrt(load / piece.rigidity);
        double phase = StrictMath.atan2(start.offset * wave, start.slope);
        boolean crest = phase <= Math.PI / 2 && phase + wave * piece.length >= Math.PI / 2;
        double height = StrictMath.hypot(start.offset, start.slope / wave);
        return crest ? height : Math.max(Math.abs(start.offset), Math.abs(start.through(piece, load).offset));
    }
}
