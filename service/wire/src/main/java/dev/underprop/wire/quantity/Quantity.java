package dev.underprop.wire.quantity;

import dev.underprop.wire.fault.Messages;
import java.util.List;

/**
 * Reads quantities as the trade writes them: {@code 10 ft}, {@code 6'-10 1/2"}, {@code 40 psf}, {@code 1.5e3 lb}.
 *
 * <p>The grammar, in ISO/IEC 14977 notation:
 *
 * <pre>
 * quantity    = [ sign ] , ( feet inches | simple ) ;
 * simple      = number , [ blanks ] , unit ;
 * feet inches = digits , [ blanks ] , foot , [ blanks | "-" ] , inches , [ blanks ] , inch ;
 * number      = decimal , [ exponent ] | fraction | mixed ;
 * inches      = decimal | fraction | mixed ;
 * decimal     = digits , [ "." , digits ] | "." , digits ;
 * exponent    = ( "e" | "E" ) , [ sign ] , digits ;
 * fraction    = digits , "/" , digits ;
 * mixed       = digits , ( "-" | blanks ) , fraction ;
 * foot        = "ft" | "'" ;
 * inch        = "in" | '"' ;
 * unit        = (* a unit of the table below, for the kind that is wanted *) ;
 * sign        = "+" | "-" ;
 * blanks      = blank , { blank } ;
 * blank       = (* a space or a tab *) ;
 * digits      = digit , { digit } ;
 * digit       = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" ;
 * </pre>
 *
 * <p>Beyond the grammar: a sign stands for the whole ({@code -1 ft 6 in} is 18 inches below); inches after feet are below
 * 12; a fraction after a whole number is below 1; a denominator is not zero; unit symbols are read in the case in which
 * they are listed; pounds are pounds-force, and units of mass are refused; blanks around the quantity do not count, and
 * it is at most 64 characters long. The hyphen between feet and inches touches both, so that it cannot be taken for a
 * minus. Typographic primes, fractions, dashes and blanks are refused. The value is the double nearest to the exact one,
 * so the same length in other units is the same number.
 */
public final class Quantity {
    private static final int LONGEST = 64;

    private Quantity() {}

    /**
     * Reads one quantity.
     *
     * @param text the quantity as written
     * @param expected what it must measure
     * @return the value in the SI unit of the dimension, or the fault
     */
    public static QuantityReading parse(String text, Dimension expected) {
        try {
            double si = read(trimmed(text), expected);
            return new QuantityReading.Value(si);
        } catch (Refusal refusal) {
            return new QuantityReading.Refused(refusal.fault());
        }
    }

    /** The unit symbols read for a dimension, in a fixed order. */
    public static List<String> units(Dimension dimension) {
        return Unit.symbols(dimension);
    }

    private static double read(String text, Dimension expected) {
        if (text.isEmpty()) {
            throw new Refusal(Messages.QUANTITY_EMPTY.fault("", expected.phrase(), expected.example()));
        }
        if (text.length() > LONGEST) {
            throw new Refusal(Messages.QUANTITY_TOO_LONG.fault(text).withLimit(LONGEST + " characters"));
        }
        Characters.screen(text);
        Measure measure = new QuantityScanner(text, expected).scan();
        return finite(text, measure);
    }

    private static double finite(String text, Measure measure) {
        double si = measure.number().in(measure.unit());
        boolean vanished = si == 0 && measure.number().top().signum() != 0;
        if (Double.isInfinite(si) || vanished) {
            throw new Refusal(Messages.QUANTITY_OUT_OF_RANGE.fault(text));
        }
        return si;
    }

    private static String trimmed(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && Characters.blank(text.charAt(from))) {
            from++;
        }
        while (to > from && Characters.blank(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }
}
