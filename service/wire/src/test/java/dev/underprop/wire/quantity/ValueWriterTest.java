package dev.underprop.wire.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ValueWriterTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "-1, -1",
        "3.5, 3.5",
        "0.1, 0.1",
        "100, 100",
        "1234.5, 1234.5",
        "0.333333333333333333, 0.333333333",
        "0.666666666666666666, 0.666666667",
        "12345678.94, 12345678.9",
        "123456789, 123456789",
        "123456789.5, 123456790",
        "123456788.5, 123456788",
        "999999999, 999999999",
        "999999999.4, 999999999",
        "999999999.7, 1e9",
        "0.9999999999, 1",
        "9.9999999999, 10",
        "1e9, 1e9",
        "1234567890123, 1.23456789e12",
        "-2.5e15, -2.5e15",
        "0.000001, 0.000001",
        "0.00000123456789123, 0.00000123456789",
        "9.9999999999e-7, 0.000001",
        "9.99e-7, 9.99e-7",
        "-1.5e-7, -1.5e-7",
        "4.9e-324, 4.94065646e-324",
        "1.7976931348623157e308, 1.79769313e308",
        "2.0E-3, 0.002",
        "2.2250738585072014E-308, 2.22507386e-308"
    })
    void writesAtMostNineDigits(double value, String text) {
        assertThat(ValueWriter.nine(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNotFinite(double value) {
        assertThatThrownBy(() -> ValueWriter.nine(value)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theQuickWayAgreesWithTheDefinition(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 100_000; i++) {
            double value = StrictMath.pow(10, random.nextDouble() * 16 - 6.5);
            assertThat(ValueWriter.nine(value))
                    .as("seed %d, value %s", seed, value)
                    .isEqualTo(ValueWriter.exact(value));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void tiesGoToTheEvenDigit(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double tie = (100_000_000 + random.nextInt(900_000_000)) + 0.5;
            double value = tie / (1 << random.nextInt(8));
            BigDecimal expected = new BigDecimal(value).round(new MathContext(9, RoundingMode.HALF_EVEN));
            assertThat(new BigDecimal(ValueWriter.nine(value)))
                    .as("seed %d, value %s", seed, value)
                    .isEqualByComparingTo(expected);
        }
    }

    @Test
    void everyTextIsANumberThatReadsBackTheSame() {
        Random random = new Random(6);
        for (int i = 0; i < 50_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                String text = ValueWriter.nine(value);
                assertThat(ValueWriter.nine(Double.parseDouble(text)))
                        .as("value %s", value)
                        .isEqualTo(text);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8})
    void whatIsReadBackIsKnownWithoutReading(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50_000; i++) {
            double value = (random.nextBoolean() ? 1 : -1) * StrictMath.pow(10, random.nextDouble() * 20 - 8);
            assertThat(ValueWriter.written(value))
                    .as("seed %d, value %s", seed, value)
                    .isEqualTo(Double.parseDouble(ValueWriter.nine(value)));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, 4, 0",
        "-0.0, 4, 0",
        "12345, 4, 12340",
        "12355, 4, 12360",
        "-99995, 4, -100000",
        "123456789012345678, 4, 123500000000000000",
        "0.00001234567, 4, 0.00001235",
        "0.000000012345, 3, 0.0000000123",
        "1.0004, 3, 1",
        "0.9996, 3, 1",
        "2.5, 1, 2",
        "1050, 4, 1050"
    })
    void writesFewDigitsPlainly(double value, int digits, String text) {
        assertThat(ValueWriter.plain(value, digits)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(longs = {9, 10, 11})
    void fewDigitsAgreeWithTheirDefinition(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50_000; i++) {
            int digits = 1 + random.nextInt(9);
            double value = random.nextInt(8) == 0
                    ? random.nextInt(100_000) / 8.0
                    : (random.nextBoolean() ? 1 : -1) * StrictMath.pow(10, random.nextDouble() * 24 - 8);
            BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
            String expected =
                    rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
            assertThat(ValueWriter.plain(value, digits))
                    .as("seed %d, value %s, digits %d", seed, value, digits)
                    .isEqualTo(expected);
        }
    }
}
