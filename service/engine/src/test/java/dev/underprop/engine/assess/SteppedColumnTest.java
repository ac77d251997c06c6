package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.assess.SteppedColumn.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Critical loads and bent shapes against finite differences and closed forms; published cases stand among the fixtures. */
class SteppedColumnTest {

    /** Cells over all pieces of a column cut in equal ones; the error falls with their square. */
    private static final int CELLS = 2400;

    private static List<Piece> random(long seed) {
        Random random = new Random(seed);
        List<Piece> pieces = new ArrayList<>();
        int left = 24;
        for (int i = 0; i < 3; i++) {
            int twelfths = i == 2 ? left : 1 + random.nextInt(left - 2 + i);
            left -= twelfths;
            pieces.add(new Piece(twelfths / 24.0 * 3, 1000 * Math.pow(30, random.nextDouble())));
        }
        return pieces;
    }

    /** Inverse iteration on y'' = -P/EI y: at a step the flexibility is the mean of both sides. */
    private static double byDifferences(List<Piece> pieces) {
        double length = pieces.stream().mapToDouble(Piece::length).sum();
        double step = length / CELLS;
        double[] flexibility = new double[CELLS + 1];
        for (int i = 0; i <= CELLS; i++) {
            flexibility[i] = (at(pieces, (i - 0.5) * step) + at(pieces, (i + 0.5) * step)) / 2;
        }
        double[] shape = new double[CELLS + 1];
        java.util.Arrays.fill(shape, 1, CELLS, 1);
        double load = 0;
        for (int round = 0; round < 60; round++) {
            double[] next = solve(flexibility, shape, step);
            double top = 0;
            for (double value : next) {
                top = Math.max(top, value);
            }
            double before = 0;
            for (int i = 1; i < CELLS; i++) {
                before = Math.max(before, shape[i]);
                next[i] /= top;
            }
            load = before / top;
            shape = next;
        }
        return load;
    }

    private static double at(List<Piece> pieces, double x) {
        double end = 0;
        for (Piece piece : pieces) {
            end += piece.length();
            if (x < end) {
                return 1 / piece.rigidity();
            }
        }
        return 1 / pieces.get(pieces.size() - 1).rigidity();
    }

    /** -y'' = flexibility times shape, zero at both ends, by elimination. */
    private static double[] solve(double[] flexibility, double[] shape, double step) {
        double[] ratio = new double[CELLS + 1];
        double[] value = new double[CELLS + 1];
        for (int i = 1; i < CELLS; i++) {
            double pivot = 2 - ratio[i - 1];
            ratio[i] = 1 / pivot;
            value[i] = (flexibility[i] * shape[i] * step * step + value[i - 1]) / pivot;
        }
        double[] next = new double[CELLS + 1];
        for (int i = CELLS - 1; i > 0; i--) {
            next[i] = value[i] + ratio[i] * next[i + 1];
        }
        return next;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void finiteDifferencesGiveTheSame(long seed) {
        List<Piece> pieces = random(seed);
        double expected = byDifferences(pieces);

        assertThat(new SteppedColumn(pieces).critical()).isCloseTo(expected, within(2e-5 * expected));
    }

    /** Of 30 times the stiffness in the middle, the second critical load lies below that of the stiffest part all along. */
    @Test
    void theLeastOfSeveralLoadsIsFound() {
        List<Piece> pieces = List.of(new Piece(0.1, 30_000), new Piece(2.8, 1000), new Piece(0.1, 30_000));

        assertThat(new SteppedColumn(pieces).critical()).isCloseTo(byDifferences(pieces), within(0.05));
        assertThat(new SteppedColumn(List.of(new Piece(1, 1), new Piece(2, 1))).critical())
                .isCloseTo(Math.PI * Math.PI / 9, within(1e-8));
    }

    /** Secant formula, e/cos(kL/2), and a kink in the middle, t/(2k)·tan(kL/2); kL/2 is 1. */
    @Test
    void bentShapes() {
        BentColumn.Piece half = new BentColumn.Piece(0, 1, 1, 0.02);
        BentColumn.Piece other = new BentColumn.Piece(1, 1, 1, 0);
        double[] both = new BentColumn(List.of(half, other), 0.1).offsets(1, 2);

        double expected = 0.1 / Math.cos(1) + 0.02 / 2 * Math.tan(1);
        assertThat(both[0]).isCloseTo(expected, within(1e-12));
        assertThat(both[1]).isCloseTo(expected, within(1e-12));
    }

    /** The crest lies in the first piece; in the second the greatest is at its near end, at x = 1.5: cos(0.5)/cos(1). */
    @Test
    void aPieceWithoutTheCrestHasItsGreatestAtAnEnd() {
        BentColumn.Piece long0 = new BentColumn.Piece(0, 1.5, 1, 0);
        BentColumn.Piece short1 = new BentColumn.Piece(1, 0.5, 1, 0);
        double[] offsets = new BentColumn(List.of(long0, short1), 0.1).offsets(1, 2);

        assertThat(offsets[0]).isCloseTo(0.1 / Math.cos(1), within(1e-12));
        assertThat(offsets[1]).isCloseTo(0.1 * Math.cos(0.5) / Math.cos(1), within(1e-12));
    }
}
