package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Cases.Case;
import dev.underprop.engine.assess.Cases.Level;
import dev.underprop.engine.assess.Setting.Fit;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.ForceChange;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** All cases of a situation in one history and stiffness, with every post in line and one at a time out of it. */
final class SettingRun {

    private static final double[] NOTHING = {};

    /** A pull below this part of the greatest force of the case is rounding. */
    private static final double ROUNDING = 1e-7;

    private final SituationRun run;
    private final History history;
    private final Give give;
    private final ContactSolver solver;
    private final Rocking rocking;
    private final BitSet fastened;
    private final boolean undescribed;
    private final double[] row;
    private final double[] added;
    private Solution inLine;
    private final List<Variant> variants = new ArrayList<>();
    private final MemberRun.Reach[] base;

    private final ForceChange change;
    private final double[] deadRow;
    private Solution dead;

    /** Posts in line or one out of it, and its numbers. */
    private final class Variant {
        private final Fit fit;
        private final int[] numbers = new int[Ties.values().length];

        Variant(Fit fit) {
            this.fit = fit;
            Arrays.fill(numbers, -1);
        }

        Setting setting(Ties ties) {
            return new Setting(history, give, fit, ties);
        }

        int number(Ties ties, int caseIndex) {
            int place = ties.ordinal();
            if (numbers[place] < 0) {
                numbers[place] = run.occurrences().add(setting(ties));
            }
            return numbers[place] + caseIndex;
        }
    }

    SettingRun(SituationRun run, History history, Give give) {
        this.run = run;
        this.history = history;
        this.give = give;
        this.solver = run.structure().solver(give);
        this.rocking = new Rocking(run.frame());
        this.fastened = run.frame().fastened(Ties.HOLD);
        this.undescribed = fastened.stream().anyMatch(c -> run.frame().fastening(c) instanceof Fastening.Undescribed);
        this.base = new MemberRun.Reach[run.members().size()];
        this.change = solver.forceChange();
        this.row = new double[solver.rowSize()];
        this.added = new double[row.length];
        this.deadRow = new double[row.length];
        this.dead = run.seats().dead(give, history);
        this.inLine = dead;
    }

    void run() {
        for (int i = 0; i < run.cases().size() && run.stands(); i++) {
            Case one = run.cases().get(i);
            Solution solution = solver.solve(
                    run.seats().placed(one.load(), history, give), run.seats().rules(Ties.HOLD));
            if (i == 0) {
                run.structure().fits().forEach(fit -> variants.add(new Variant(fit)));
            }
            inLine = solution;
            take(variants.get(0), solution, one, i);
            if (one.level() != Level.STABILITY) {
                takeFits(one, i);
            }
        }
    }

    private void takeFits(Case one, int index) {
        for (int f = 1; f < variants.size() && run.stands(); f++) {
            Fit fit = variants.get(f).fit;
            Solution solution =
                    solver.shifted(inLine, fit.unit(), fit.factor(), run.seats().rules(Ties.HOLD));
            take(variants.get(f), solution, one, index);
        }
    }

    private void take(Variant variant, Solution solution, Case one, int index) {
        run.count(solution);
        if (!stands(solution)) {
            run.fail(solution, one, variant.setting(Ties.HOLD));
            return;
        }
        note(variant, Ties.HOLD, solution, one, index);
        if (pulls(solution)) {
            if (undescribed) {
                release(variant, Ties.DESCRIBED, solution, one, index);
            }
            if (run.stands()) {
                release(variant, Ties.RELEASED, solution, one, index);
            }
        }
    }

    private boolean stands(Solution solution) {
        return solution.outcome() == Solution.Outcome.SETTLED || rocking.only(solution);
    }

    private boolean pulls(Solution solution) {
        double greatest = 0;
        double pull = 0;
        for (int c = fastened.nextSetBit(0); c >= 0; c = fastened.nextSetBit(c + 1)) {
            greatest = Math.max(greatest, Math.abs(solution.force(c)));
            pull = Math.min(pull, solution.force(c));
        }
        return pull < -ROUNDING * greatest;
    }

    /** What holds down by something undescribed is never relied upon; what is described may be. */
    private void release(Variant variant, Ties ties, Solution held, Case one, int index) {
        Solution solution = solver.again(held, run.seats().rules(ties));
        run.count(solution);
        if (stands(solution)) {
            note(variant, ties, solution, one, index);
        } else if (ties == Ties.DESCRIBED) {
            run.fail(solution, one, variant.setting(ties));
        } else {
            run.noteHangsOnTies();
        }
    }

    private void note(Variant variant, Ties ties, Solution solution, Case one, int index) {
        int number = variant.number(ties, index);
        switch (one.level()) {
            case ALLOWABLE -> {
                run.met().allowable(solution, variant.setting(ties), number);
                if (variant.fit.isTrue()) {
                    noteMembers(solution, one, index == 0 && ties == Ties.HOLD, number);
                    keepReach(ties);
                } else {
                    noteForces(solution, one, number);
                }
                if (one.everywhere() && variant.fit.isTrue() && ties == Ties.HOLD && give == Give.RIGID) {
                    run.plain(one, solution, variant.setting(ties));
                }
            }
            case STRENGTH -> run.met().strength(solution, number);
            default -> run.met().stability(solution, number);
        }
    }

    private void keepReach(Ties ties) {
        for (int m = 0; ties == Ties.HOLD && m < base.length; m++) {
            base[m] = run.members().get(m).reach();
        }
    }

    /**
     * A post out of line bends and shears members; what it does to deflection is not more than the tolerance itself, and
     * limits on deflection are for the floor in line. The loads are those of the case in line, so the change of the contacts'
     * forces bounds what members may get; only those it cannot exclude are looked at.
     */
    private void noteForces(Solution solution, Case one, int number) {
        change.between(inLine, solution);
        for (int m = 0; m < base.length; m++) {
            MemberRun member = run.members().get(m);
            if (member.couldMatter(base[m], change.sagging(m), change.hogging(m), change.shear(m), one.combination())) {
                solution.writeForces(m, row);
                member.takeForces(row, number, one.combination());
            }
        }
    }

    private void noteMembers(Solution solution, Case one, boolean deadAlone, int number) {
        solution.writeRow(row);
        double[] difference = NOTHING;
        if (deadAlone) {
            dead = solution;
            System.arraycopy(row, 0, deadRow, 0, row.length);
        } else {
            for (int i = 0; i < row.length; i++) {
                added[i] = row[i] - deadRow[i];
            }
            difference = added;
        }
        for (int m = 0; m < run.members().size(); m++) {
            boolean same = solution.sameSupports(dead, m);
            run.members().get(m).take(row, difference, same, solution.supports(m), number, one.combination());
        }
    }
}
