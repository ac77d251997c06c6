package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.Arrays;
import java.util.Optional;

/** Lag screws by nominal diameter, Appendix L, Table L2, with the bending yield strengths assumed in Table 12K. */
public enum LagSize {
    QUARTER(1 / 4.0, 0.173, 70_000),
    FIVE_SIXTEENTHS(5 / 16.0, 0.227, 60_000),
    THREE_EIGHTHS(3 / 8.0, 0.265, 45_000),
    SEVEN_SIXTEENTHS(7 / 16.0, 0.328, 45_000),
    HALF(1 / 2.0, 0.371, 45_000),
    FIVE_EIGHTHS(5 / 8.0, 0.471, 45_000),
    THREE_QUARTERS(3 / 4.0, 0.579, 45_000),
    SEVEN_EIGHTHS(7 / 8.0, 0.683, 45_000),
    ONE(1, 0.780, 45_000);

    private static final Citation ROOT = Citation.remembered("NDS", "2018", "Table L2");
    private static final Citation YIELD = Citation.remembered("NDS", "2018", "Table 12K, footnote on Fyb");

    /** What a catalogue in millimetres may round a size by (m). */
    private static final double NAMED = 1e-4;

    private final double inches;
    private final double root;
    private final double psi;

    LagSize(double inches, double root, double psi) {
        this.inches = inches;
        this.root = root;
        this.psi = psi;
    }

    /** The size of a nominal diameter (m), if the table holds one. */
    public static Optional<LagSize> of(double diameter) {
        return Arrays.stream(values())
                .filter(size -> Math.abs(size.inches * Units.INCH - diameter) <= NAMED)
                .findFirst();
    }

    /** Nominal diameter D (m). */
    public double diameter() {
        return inches * Units.INCH;
    }

    /** Root diameter Dr (m). */
    public Cited root() {
        return new Cited(root * Units.INCH, "Dr", ROOT);
    }

    /** Bending yield strength Fyb (Pa). */
    public Cited yield() {
        return new Cited(psi * Units.PSI, "Fyb", YIELD);
    }
}
