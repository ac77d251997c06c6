package dev.underprop.engine.assess;

import dev.underprop.engine.check.Bound;
import dev.underprop.engine.check.CheckResult;
import java.util.ArrayList;
import java.util.List;

/** Numbers every case in every setting of a situation, so that a governing one can be named afterwards. */
final class Occurrences {

    private final String situation;
    private final List<Cases.Case> cases;
    private final List<Setting> settings = new ArrayList<>();

    Occurrences(String situation, List<Cases.Case> cases) {
        this.situation = situation;
        this.cases = cases;
    }

    /** Registers a setting; the number of a case in it is this plus the case's index. */
    int add(Setting setting) {
        settings.add(setting);
        return (settings.size() - 1) * cases.size();
    }

    Cases.Case caseOf(int occurrence) {
        return cases.get(occurrence % cases.size());
    }

    Setting setting(int occurrence) {
        return settings.get(occurrence / cases.size());
    }

    int settings() {
        return settings.size();
    }

    Extreme extreme(double value, double at, int occurrence) {
        Cases.Case one = caseOf(occurrence);
        return new Extreme(
                value, at, one.name(), one.pattern(), setting(occurrence).bound());
    }

    CheckResult.Where where(int occurrence, double at) {
        Cases.Case one = caseOf(occurrence);
        Bound bound = setting(occurrence).bound();
        return new CheckResult.InCase(situation, one.name(), one.pattern(), at, bound);
    }
}
