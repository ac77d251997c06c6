package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 12.2: reference withdrawal design values. */
public final class Section12_2 {

    private static final Citation LAG = Citation.read("NDS", "2018", "12.2.1.1 and Table 12.2A");

    private Section12_2() {}

    /**
     * Reference withdrawal value W of one lag screw in side grain, by length of thread without the tip (N/m): 1800 G^1.5
     * D^0.75 in pounds an inch, D in inches.
     *
     * @param gravity specific gravity G, positive
     * @param diameter nominal (m), positive
     */
    public static Cited lagWithdrawal(double gravity, double diameter) {
        double inches = Admissible.positive(diameter, "diameter") / Units.INCH;
        double pounds = 1800 * StrictMath.pow(Admissible.positive(gravity, "G"), 1.5) * StrictMath.pow(inches, 0.75);
        return new Cited(pounds * Units.POUND / Units.INCH, "W", LAG);
    }
}
