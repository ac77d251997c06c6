package dev.underprop.wire.answer;

import dev.underprop.api.model.Working;
import dev.underprop.api.model.WorkingLine;
import dev.underprop.api.model.WorkingSource;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Steps;
import dev.underprop.engine.standard.Step;
import dev.underprop.wire.quantity.WorkingUnit;
import org.jspecify.annotations.Nullable;

/** Writes the calculation record of a check. Its last lines are the check's own demand, capacity and ratio. */
final class WorkingWriter {

    /** What stands in for a record that is not there. */
    static final String NOT_WRITTEN = "The working is not written out for this check.";

    private static final String NUMBER = "1";

    private final Figures figures;

    WorkingWriter(Figures figures) {
        this.figures = figures;
    }

    /**
     * The record of a check; nothing where nothing was compared.
     *
     * @param check as it is written, with its numbers
     */
    @Nullable
    Working working(dev.underprop.api.model.CheckResult check, CheckResult result) {
        if (check.getDemand() == null) {
            return null;
        }
        Steps steps = result.steps();
        if (!steps.written()) {
            return new Working().note(NOT_WRITTEN);
        }
        Working working = new Working();
        boolean site = steps.scale() == Steps.Scale.SITE;
        steps.lines().forEach(step -> working.addLinesItem(line(step, site)));
        end(working, check, steps);
        return result.finding() instanceof CheckResult.Refused refused
                ? working.note("A rule leaves no capacity: " + refused.reason() + ".")
                : working;
    }

    private WorkingLine line(Step step, boolean site) {
        WorkingUnit unit = WorkingUnit.valueOf(step.dimension().name());
        dev.underprop.api.model.Quantity quantity = figures.quantity(unit, site, step.value());
        WorkingLine line = new WorkingLine()
                .symbol(step.symbol())
                .meaning(step.meaning())
                .value(quantity.getValue())
                .unit(quantity.getUnit())
                .source(source(step.origin()));
        if (step.origin() instanceof Step.Rule rule) {
            line.citation(CheckWriter.citation(rule.citation()));
        }
        return step.formula().isEmpty() ? line : line.formula(step.formula());
    }

    private static WorkingSource source(Step.Origin origin) {
        if (origin instanceof Step.Plan) {
            return WorkingSource.PLAN;
        }
        if (origin instanceof Step.Analysis) {
            return WorkingSource.ANALYSIS;
        }
        return origin instanceof Step.Rule ? WorkingSource.RULE : WorkingSource.ARITHMETIC;
    }

    private static void end(Working working, dev.underprop.api.model.CheckResult check, Steps steps) {
        dev.underprop.api.model.Quantity demand = check.getDemand();
        dev.underprop.api.model.Quantity capacity = check.getCapacity();
        Double ratio = check.getRatio();
        if (demand != null) {
            working.addLinesItem(last("demand", "demand of the check", demand, steps.demand()));
        }
        if (capacity != null) {
            working.addLinesItem(last("capacity", "capacity of the check", capacity, steps.capacity()));
        }
        if (ratio != null) {
            dev.underprop.api.model.Quantity number =
                    new dev.underprop.api.model.Quantity().value(ratio).unit(NUMBER);
            working.addLinesItem(last("ratio", "at most 1 passes", number, "demand / capacity"));
        }
    }

    private static WorkingLine last(
            String symbol, String meaning, dev.underprop.api.model.Quantity quantity, String formula) {
        return new WorkingLine()
                .symbol(symbol)
                .meaning(meaning)
                .value(quantity.getValue())
                .unit(quantity.getUnit())
                .source(WorkingSource.ARITHMETIC)
                .formula(formula);
    }
}
