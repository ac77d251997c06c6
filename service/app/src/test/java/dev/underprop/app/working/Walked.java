package dev.underprop.app.working;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.Working;
import dev.underprop.api.model.WorkingLine;
import dev.underprop.api.model.WorkingSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Follows a calculation record as a reviewer does: from the numbers as printed, line by line. */
final class Walked {

    /** What nine printed digits of each line may leave, where a difference of like numbers loses some. */
    private static final double ROUNDING = 1e-6;

    private Walked() {}

    /** Fails where a record is not there, or its numbers do not follow. */
    static void follow(String plan, CheckResult check) {
        String name = plan + ", " + check.getCheck() + ", " + check.getPlace();
        Working working = check.getWorking();
        assertThat(working).as(name).isNotNull();
        List<WorkingLine> lines = working.getLines();
        assertThat(lines).as(name).hasSizeGreaterThan(check.getCapacity() == null ? 1 : 4);
        Map<String, Double> known = new HashMap<>();
        for (WorkingLine line : lines) {
            follow(name + ": " + line.getSymbol(), line, known);
        }
        end(name, check, lines);
    }

    private static void follow(String name, WorkingLine line, Map<String, Double> known) {
        assertThat(line.getValue()).as(name).isFinite();
        double value = printed(line.getValue()) * SizeOf.unit(line.getUnit());
        if (line.getFormula() != null) {
            double worked = Formula.value(line.getFormula(), known);
            assertThat(Math.abs(worked - value))
                    .as(name + " = " + line.getFormula() + " of " + known)
                    .isLessThanOrEqualTo(ROUNDING * Math.abs(value) + Double.MIN_NORMAL);
        }
        assertThat(line.getCitation() != null).as(name).isEqualTo(line.getSource() == WorkingSource.RULE);
        if (line.getSource() == WorkingSource.ARITHMETIC) {
            assertThat(line.getFormula()).as(name).isNotNull();
        }
        assertThat(known.put(line.getSymbol(), value))
                .as(name + " stands twice")
                .isNull();
    }

    /** As a document holds it: nine digits. */
    private static double printed(double value) {
        return Double.parseDouble(dev.underprop.wire.quantity.ValueWriter.nine(value));
    }

    private static void end(String name, CheckResult check, List<WorkingLine> lines) {
        boolean refused = check.getCapacity() == null;
        int from = lines.size() - (refused ? 1 : 3);
        assertThat(lines.get(from).getSymbol()).as(name).isEqualTo("demand");
        assertThat(lines.get(from).getValue())
                .as(name)
                .isEqualTo(check.getDemand().getValue());
        assertThat(lines.get(from).getUnit())
                .as(name)
                .isEqualTo(check.getDemand().getUnit());
        if (!refused) {
            assertThat(lines.get(from + 1).getSymbol()).as(name).isEqualTo("capacity");
            assertThat(lines.get(from + 1).getValue())
                    .as(name)
                    .isEqualTo(check.getCapacity().getValue());
            assertThat(lines.get(from + 1).getUnit())
                    .as(name)
                    .isEqualTo(check.getCapacity().getUnit());
            assertThat(lines.get(from + 2).getSymbol()).as(name).isEqualTo("ratio");
            assertThat(lines.get(from + 2).getValue()).as(name).isEqualTo(check.getRatio());
        }
    }
}
