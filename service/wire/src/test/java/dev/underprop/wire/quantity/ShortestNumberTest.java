package dev.underprop.wire.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShortestNumberTest {
    /** RFC 8785, appendix B; rows from memory. */
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "ffefffffffffffff, -1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
        "41b3de4355555556, 333333333.3333334",
        "41b3de4355555557, 333333333.33333343",
        "becbf647612f3696, -0.0000033333333333333333",
        "43143ff3c1cb0959, 1424953923781206.2"
    })
    void isWrittenAsTheCanonicalFormDoes(String bits, String text) {
        assertThat(ShortestNumber.of(Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16))))
                .isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32})
    void readsBackAndIsNotLongerThanNeeded(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                String text = ShortestNumber.of(value);
                assertThat(Double.parseDouble(text)).as("seed %d", seed).isEqualTo(value);
                assertThat(digits(text))
                        .as("seed %d, %s", seed, text)
                        .isLessThanOrEqualTo(digits(Double.toString(value)));
            }
        }
    }

    private static int digits(String text) {
        return new BigDecimal(text).stripTrailingZeros().precision();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNotFinite(double value) {
        assertThatThrownBy(() -> ShortestNumber.of(value)).isInstanceOf(IllegalArgumentException.class);
    }
}
