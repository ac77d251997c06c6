package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.FOOT;
import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.PLF;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Plans.PSF;
import static dev.underprop.engine.assess.Plans.PSI;

/** Units of printed numbers as so many SI units. */
final class UnitsOf {

    private UnitsOf() {}

    static double si(String unit) {
        return switch (unit) {
            case "1" -> 1;
            case "%" -> 1e-2;
            case "deg" -> Math.PI / 180;
            case "N" -> 1;
            case "N.m" -> 1;
            case "N.mm" -> 1e-3;
            case "MPa" -> 1e6;
            case "in" -> INCH;
            case "ft" -> FOOT;
            case "mm" -> 1e-3;
            case "m" -> 1;
            case "in2" -> INCH * INCH;
            case "mm2" -> 1e-6;
            case "in3" -> INCH * INCH * INCH;
            case "in4" -> INCH * INCH * INCH * INCH;
            case "mm4" -> 1e-12;
            case "lbf" -> POUND;
            case "kip" -> 1000 * POUND;
            case "kN" -> 1e3;
            case "lbf/in" -> POUND / INCH;
            case "lbf/ft" -> PLF;
            case "lbf.in" -> POUND * INCH;
            case "lbf.ft" -> POUND * FOOT;
            case "kip.ft" -> 1000 * POUND * FOOT;
            case "kN.m" -> 1e3;
            case "lbf.in2" -> POUND * INCH * INCH;
            case "mm3" -> 1e-9;
            case "psi" -> PSI;
            case "ksi" -> 1000 * PSI;
            case "psf" -> PSF;
            case "ksf" -> 1000 * PSF;
            case "kPa", "kN/m" -> 1e3;
            case "kN/m3" -> 1e3;
            default -> throw new IllegalArgumentException("no such unit: " + unit);
        };
    }
}
