package dev.underprop.wire.tree;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.wire.fault.Fault;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever the bytes, there is an answer: random ones, random words of the formats, and good documents gone wrong. */
class AnyBytesTest {
    private static final int ROUNDS = 20_000;
    private static final List<String> WORDS = List.of(
            "{",
            "}",
            "[",
            "]",
            ":",
            ",",
            "\"",
            "'",
            "\n",
            " ",
            "  ",
            "\t",
            "- ",
            "? ",
            ": ",
            "&a ",
            "*a",
            "!t ",
            "!!int ",
            "<<",
            "#",
            "|\n",
            ">\n",
            "---\n",
            "...\n",
            "%YAML 1.2\n",
            "%TAG ! x\n",
            "true",
            "null",
            "~",
            "1",
            "0x",
            "1e999",
            ".inf",
            "NaN",
            "\\u",
            "\\ud800",
            "\u00e9",
            "\ud83d\ude00",
            "\uFEFF",
            "\u0000",
            "\u2028",
            "\u0085",
            "a",
            "@",
            "`",
            "\r",
            "=");
    private static final String GOOD = """
            {"id": "2026-014", "floor": {"joists": {"count": 8, "start": "0 ft"},
             "loads": [{"name": "floor", "dead": "12 psf"}, {"name": "\u00e9", "live": 1.5e1}]}, "on": true}
            """;

    @ParameterizedTest
    @CsvSource({"JSON, 101", "YAML, 102"})
    void randomBytes(Format format, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < ROUNDS; i++) {
            byte[] bytes = new byte[random.nextInt(24)];
            random.nextBytes(bytes);
            answer(bytes, format, seed, i);
        }
    }

    @ParameterizedTest
    @CsvSource({"JSON, 201", "YAML, 202"})
    void randomWords(Format format, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < ROUNDS; i++) {
            StringBuilder text = new StringBuilder();
            int count = random.nextInt(16);
            for (int j = 0; j < count; j++) {
                text.append(WORDS.get(random.nextInt(WORDS.size())));
            }
            answer(text.toString().getBytes(StandardCharsets.UTF_8), format, seed, i);
        }
    }

    @ParameterizedTest
    @CsvSource({"JSON, 301", "YAML, 302"})
    void goodDocumentsGoneWrong(Format format, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < ROUNDS; i++) {
            byte[] bytes = GOOD.getBytes(StandardCharsets.UTF_8);
            int changes = 1 + random.nextInt(3);
            for (int j = 0; j < changes; j++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            answer(bytes, format, seed, i);
        }
    }

    private static void answer(byte[] bytes, Format format, long seed, int round) {
        String where = "seed " + seed + ", round " + round;
        TreeReading reading = read(bytes, format, where);
        if (reading instanceof TreeReading.Unreadable unreadable) {
            assertThat(unreadable.faults()).as(where).isNotEmpty().allSatisfy(fault -> {
                assertThat(fault.line()).isPositive();
                assertThat(fault.column()).isPositive();
            });
        } else {
            Fault any = Fault.of("any", "", "");
            assertThat(Locator.locate(List.of(any), bytes, format)).as(where).allMatch(Fault::placed);
        }
    }

    private static TreeReading read(byte[] bytes, Format format, String where) {
        try {
            return new TreeReader(Limits.USUAL).read(bytes, format);
        } catch (RuntimeException e) {
            throw new AssertionError(where + ": " + new String(bytes, StandardCharsets.UTF_8), e);
        }
    }
}
