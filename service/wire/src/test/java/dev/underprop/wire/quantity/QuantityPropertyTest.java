package dev.underprop.wire.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityPropertyTest {
    private static final List<Dimension> DIMENSIONS = List.of(Dimension.values());
    private static final String ALPHABET = "0123456789 '\"-+/.,eEftinlbkNmpsaPMd\u2032\u00bd\t";

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void anyTextIsReadOrRefused(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50_000; i++) {
            String text = text(random);
            Dimension dimension = DIMENSIONS.get(random.nextInt(DIMENSIONS.size()));
            QuantityReading reading = Quantity.parse(text, dimension);
            if (reading instanceof QuantityReading.Value value) {
                assertThat(value.si()).as("seed %d, %s", seed, text).isFinite();
            }
        }
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(12);
        for (int i = 0; i < length; i++) {
            text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22})
    void feetAndInchesAreTheSameDoubleAsInchesAlone(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            int feet = random.nextInt(200);
            int inches = random.nextInt(12);
            int sixteenths = 1 + random.nextInt(15);
            String sign = random.nextBoolean() ? "-" : "";
            String mixed = sign + feet + "'-" + inches + " " + sixteenths + "/16\"";
            String alone = sign + (feet * 12 + inches) + " " + sixteenths + "/16 in";
            String decimal = sign + (feet * 12 + inches + sixteenths / 16.0) + " in";
            QuantityReading expected = Quantity.parse(alone, Dimension.LENGTH);
            assertThat(Quantity.parse(mixed, Dimension.LENGTH))
                    .as("seed %d, %s", seed, mixed)
                    .isEqualTo(expected);
            assertThat(Quantity.parse(decimal, Dimension.LENGTH))
                    .as("seed %d, %s", seed, decimal)
                    .isEqualTo(expected);
        }
    }
}
