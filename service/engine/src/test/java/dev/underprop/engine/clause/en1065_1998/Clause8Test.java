package dev.underprop.engine.clause.en1065_1998;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes at the ends of what each class has; figures of strength stand among the fixtures. */
class Clause8Test {

    private static Outcome of(String letter, double longest, double length) {
        return switch (letter) {
            case "A" -> Clause8.classA(longest, length);
            case "B" -> Clause8.classB(longest, length);
            case "C" -> Clause8.classC(longest, length);
            case "D" -> Clause8.classD(longest, length);
            default -> Clause8.classE(longest, length);
        };
    }

    /** 51·2.5/2.5² and 51·4/4², and so on; classes D and E hold what they hold at any length. */
    @ParameterizedTest
    @CsvSource({
        "A, 2.5, 20.4",
        "A, 4.0, 12.75",
        "B, 2.5, 27.2",
        "B, 5.5, 12.363636",
        "C, 2.5, 40.8",
        "C, 5.5, 18.545455",
        "D, 2.5, 34",
        "D, 5.5, 34",
        "E, 2.5, 51",
        "E, 5.5, 51"
    })
    void smallestAndLargestAtFullExtension(String letter, double longest, double kilonewtons) {
        assertThat(((Outcome.Value) of(letter, longest, longest)).cited().value())
                .isCloseTo(kilonewtons * 1e3, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"A, 2.0", "A, 4.5", "B, 2.0", "B, 6.0", "C, 6.0", "D, 2.0", "D, 6.0", "E, 2.25", "E, 6.0"})
    void thereIsNothingBeyond(String letter, double longest) {
        assertThat(of(letter, longest, 1)).isInstanceOf(Outcome.Refused.class);
    }
}
