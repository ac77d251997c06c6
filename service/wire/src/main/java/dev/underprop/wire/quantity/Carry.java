package dev.underprop.wire.quantity;

import java.math.BigDecimal;

/** Says how feet with too many inches should have been written. */
final class Carry {
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    private Carry() {}

    /**
     * For 6 feet and "14 1/2" inches: "7 ft 2 1/2 in".
     *
     * @param feet whole feet as written
     * @param inches the inches, 12 or more
     * @param written the inches as written
     */
    static String over(BigDecimal feet, Exact inches, String written) {
        BigDecimal more = inches.top().divideToIntegralValue(inches.bottom().multiply(TWELVE));
        Exact rest = inches.plus(more.multiply(TWELVE).negate());
        return feet.add(more).toBigInteger() + " ft " + text(rest, written) + " in";
    }

    private static String text(Exact rest, String written) {
        if (!written.contains("/")) {
            return rest.top().toPlainString();
        }
        BigDecimal[] parts = rest.top().divideAndRemainder(rest.bottom());
        if (parts[1].signum() == 0) {
            return parts[0].toPlainString();
        }
        String fraction = parts[1].toPlainString() + "/" + rest.bottom().toPlainString();
        return parts[0].signum() == 0 ? fraction : parts[0].toPlainString() + " " + fraction;
    }
}
