package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.clause.en1065_1998.Clause8;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/** A prop of a class of EN 1065: its nominal characteristic strength at its length, over 1.65. */
final class PropClassJudge {

    static final Citation RULE = Citation.remembered(
            "EN 1065", "1998", "clause 8, characteristic strength over 1.65 (1.1 and 1.5, EN 12812:2008)");

    private PropClassJudge() {}

    /**
     * @param height of the prop (m), positive
     * @param load (N), not negative
     */
    static Finding judge(PropClass named, double height, double load) {
        double longest = named.longest();
        Outcome strength = switch (named.letter()) {
            case A -> Clause8.classA(longest, height);
            case B -> Clause8.classB(longest, height);
            case C -> Clause8.classC(longest, height);
            case D -> Clause8.classD(longest, height);
            case E -> Clause8.classE(longest, height);
        };
        return strength instanceof Outcome.Value value
                ? new CheckResult.Judged(Measure.FORCE, load, value.cited().value() / Clause8.FACTOR)
                : new CheckResult.Refused(Measure.FORCE, load, ((Outcome.Refused) strength).reason());
    }
}
