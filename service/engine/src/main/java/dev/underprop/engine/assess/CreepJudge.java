package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Fit;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.Section3_5;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.statics.Deflections;
import dev.underprop.engine.statics.Diagram;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;

/**
 * How far a shore beam that stands long goes down as it creeps under dead load. The greatest deflection under all load and
 * the greatest under dead load are added as parts of their spans, even where they lie in different places; timber counts as
 * not seasoned, whether it is or not.
 */
final class CreepJudge {

    static final Citation RULE =
            Citation.remembered("IBC", "2021", "Table 1604.3, floor members; creep by NDS 2018, 3.5.2");

    private final SituationRun run;

    CreepJudge(SituationRun run) {
        this.run = run;
    }

    /**
     * @param member number of the shore beam in the frame
     * @param total greatest deflection under all load and what is allowed there (m)
     */
    Finding judge(int member, CheckResult.Judged total, Working working) {
        Intake.Reply stays = run.plan()
                .circumstances()
                .intake()
                .to(Intake.Question.LONG_DURATION)
                .reply();
        return switch (stays) {
            case NO -> new CheckResult.NotApplicable("the intake says that the shores do not stand long");
            case UNKNOWN -> new CheckResult.NotChecked("whether the shores stand long is not known (declare: intake)");
            case YES -> together(member, total, working);
        };
    }

    private Finding together(int member, CheckResult.Judged total, Working working) {
        MemberSteps.allowed(run.members().get(member), MemberRun.TOTAL_CHECK, working);
        double part = working.analysis("r", "deflection under dead load over its span", Dimension.NUMBER, dead(member));
        double lasting =
                working.step("ΔLT", "the same on this span", Dimension.LENGTH, part * span(member, total), "r × L");
        return together(total, lasting, working);
    }

    /** As {@link #together(CheckResult.Judged, double, Working)}, without a record. */
    static Finding together(CheckResult.Judged total, double lasting) {
        return together(total, lasting, Working.OFF);
    }

    /**
     * @param total demand and capacity under all load (m)
     * @param lasting what the lasting part of the load does on the same span (m), not negative
     */
    static Finding together(CheckResult.Judged total, double lasting, Working working) {
        double all = working.analysis("Δ", "deflection under all load", Dimension.LENGTH, total.demand());
        double creep = working.rule(Section3_5.creep(Moisture.DRY, false), "creep, not seasoned", Dimension.NUMBER, "");
        Cited demand = Section3_5.totalDeflection(creep, lasting, all - lasting);
        working.rule(demand, "deflection after it has crept", Dimension.LENGTH, "Kcr × ΔLT + ( Δ - ΔLT )");
        return working.compared(
                demand.symbol(), "Δa", new CheckResult.Judged(Measure.DEFLECTION, demand.value(), total.capacity()));
    }

    /** The span in which the greatest deflection lies (m). */
    private double span(int member, CheckResult.Judged total) {
        return total.capacity() * run.members().get(member).limits().totalDivisor();
    }

    private double dead(int member) {
        double worst = 0;
        for (Give give : run.structure().gives()) {
            double[] row = new double[run.structure().solver(give).rowSize()];
            Diagram diagram = run.structure().solver(give).diagram(member);
            for (History history : run.seats().histories()) {
                for (Fit fit : run.structure().fits()) {
                    Solution dead = dead(give, history, fit);
                    dead.writeRow(row);
                    diagram.view(row);
                    worst = Math.max(worst, new Deflections(diagram).search(dead.supports(member), worst));
                }
            }
        }
        return worst;
    }

    private Solution dead(Give give, History history, Fit fit) {
        LoadCase dead = new LoadCase(new int[] {run.structure().model().dead()}, new double[] {1});
        LoadCase placed = run.seats().placed(dead, history, give);
        LoadCase shifted = fit.isTrue() ? placed : placed.with(fit.unit(), fit.factor());
        return run.structure().solver(give).solve(shifted, run.seats().rules(Ties.HOLD));
    }
}
