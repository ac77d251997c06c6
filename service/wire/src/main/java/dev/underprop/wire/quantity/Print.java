package dev.underprop.wire.quantity;

import java.math.BigDecimal;

/**
 * A unit of results.
 *
 * @param symbol as results show it
 * @param size its size in SI
 */
record Print(String symbol, double size) {
    static Print named(String symbol) {
        return new Print(symbol, size(symbol));
    }

    static Print product(String symbol, String one, String other) {
        return new Print(symbol, size(one) * size(other));
    }

    static Print power(String symbol, String base, int exponent) {
        double size = 1;
        for (int i = 0; i < exponent; i++) {
            size *= size(base);
        }
        return new Print(symbol, size);
    }

    private static double size(String symbol) {
        return Exact.of(BigDecimal.ONE).in(Unit.named(symbol));
    }
}
