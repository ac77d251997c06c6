package dev.underprop.engine.check;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Step;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A record as it is written. A symbol stands for one finite number: noted again with the same number it is not repeated; with
 * another one the record is spoilt, and none is given. What is said of a finding must be its numbers to the last bit, or it
 * is not its record.
 */
final class Written implements Working {

    private final Map<String, Step> lines = new LinkedHashMap<>();
    private Steps.Scale scale = Steps.Scale.SECTION;
    private String demand = "";
    private String capacity = "";
    private boolean spoilt;

    @Override
    public double note(
            String symbol, String meaning, Dimension dimension, double value, Step.Origin origin, String formula) {
        Step known = lines.get(symbol);
        if (!Double.isFinite(value) || known != null && known.value() != value) {
            spoilt = true;
        } else if (known == null) {
            lines.put(symbol, new Step(symbol, meaning, dimension, value, origin, formula));
        }
        return value;
    }

    @Override
    public Step.Origin rule(Citation citation) {
        return new Step.Rule(citation);
    }

    @Override
    public Working branch() {
        Written branch = new Written();
        branch.lines.putAll(lines);
        branch.scale = scale;
        branch.spoilt = spoilt;
        return branch;
    }

    @Override
    public void adopt(Working branch) {
        Written other = (Written) branch;
        lines.clear();
        lines.putAll(other.lines);
        scale = other.scale;
        spoilt = other.spoilt;
        demand = other.demand;
        capacity = other.capacity;
    }

    @Override
    public void onSite() {
        scale = Steps.Scale.SITE;
    }

    @Override
    public Finding compared(String demandSymbol, String capacitySymbol, Finding finding) {
        demand = demandSymbol;
        capacity = capacitySymbol;
        return finding;
    }

    @Override
    public Steps steps(Finding finding) {
        if (spoilt) {
            return Steps.NONE;
        }
        if (finding instanceof CheckResult.Judged judged) {
            return is(demand, judged.demand()) && is(capacity, judged.capacity()) ? all(capacity) : Steps.NONE;
        }
        return finding instanceof CheckResult.Refused refused && is(demand, refused.demand()) ? all("") : Steps.NONE;
    }

    private boolean is(String symbol, double value) {
        Step line = lines.get(symbol);
        return line != null && line.value() == value;
    }

    private Steps all(String capacitySymbol) {
        return new Steps(scale, List.copyOf(lines.values()), demand, capacitySymbol);
    }
}
