package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.Citation;
import dev.underprop.api.model.Working;
import dev.underprop.api.model.WorkingLine;
import dev.underprop.api.model.WorkingSource;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The working of checks as a person reads it. */
class WorkingTextTest {

    private static final Citation CLAUSE =
            new Citation().document("NDS").edition("2018").locator("3.3.2").standing("from memory");

    private static WorkingLine line(String symbol, double value, String unit, WorkingSource source) {
        return new WorkingLine()
                .symbol(symbol)
                .meaning("bending stress")
                .value(value)
                .unit(unit)
                .source(source);
    }

    private static CheckResult check() {
        return new CheckResult()
                .check("beam-bending")
                .title("Shore beam in bending")
                .verdict(CheckVerdict.PASS)
                .place("beam of A")
                .citation(CLAUSE)
                .message("");
    }

    @Test
    void symbolValueAndUnitStandInColumns() {
        Working working = new Working()
                .addLinesItem(line("M", 53462.2345, "lb-in", WorkingSource.ANALYSIS))
                .addLinesItem(line("n", 3, "1", WorkingSource.PLAN))
                .addLinesItem(line("fb", 833.1102, "psi", WorkingSource.RULE)
                        .formula("M / S")
                        .citation(CLAUSE));

        assertThat(WorkingText.of(List.of(check().working(working)))).isEqualTo("""
                            Shore beam in bending, beam of A: PASS
                              [NDS, 2018, 3.3.2, from memory]
                              M            53462.2 lb-in  bending stress (analysis)
                              n                  3        bending stress (plan)
                              fb            833.11 psi    = M / S; bending stress [NDS, 2018, 3.3.2, from memory]
                        """);
    }

    @Test
    void longFormulasHangInTheirColumn() {
        Working working = new Working()
                .addLinesItem(line("CL", 0.894167, "1", WorkingSource.RULE).formula("x + ".repeat(40) + "y"));

        List<String> lines =
                WorkingText.of(List.of(check().working(working))).lines().toList();

        assertThat(lines).allMatch(text -> text.length() <= 100);
        assertThat(lines.subList(3, lines.size())).isNotEmpty().allMatch(text -> text.startsWith(" ".repeat(34)));
    }

    @Test
    void whatIsNotWrittenOutIsSaid() {
        String text = WorkingText.of(
                List.of(check().working(new Working().note("The working is not written out for this check."))));

        assertThat(text).contains("The working is not written out for this check.");
        assertThat(WorkingText.of(List.of(check()))).isEmpty();
    }
}
