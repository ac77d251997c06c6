package dev.underprop.engine.lift;

import dev.underprop.engine.statics.Solution;

/** The floor with its screws where they are, under every bound and case; dead load alone is the first. */
final class Shape {

    private final Solution[][] solutions;
    private final int[] combinations;
    private final String moves;

    /**
     * @param solutions by bound and case
     * @param combinations by case: by which its strength is judged
     * @param moves what moves, in words; empty where everything is held
     */
    Shape(Solution[][] solutions, int[] combinations, String moves) {
        this.solutions = solutions;
        this.combinations = combinations;
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
        return combinations.length;
    }

    /** By which combination the strength of members is judged in a case. */
    int combination(int one) {
        return combinations[one];
    }

    Solution of(int bound, int one) {
        return solutions[bound][one];
    }

    /** Under dead load alone. */
    Solution dead(int bound) {
        return solutions[bound][0];
    }

    /** Under dead load and live load everywhere; dead load alone where there is no live load. */
    Solution full(int bound) {
        return solutions[bound][Math.min(1, cases() - 1)];
    }

    /** Force at a contact under dead load, over all bounds (N). */
    Span force(int contact) {
        Span span = Span.NOTHING;
        for (Solution[] bound : solutions) {
            span = span.with(bound[0].force(contact));
        }
        return span;
    }

    /** Greatest force at a contact over all bounds and cases (N). */
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
