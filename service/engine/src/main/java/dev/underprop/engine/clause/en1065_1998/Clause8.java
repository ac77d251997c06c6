package dev.underprop.engine.clause.en1065_1998;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Nominal characteristic strengths of props by class and length. All from memory. */
public final class Clause8 {

    private static final Citation STRENGTH = Citation.remembered("EN 1065", "1998", "clause 8");

    /** Over all: resistance by 1.1, load by 1.5 (EN 12812:2008, from memory). */
    public static final double FACTOR = 1.1 * 1.5;

    private static final double KILO = 1e3;

    /** A length on its limit counts as within; conversion leaves about 1e-15. */
    private static final double ROUNDING = 1e-12;

    private Clause8() {}

    /**
     * What a class is defined by: its strength is {@code times} · lmax/l², at most {@code most}.
     *
     * @param times (N·m), 0 where the strength does not fall with the length
     * @param most (N)
     */
    public record Constants(double times, double most) {}

    /** The constants of a class, A to E. */
    public static Constants constants(String letter) {
        double[] kilo = kilo(letter);
        return new Constants(KILO * kilo[0], KILO * kilo[1]);
    }

    /** Constant (kN·m) and greatest strength (kN). */
    private static double[] kilo(String letter) {
        return switch (letter) {
            case "A" -> new double[] {51, 44};
            case "B" -> new double[] {68, 51};
            case "C" -> new double[] {102, 59.5};
            case "D" -> new double[] {0, 34};
            case "E" -> new double[] {0, 51};
            default -> throw new IllegalArgumentException("no class " + letter);
        };
    }

    /**
     * Class A: 51.0 kN·m times lmax over l², at most 44.0 kN. Refused beyond the full extension, and where there is no such
     * size.
     *
     * @param longest lmax (m), positive
     * @param length l (m), positive
     */
    public static Outcome classA(double longest, double length) {
        return falling("A", longest, length);
    }

    /** Class B: 68.0 kN·m times lmax over l², at most 51.0 kN. */
    public static Outcome classB(double longest, double length) {
        return falling("B", longest, length);
    }

    /** Class C: 102.0 kN·m times lmax over l², at most 59.5 kN. */
    public static Outcome classC(double longest, double length) {
        return falling("C", longest, length);
    }

    /** Class D: 34.0 kN at any extension. */
    public static Outcome classD(double longest, double length) {
        return constant("D", longest, length);
    }

    /** Class E: 51.0 kN at any extension. */
    public static Outcome classE(double longest, double length) {
        return constant("E", longest, length);
    }

    private static Outcome falling(String letter, double longest, double length) {
        Outcome refused = constant(letter, longest, length);
        double times = kilo(letter)[0];
        double most = kilo(letter)[1];
        return refused instanceof Outcome.Refused
                ? refused
                : Outcome.of(KILO * Math.min(most, times * longest / (length * length)), "Ry,k", STRENGTH);
    }

    private static Outcome constant(String letter, double longest, double length) {
        Admissible.positive(longest, "lmax");
        Admissible.positive(length, "l");
        double greatest = letter.equals("A") ? 4.0 : 5.5;
        double halves = longest * 2;
        boolean size = Math.abs(halves - StrictMath.rint(halves)) < 1e-9 && longest > 2.4 && longest < greatest + 0.1;
        if (!size) {
            return new Outcome.Refused(
                    String.format(Locale.ROOT, "class %s has no size of %.2f m at full extension", letter, longest),
                    STRENGTH);
        }
        return length <= longest * (1 + ROUNDING)
                ? Outcome.of(KILO * kilo(letter)[1], "Ry,k", STRENGTH)
                : new Outcome.Refused(
                        String.format(
                                Locale.ROOT,
                                "a length of %.2f m is beyond its full extension of %.2f m",
                                length,
                                longest),
                        STRENGTH);
    }
}
