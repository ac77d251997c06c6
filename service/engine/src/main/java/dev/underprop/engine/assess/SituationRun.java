package dev.underprop.engine.assess;

import dev.underprop.engine.assess.SituationResult.PlainCase;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.load.Pattern;
import dev.underprop.engine.load.Patterns;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.List;

/** One situation through all its cases. What it met is read by {@link SituationJudge}. */
final class SituationRun {

    private static final double[] NOTHING = {};

    private final JobPlan plan;
    private final Situation situation;
    private final LoadModel model;
    private final Names names;
    private final SituationFrame situationFrame;
    private final ContactSolver solver;
    private final Cases cases;
    private final int patternCount;
    private final List<MemberRun> members = new ArrayList<>();
    private final Peaks greatest;
    private final Peaks least;
    private final boolean[] everOpen;
    private final boolean[] everClosed;
    private final double[] greatestOpening;
    private final double[] row;
    private final double[] dead;
    private final double[] added;
    private final List<PlainCase> plainCases = new ArrayList<>();
    private SituationResult.Stability stability = new SituationResult.Stands();
    private double penetration;
    private int changes;
    private int solved;
    private LoadCase failedCase;
    private Solution deadSolution;

    SituationRun(JobPlan plan, Situation situation, LoadModel model, List<Combination> combinations) {
        this.plan = plan;
        this.situation = situation;
        this.model = model;
        this.names = new Names(plan);
        this.situationFrame = SituationFrame.of(plan, situation);
        this.solver = new ContactSolver(situationFrame.frame(), model.units());
        Patterns patterns = patterns();
        this.patternCount = Math.max(1, patterns.all().size());
        int[] groups = patterns.all().stream().mapToInt(this::group).toArray();
        this.cases = Cases.of(model, combinations, patterns.all(), groups);
        int contacts = situationFrame.places().size();
        this.greatest = new Peaks(contacts);
        this.least = new Peaks(contacts);
        this.everOpen = new boolean[contacts];
        this.everClosed = new boolean[contacts];
        this.greatestOpening = new double[contacts];
        this.failedCase = cases.cases().get(0).load();
        this.deadSolution = solver.solve(failedCase);
        for (int m = 0; m < situationFrame.frame().members(); m++) {
            MemberLimits limits = MemberLimits.of(plan, situation, m, combinations);
            members.add(new MemberRun(solver.diagram(m), solver.diagram(m), limits));
        }
        this.row = new double[solver.rowSize()];
        this.dead = new double[row.length];
        this.added = new double[row.length];
    }

    private int group(Pattern pattern) {
        int[] units = pattern.loaded();
        for (int i = 0; i < units.length; i++) {
            units[i] = model.cells().get(units[i]).unit();
        }
        return solver.addGroup(units);
    }

    /**
     * Fixed patterns, then by influence those that relieve or press a bearing or a post most: under dead load, or, for a
     * contact that is open then, under dead load with live load everywhere.
     */
    private Patterns patterns() {
        Patterns patterns = new Patterns(model, plan.shores());
        if (model.cells().isEmpty()) {
            return patterns;
        }
        Solution dead = solver.solve(new LoadCase(new int[] {model.dead()}, new double[] {1}));
        Solution full = solver.solve(deadAndAllLive());
        for (int c = 0; c < situationFrame.places().size(); c++) {
            Solution state = dead.closed(c) ? dead : full;
            if (state.closed(c) && !(situationFrame.places().get(c) instanceof ContactPlace.OnShore)) {
                addInfluence(patterns, c, state);
            }
        }
        return patterns;
    }

    private void addInfluence(Patterns patterns, int contact, Solution state) {
        double[] influence = new double[model.cells().size()];
        for (int cell = 0; cell < influence.length; cell++) {
            influence[cell] = state.influence(contact, model.cells().get(cell).unit());
        }
        patterns.addInfluence(() -> names.contact(situationFrame.places().get(contact)), influence);
    }

    private LoadCase deadAndAllLive() {
        int[] units = new int[1 + model.cells().size()];
        double[] factors = new double[units.length];
        java.util.Arrays.fill(factors, 1);
        units[0] = model.dead();
        for (int i = 1; i < units.length; i++) {
            units[i] = model.cells().get(i - 1).unit();
        }
        return new LoadCase(units, factors);
    }

