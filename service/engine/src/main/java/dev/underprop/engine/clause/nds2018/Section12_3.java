package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.List;

/**
 * Section 12.3: reference lateral design value of a lag screw through a steel side plate, by the six yield modes of single
 * shear, Table 12.3.1A. The root diameter stands for D in them, as in Table 12K; the bearing of the wood goes by the nominal
 * diameter.
 */
public final class Section12_3 {

    private static final Citation MODES = Citation.remembered("NDS", "2018", "12.3.1 and Table 12.3.1A");
    private static final Citation WOOD = Citation.remembered("NDS", "2018", "Table 12.3.3");
    private static final Citation STEEL = Citation.read("NDS", "2018", "Table 12K, footnote on Fes (read in 2015)");

    /** Thinner roots are reduced like thin nails. */
    private static final double THIN = 0.25;

    private Section12_3() {}

    /**
     * Dowel bearing strength of wood Fe (Pa), for diameters of 1/4 in and more.
     *
     * @param gravity specific gravity G, positive
     * @param diameter nominal (m), positive
     */
    public static Cited wood(Grain grain, double gravity, double diameter) {
        Admissible.positive(gravity, "G");
        double inches = Admissible.positive(diameter, "diameter") / Units.INCH;
        double psi =
                grain == Grain.PARALLEL ? 11_200 * gravity : 6_100 * StrictMath.pow(gravity, 1.45) / Math.sqrt(inches);
        return new Cited(psi * Units.PSI, "Fem", WOOD);
    }

    /** Dowel bearing strength of the steel plate Fes (Pa), that of the weaker steel of the tables whatever the plate is. */
    public static Cited steel() {
        return new Cited(61_850 * Units.PSI, "Fes", STEEL);
    }

    /**
     * Reference lateral value Z of one screw (N): the least of the six modes.
     *
     * @param size of the screw
     * @param grain how the force runs
     * @param gravity specific gravity G of the wood, positive
     * @param length p in the wood (m), positive; see {@link Section12_1}
     * @param plate thickness of the steel plate (m), positive
     */
    public static Cited lateral(LagSize size, Grain grain, double gravity, double length, double plate) {
        Modes modes = of(size, grain, gravity, length, plate);
        double root = size.root().value() / Units.INCH;
        double least = isThin(size) ? modes.least(1, 1, 1) / thin(root) : modes.least(1 / 4.0, 1 / 3.6, 1 / 3.2);
        return new Cited(least / angle(grain).value(), "Z", MODES);
    }

    private static Modes of(LagSize size, Grain grain, double gravity, double length, double plate) {
        Admissible.positive(length, "p");
        Admissible.positive(plate, "plate thickness");
        return new Modes(
                size.root().value(),
                size.yield().value(),
                wood(grain, gravity, size.diameter()).value(),
                steel().value(),
                length,
                plate);
    }

    /** The six modes (N) before their reduction: Im, Is, II, IIIm, IIIs, IV. Arguments as of {@link #lateral}. */
    public static List<Cited> modes(LagSize size, Grain grain, double gravity, double length, double plate) {
        Modes modes = of(size, grain, gravity, length, plate);
        return List.of(
                new Cited(modes.oneMain(), "Im", MODES),
                new Cited(modes.oneSide(), "Is", MODES),
                new Cited(modes.two(), "II", MODES),
                new Cited(modes.threeMain(), "IIIm", MODES),
                new Cited(modes.threeSide(), "IIIs", MODES),
                new Cited(modes.four(), "IV", MODES));
    }

    /** What a force at an angle to the grain takes from every mode. */
    public static Cited angle(Grain grain) {
        return new Cited(grain == Grain.PARALLEL ? 1 : 1.25, "Kθ", MODES);
    }

    /** Whether the root is so thin that one reduction term, {@link #reduction}, stands for all modes. */
    public static boolean isThin(LagSize size) {
        return size.root().value() / Units.INCH < THIN;
    }

    /** Reduction term of a thin root. */
    public static Cited reduction(LagSize size) {
        return new Cited(thin(size.root().value() / Units.INCH), "KD", MODES);
    }

    /** Reduction term of thin roots, Table 12.3.1B. */
    private static double thin(double inches) {
        return inches <= 0.17 ? 2.2 : 10 * inches + 0.5;
    }

    /**
     * The yield modes before their reduction.
     *
     * @param d diameter (m)
     * @param yield Fyb (Pa)
     * @param main Fem (Pa)
     * @param side Fes (Pa)
     * @param inMain lm (m)
     * @param inSide ls (m)
     */
    private record Modes(double d, double yield, double main, double side, double inMain, double inSide) {

        /** The least, bearing modes I, mode II and bending modes III and IV each with the inverse of their reduction. */
        double least(double bearing, double rotation, double bending) {
            double one = Math.min(oneMain(), oneSide()) * bearing;
            double three = Math.min(threeMain(), threeSide());
            return Math.min(Math.min(one, two() * rotation), Math.min(three, four()) * bending);
        }

        private double oneMain() {
            return d * inMain * main;
        }

        private double oneSide() {
            return d * inSide * side;
        }

        private double re() {
            return main / side;
        }

        private double two() {
            double re = re();
            double rt = inMain / inSide;
            double root = Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re);
            return (root - re * (1 + rt)) / (1 + re) * d * inSide * side;
        }

        private double threeMain() {
            double re = re();
            double term = 2 * yield * (1 + 2 * re) * d * d / (3 * main * inMain * inMain);
            return (Math.sqrt(2 * (1 + re) + term) - 1) * d * inMain * main / (1 + 2 * re);
        }

        private double threeSide() {
            double re = re();
            double term = 2 * yield * (2 + re) * d * d / (3 * main * inSide * inSide);
            return (Math.sqrt(2 * (1 + re) / re + term) - 1) * d * inSide * main / (2 + re);
        }

        private double four() {
            return d * d * Math.sqrt(2 * main * yield / (3 * (1 + re())));
        }
    }
}
