package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Cases.Case;
import dev.underprop.engine.assess.Cases.Level;
import dev.underprop.engine.assess.Setting.Fit;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.statics.CaseGroup;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.ForceChange;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

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
    private final List<Ties> released;
    private final double[] row;
    private final double[] added;
    private final List<Solution> inLine = new ArrayList<>();
    private final MemberRun.Reach[][] reach;
    private final ForceChange change;
    private final double[] deadRow;
    private Solution dead;

    SettingRun(SituationRun run, History history, Give give) {
        this.run = run;
        this.history = history;
        this.give = give;
        this.solver = run.structure().solver(give);
        this.rocking = new Rocking(run.frame());
        this.fastened = run.frame().fastened(Ties.HOLD);
        boolean undescribed =
                fastened.stream().anyMatch(c -> run.frame().fastening(c) instanceof Fastening.Undescribed);
        this.released = undescribed ? List.of(Ties.DESCRIBED, Ties.RELEASED) : List.of(Ties.RELEASED);
        this.reach = new MemberRun.Reach[run.cases().size()][run.members().size()];
        this.change = solver.forceChange();
        this.row = new double[solver.rowSize()];
        this.added = new double[row.length];
        this.deadRow = new double[row.length];
        this.dead = run.seats().dead(give, history);
    }

    void run() {
        Variant trued = variant(Fit.TRUE);
        for (int i = 0; i < run.cases().size() && run.stands(); i++) {
            Case one = run.cases().get(i);
            Solution solution = solver.solve(
                    run.seats().placed(one.load(), history, give), run.seats().rules(Ties.HOLD));
            inLine.add(solution);
            take(trued, solution, i, reach[i]);
        }
        if (run.stands() && run.structure().fits().size() > 1) {
            takeFits();
        }
    }

    private Variant variant(Fit fit) {
        return new Variant(run.occurrences(), history, give, fit);
    }

    private void takeFits() {
        List<OutOfLine> levels = new ArrayList<>();
        for (Level level : List.of(Level.ALLOWABLE, Level.STRENGTH)) {
            int[] index = IntStream.range(0, run.cases().size())
                    .filter(i -> run.cases().get(i).level() == level)
                    .toArray();
            List<Solution> solutions = IntStream.of(index).mapToObj(inLine::get).toList();
            MemberRun.Reach[][] reaches =
                    IntStream.of(index).mapToObj(i -> reach[i]).toArray(MemberRun.Reach[][]::new);
            if (index.length > 0) {
                levels.add(new OutOfLine(run, this, level, index, solutions, reaches));
            }
        }
        for (Fit fit : run.structure().fits()) {
            Variant variant = variant(fit);
            for (OutOfLine level : levels) {
                if (!fit.isTrue() && run.stands()) {
                    level.take(variant);
                }
            }
        }
    }

    /** Solves and takes a case with a post out of line by itself. */
    Solution alone(Variant variant, Ties ties, int index, MemberRun.Reach[] from) {
        Solution held = solver.shifted(
                inLine.get(index),
                variant.fit().unit(),
                variant.fit().factor(),
                run.seats().rules(Ties.HOLD));
        if (ties == Ties.HOLD) {
            take(variant, held, index, from);
            return held;
        }
        return release(variant, ties, held, index, from);
    }

    private void take(Variant variant, Solution solution, int index, MemberRun.Reach[] from) {
        run.count(1, solution.changes());
        if (!stands(solution)) {
            run.fail(solution, run.cases().get(index), variant.setting(Ties.HOLD));
            return;
        }
        note(variant, Ties.HOLD, solution, index, from);
        if (pulls(solution)) {
            for (Ties ties : released) {
                if (run.stands()) {
                    release(variant, ties, solution, index, from);
                }
            }
        }
    }

    private boolean stands(Solution solution) {
        return solution.outcome() == Solution.Outcome.SETTLED || rocking.only(solution);
    }

    /** Whether whatever is loose in cases that ended in one contact state comes to rest. */
    boolean rocks(CaseGroup group, Ties ties) {
        return rocking.only(group, run.seats().rules(ties));
    }

    private boolean pulls(Solution solution) {
        double greatest = 0;
        double pull = 0;
        for (int c = fastened.nextSetBit(0); c >= 0; c = fastened.nextSetBit(c + 1)) {
            greatest = Math.max(greatest, Math.abs(solution.force(c)));
            pull = Math.min(pull, solution.force(c));
        }
        return pulls(pull, greatest);
    }

    /** Whether the least force at what is fastened (N) is a pull, the greatest there being the other. */
    static boolean pulls(double least, double greatest) {
        return least < -ROUNDING * greatest;
    }

    /** What holds down by something undescribed is never relied upon; what is described may be. */
    private Solution release(Variant variant, Ties ties, Solution held, int index, MemberRun.Reach[] from) {
        Solution solution = solver.again(held, run.seats().rules(ties));
        run.count(1, solution.changes());
        if (stands(solution)) {
            note(variant, ties, solution, index, from);
        } else if (ties == Ties.DESCRIBED) {
            run.fail(solution, run.cases().get(index), variant.setting(ties));
        } else {
            run.noteHangsOnTies();
        }
        return solution;
    }

    private void note(Variant variant, Ties ties, Solution solution, int index, MemberRun.Reach[] from) {
        Case one = run.cases().get(index);
        int number = variant.number(ties, index);
        switch (one.level()) {
            case ALLOWABLE -> {
                run.met().allowable(solution, variant.setting(ties), number);
                if (variant.fit().isTrue()) {
                    noteMembers(solution, one, index == 0 && ties == Ties.HOLD, number);
                    keepReach(ties, from);
                } else {
                    noteForces(solution, index, number, from);
                }
                if (one.everywhere() && variant.fit().isTrue() && ties == Ties.HOLD && give == Give.RIGID) {
                    run.plain(one, solution, variant.setting(ties));
                }
            }
            case STRENGTH -> run.met().strength(solution, number);
            default -> run.met().stability(solution, number);
        }
    }

    private void keepReach(Ties ties, MemberRun.Reach[] into) {
        for (int m = 0; ties == Ties.HOLD && m < into.length; m++) {
            into[m] = run.members().get(m).reach();
        }
    }

    /** As {@link OutOfLine} does it for many cases. */
    private void noteForces(Solution solution, int index, int number, MemberRun.Reach[] from) {
        int duration = run.cases().get(index).combination();
        change.between(inLine.get(index), solution);
        for (int m = 0; m < from.length; m++) {
            MemberRun member = run.members().get(m);
            if (member.couldMatter(from[m], change.sagging(m), change.hogging(m), change.shear(m), duration)) {
                solution.writeForces(m, row);
                member.takeForces(row, number, duration);
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

    ContactSolver solver() {
        return solver;
    }

    /** Contacts that are fastened, described or not. */
    BitSet fastened() {
        return fastened;
    }

    /** Ways in which fastenings are released when they pull. */
    List<Ties> released() {
        return released;
    }
}
