package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Cases.Case;
import dev.underprop.engine.assess.Cases.Level;
import dev.underprop.engine.assess.Setting.Fit;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

    /** Reach of each post out of line by the tolerance, for the contact state met last. */
    private final Map<Integer, FitReach> fitReach = new HashMap<>();

    private record FitReach(Solution state, MemberRun.Reach[] members) {}

    /** Posts in line or one out of it: its numbers, and what dead load did in it. */
    private final class Variant {
        private final Fit fit;
        private final int[] numbers = new int[Ties.values().length];
        private final double[] deadRow = new double[row.length];
        private Solution dead;

        Variant(Fit fit, Solution dead) {
            this.fit = fit;
            this.dead = dead;
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
        this.row = new double[solver.rowSize()];
        this.added = new double[row.length];
        this.inLine = run.seats().dead(give, history);
    }

    void run() {
        for (int i = 0; i < run.cases().size() && run.stands(); i++) {
            Case one = run.cases().get(i);
            Solution solution = solver.solve(
                    run.seats().placed(one.load(), history, give), run.seats().rules(Ties.HOLD));
            if (i == 0) {
                run.structure().fits().forEach(fit -> variants.add(new Variant(fit, solution)));
            }
            inLine = solution;
            take(variants.get(0), solution, one, i);
            if (one.level() != Level.STABILITY) {
                takeFits(one, i);
            }
        }
    }

    private void takeFits(Case one, int index) {
        for (int m = 0; m < base.length; m++) {
            base[m] = run.members().get(m).reach();
        }
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
        Solution solution = solver.solve(held.loadCase(), run.seats().rules(ties));
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
                boolean deadAlone = index == 0 && ties == Ties.HOLD;
                if (deadAlone || couldMatter(variant, solution, one)) {
                    noteMembers(variant, solution, one, deadAlone, number);
                }
                if (one.everywhere() && variant.fit.isTrue() && ties == Ties.HOLD && give == Give.RIGID) {
                    run.plain(one, solution, variant.setting(ties));
                }
            }
            case STRENGTH -> run.met().strength(solution, number);
            default -> run.met().stability(solution, number);
        }
    }

    /**
     * Whether a post out of line could make some member worse than anything met. Bounds alone decide: what they cannot
     * exclude is looked at.
     */
    private boolean couldMatter(Variant variant, Solution solution, Case one) {
        Fit fit = variant.fit;
        boolean known = !fit.isTrue() && solution.sameState(inLine) && variant.dead.sameState(variants.get(0).dead);
        if (!known) {
            return true;
        }
        FitReach more = fitReach.get(fit.unit());
        if (more == null || !more.state().sameState(solution)) {
            more = new FitReach(solution, reachOf(solution.unitRow(fit.unit())));
            fitReach.put(fit.unit(), more);
        }
        for (int m = 0; m < base.length; m++) {
            boolean turned = fit.factor() < 0;
            if (run.members().get(m).couldMatter(base[m], more.members()[m], turned, one.combination())) {
                return true;
            }
        }
        return false;
    }

    private MemberRun.Reach[] reachOf(double[] unitRow) {
        MemberRun.Reach[] reach = new MemberRun.Reach[base.length];
        for (int m = 0; m < reach.length; m++) {
            reach[m] = run.members().get(m).reachOf(unitRow);
        }
        return reach;
    }

    private void noteMembers(Variant variant, Solution solution, Case one, boolean deadAlone, int number) {
        solution.writeRow(row);
        double[] difference = NOTHING;
        if (deadAlone) {
            variant.dead = solution;
            System.arraycopy(row, 0, variant.deadRow, 0, row.length);
        } else {
            for (int i = 0; i < row.length; i++) {
                added[i] = row[i] - variant.deadRow[i];
            }
            difference = added;
        }
        for (int m = 0; m < run.members().size(); m++) {
            boolean same = solution.sameSupports(variant.dead, m);
            run.members().get(m).take(row, difference, same, solution.supports(m), number, one.combination());
        }
    }
}
