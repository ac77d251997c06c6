package dev.underprop.engine.check;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Step;

/** Listens to nothing. */
record Silent() implements Working {

    @Override
    public double note(
            String symbol, String meaning, Dimension dimension, double value, Step.Origin origin, String formula) {
        return value;
    }

    @Override
    public Step.Origin rule(Citation citation) {
        return ARITHMETIC;
    }

    @Override
    public Working branch() {
        return this;
    }

    @Override
    public void adopt(Working branch) {}

    @Override
    public void onSite() {}

    @Override
    public Finding compared(String demand, String capacity, Finding finding) {
        return finding;
    }

    @Override
    public Steps steps(Finding finding) {
        return Steps.NONE;
    }
}