    /** Solves every case, or stops at the first in which something can move. */
    void run() {
        for (int i = 0; i < cases.cases().size() && stands(); i++) {
            Cases.Case one = cases.cases().get(i);
            Solution solution = solver.solve(one.load());
            changes += solution.changes();
            solved++;
            if (solution.outcome() == Solution.Outcome.SETTLED) {
                take(solution, one, i);
            } else {
                fail(solution, one);
            }
        }
    }

    private void take(Solution solution, Cases.Case one, int index) {
        solution.writeRow(row);
        double[] difference = difference(solution, index == 0);
        for (int m = 0; m < members.size(); m++) {
            members.get(m)
                    .take(
                            row,
                            difference,
                            solution.sameSupports(deadSolution, m),
                            solution.supports(m),
                            index,
                            one.combination());
        }
        for (int c = 0; c < everOpen.length; c++) {
            double force = solution.force(c);
            greatest.note(c, force, Double.NaN, index);
            least.note(c, -force, Double.NaN, index);
            boolean closed = solution.closed(c);
            everOpen[c] |= !closed;
            everClosed[c] |= closed;
            penetration = Math.max(penetration, -solution.opening(c));
            greatestOpening[c] = Math.max(greatestOpening[c], solution.opening(c));
        }
        if (one.everywhere()) {
            plainCases.add(plainCase(solution, one));
        }
    }

    private double[] difference(Solution solution, boolean deadOnly) {
        if (deadOnly) {
            deadSolution = solution;
            System.arraycopy(row, 0, dead, 0, row.length);
            return NOTHING;
        }
        for (int i = 0; i < row.length; i++) {
            added[i] = row[i] - dead[i];
        }
        return added;
    }

    private PlainCase plainCase(Solution solution, Cases.Case one) {
        List<Double> forces = new ArrayList<>();
        List<Double> openings = new ArrayList<>();
        List<Double> movements = new ArrayList<>();
        for (int c = 0; c < everOpen.length; c++) {
            forces.add(solution.force(c));
            openings.add(solution.opening(c));
            movements.add(solution.movement(c));
        }
        return new PlainCase(
                cases.combinations().get(one.combination()).name(), one.pattern(), forces, openings, movements);
    }

    private void fail(Solution solution, Cases.Case one) {
        failedCase = one.load();
        String reason = new Mechanism(plan, situationFrame, names).describe(solution);
        stability = new SituationResult.Moves(
                reason, cases.combinations().get(one.combination()).name(), one.pattern());
    }

    boolean stands() {
        return stability instanceof SituationResult.Stands;
    }

    JobPlan plan() {
        return plan;
    }

    Situation situation() {
        return situation;
    }

    LoadModel model() {
        return model;
    }

    Names names() {
        return names;
    }

    SituationFrame frame() {
        return situationFrame;
    }

    int patternCount() {
        return patternCount;
    }

    Cases cases() {
        return cases;
    }

    List<MemberRun> members() {
        return members;
    }

    SituationResult.Stability stability() {
        return stability;
    }

    /** Greatest force at each contact. */
    Peaks greatest() {
        return greatest;
    }

    /** Least force at each contact, its sign turned. */
    Peaks least() {
        return least;
    }

    boolean everOpen(int contact) {
        return everOpen[contact];
    }

    boolean everClosed(int contact) {
        return everClosed[contact];
    }

    /** Greatest clear space at a contact in any case (m). */
    double greatestOpening(int contact) {
        return greatestOpening[contact];
    }

    List<PlainCase> plainCases() {
        return plainCases;
    }

    /** The case in which something moved; the first case where nothing did. */
    LoadCase failedCase() {
        return failedCase;
    }

    /** A case with its patterns written out as units. */
    LoadCase expand(LoadCase loadCase) {
        return solver.expand(loadCase);
    }

    SituationResult.Quality quality() {
        double residual =
                members.stream().mapToDouble(MemberRun::residual).max().orElse(0);
        return new SituationResult.Quality(residual, penetration, solved, solver.factorised(), changes);
    }

    /** Movement (m) of the carried member at a contact in a case. */
    double movement(int contact, int caseIndex) {
        return solver.solve(cases.cases().get(caseIndex).load()).movement(contact);
    }

    Extreme extreme(double value, double at, int caseIndex) {
        Cases.Case one = cases.cases().get(caseIndex);
        return new Extreme(
                value, at, cases.combinations().get(one.combination()).name(), one.pattern());
    }

    /** Names the case that governs a check. */
    CheckResult.Where where(int caseIndex, double at) {
        Cases.Case one = cases.cases().get(caseIndex);
        return new CheckResult.InCase(
                situation.name(), cases.combinations().get(one.combination()).name(), one.pattern(), at);
    }
}
