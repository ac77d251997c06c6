package dev.underprop.engine.check;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import dev.underprop.engine.standard.Step;

/**
 * Where a judge tells how it works out a number. Every method hands the number back as it came, so that a judge computes
 * and tells in one place, and what is told cannot be another number than what is judged. {@link #OFF} listens to nothing.
 */
public sealed interface Working permits Silent, Written {

    /** Nobody asked. */
    Working OFF = new Silent();

    /** A record to be written, or {@link #OFF}. */
    static Working when(boolean wanted) {
        return wanted ? new Written() : OFF;
    }

    /** Notes a line as it stands and returns its value. */
    double note(String symbol, String meaning, Dimension dimension, double value, Step.Origin origin, String formula);

    /** A record of its own, for one of several ways of which the worst counts. */
    Working branch();

    /** Continues with what a branch holds, in place of what was noted here. */
    void adopt(Working branch);

    /** Units of floors and ground suit this record. */
    void onSite();

    /** Says which lines are the demand and the capacity of a finding, and returns it. */
    Finding compared(String demand, String capacity, Finding finding);

    /** The record of a finding; none where what was told is not about it. */
    Steps steps(Finding finding);

    /** Something that the plan says. */
    default double plan(String symbol, String meaning, Dimension dimension, double value) {
        return note(symbol, meaning, dimension, value, PLAN, "");
    }

    /** Something that the analysis found. */
    default double analysis(String symbol, String meaning, Dimension dimension, double value) {
        return note(symbol, meaning, dimension, value, ANALYSIS, "");
    }

    /** Something that follows from the lines above. */
    default double step(String symbol, String meaning, Dimension dimension, double value, String formula) {
        return note(symbol, meaning, dimension, value, ARITHMETIC, formula);
    }

    /** Something that a rule gives, by a formula or, where that is empty, by a table or as it stands. */
    default double rule(Cited cited, String meaning, Dimension dimension, String formula) {
        return rule(cited.symbol(), meaning, dimension, cited.value(), cited.citation(), formula);
    }

    /** As above, under another symbol. */
    default double rule(String symbol, Cited cited, String meaning, Dimension dimension, String formula) {
        return rule(symbol, meaning, dimension, cited.value(), cited.citation(), formula);
    }

    /** As above; a refusal is not noted, and NaN comes back. */
    default double rule(String symbol, Outcome outcome, String meaning, Dimension dimension, String formula) {
        return outcome instanceof Outcome.Value value
                ? rule(symbol, value.cited(), meaning, dimension, formula)
                : Double.NaN;
    }

    /** As above, in parts. */
    default double rule(
            String symbol, String meaning, Dimension dimension, double value, Citation citation, String formula) {
        return note(symbol, meaning, dimension, value, rule(citation), formula);
    }

    /** The origin of what a rule gives; nothing is made of it where nobody asked. */
    Step.Origin rule(Citation citation);

    Step.Origin PLAN = new Step.Plan();
    Step.Origin ANALYSIS = new Step.Analysis();
    Step.Origin ARITHMETIC = new Step.Arithmetic();
}
