package dev.underprop.engine.lift;

import dev.underprop.engine.statics.Solution;

/** The floor with its screws where they are, under every bound and combination. */
final class Shape {

    private final Solution[][] solutions;
    private final String moves;

    Shape(Solution[][] solutions, String moves) {
        this.solutions = solutions;
        this.moves = moves;
    }

    /** Whether everything is held in all of them. */
    boolean stands() {
        return moves.isEmpty();
    }

    /** What moves, in words; empty where everything is held. */
    String moves() {
        return moves;
    }

    int bounds() {
        return solutions.length;
    }

    int cases() {
        return solutions[0].length;
    }

    Solution of(int bound, int combination) {
        return solutions[bound][combination];
    }

    /** Under dead load alone. */
    Solution dead(int bound) {
        return solutions[bound][0];
    }

    /** Force at a contact under dead load, over all bounds (N). */
    Span force(int contact) {
        Span span = Span.NOTHING;
        for (Solution[] bound : solutions) {
            span = span.with(bound[0].force(contact));
        }
        return span;
    }

    /** Greatest force at a contact over all bounds and combinations (N). */
    double greatest(int contact) {
        double greatest = 0;
        for (Solution[] bound : solutions) {
            for (Solution one : bound) {
                greatest = Math.max(greatest, one.force(contact));
            }
        }
        return greatest;
    }
}
