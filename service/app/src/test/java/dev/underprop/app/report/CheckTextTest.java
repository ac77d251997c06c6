package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.Citation;
import dev.underprop.api.model.Quantity;
import dev.underprop.wire.record.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckTextTest {

    @ParameterizedTest
    @CsvSource({
        "0.5, PASS, 0.500",
        "1.0, PASS, 1.000",
        "1.0000001, FAIL, > 1",
        "1.0004, FAIL, > 1",
        "1.0006, FAIL, 1.001",
        "12.3456, FAIL, 12.346",
    })
    void failureIsNeverShownAsExactlyOne(double ratio, CheckVerdict verdict, String shown) {
        assertThat(text(check(verdict).ratio(ratio)))
                .startsWith("    " + " ".repeat(7 - shown.length()) + shown + "  " + verdict);
    }

    @Test
    void passSaysWhatIsComparedAndWhere() {
        CheckResult check = check(CheckVerdict.PASS)
                .ratio(0.25)
                .at(new Quantity().value(3.33333333).unit("ft"))
                .demand(new Quantity().value(123456.789).unit("psi"))
                .capacity(new Quantity().value(493827.0).unit("psi"))
                .situation("shored")
                .combination("D + L")
                .pattern("live load everywhere");

        assertThat(text(check))
                .contains("Bending, A at 3.333 ft: 123500 psi against 493800 psi.")
                .contains("Situation shored, D + L, live load everywhere [NDS, 2018, 3.3, read]");
    }

    @Test
    void conditionWithoutNumbersComesFirst() {
        CheckResult condition = check(CheckVerdict.FAIL);

        assertThat(text(condition)).startsWith("          -  FAIL The message.");
        assertThat(Findings.severity(condition))
                .isGreaterThan(Findings.severity(check(CheckVerdict.FAIL).ratio(99.0)));
    }

    private static CheckResult check(CheckVerdict verdict) {
        return new CheckResult()
                .check("beam-bending")
                .title("Bending")
                .place("A")
                .verdict(verdict)
                .message("The message.")
                .citation(new Citation()
                        .document("NDS")
                        .edition("2018")
                        .locator("3.3")
                        .standing("read"));
    }

    private static String text(CheckResult check) {
        return new CheckText(new Paint(false)).of(check);
    }
}
