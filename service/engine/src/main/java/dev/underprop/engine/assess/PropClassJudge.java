package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.en1065_1998.Clause8;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;

/** A prop of a class of EN 1065: its nominal characteristic strength at its length, over 1.65. */
final class PropClassJudge {

    static final Citation RULE = Citation.remembered(
            "EN 1065", "1998", "clause 8, characteristic strength over 1.65 (1.1 and 1.5, EN 12812:2008)");

    private PropClassJudge() {}

    /** As {@link #judge(PropClass, double, double, Working)}, without a record. */
    static Finding judge(PropClass named, double height, double load) {
        return judge(named, height, load, Working.OFF);
    }

    /**
     * @param height of the prop (m), positive
     * @param load (N), not negative
     */
    static Finding judge(PropClass named, double height, double load, Working working) {
        double longest = named.longest();
        Outcome strength = switch (named.letter()) {
            case A -> Clause8.classA(longest, height);
            case B -> Clause8.classB(longest, height);
            case C -> Clause8.classC(longest, height);
            case D -> Clause8.classD(longest, height);
            case E -> Clause8.classE(longest, height);
        };
        working.onSite();
        working.plan("l", "length of the prop", Dimension.LENGTH, height);
        working.plan("lmax", "length at full extension", Dimension.LENGTH, longest);
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        if (strength instanceof Outcome.Refused refused) {
            return working.compared("P", "", new CheckResult.Refused(Measure.FORCE, load, refused.reason()));
        }
        double characteristic = ((Outcome.Value) strength).cited().value();
        tell(named, (Outcome.Value) strength, working);
        working.rule("s", "for resistance 1.1, for load 1.5", Dimension.NUMBER, Clause8.FACTOR, RULE, "1.1 × 1.5");
        double allowed =
                working.step("Pa", "allowed by its class", Dimension.FORCE, characteristic / Clause8.FACTOR, "Ryk / s");
        return working.compared("P", "Pa", new CheckResult.Judged(Measure.FORCE, load, allowed));
    }

    private static void tell(PropClass named, Outcome.Value strength, Working working) {
        Citation clause = strength.cited().citation();
        Clause8.Constants of = Clause8.constants(named.letter().name());
        working.rule("Rmax", "greatest strength of class " + named.mark(), Dimension.FORCE, of.most(), clause, "");
        if (of.times() > 0) {
            working.rule("c", "constant of the class", Dimension.MOMENT, of.times(), clause, "");
        }
        working.rule(
                "Ryk",
                strength.cited(),
                "characteristic strength",
                Dimension.FORCE,
                of.times() > 0 ? "min( Rmax , c × lmax / l^2 )" : "Rmax");
    }
}
