package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Cases.Case;
import dev.underprop.engine.assess.Cases.Level;
import dev.underprop.engine.assess.Setting.Fit;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.load.Pattern;
import dev.underprop.engine.load.Patterns;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.CaseBlock;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One situation through all its settings and cases. What it met is read by {@link SituationJudge}. */
final class SituationRun {

    private final Structure structure;
    private final Situation situation;
    private final Names names;
    private final Seats seats;
    private final Combinations combinations;
    private final int patternCount;
    private final List<Case> cases;
    private final Occurrences occurrences;
    private final List<MemberRun> members = new ArrayList<>();
    private final Met met;
    private final List<SituationResult.PlainCase> plainCases = new ArrayList<>();
    private SituationResult.Stability stability = new SituationResult.Stands();
    private boolean hangsOnTies;
    private int changes;
    private final Map<Level, Map<Fit, Map<Ties, CaseBlock.Guess>>> guesses = new EnumMap<>(Level.class);
    private int solved;
    private LoadCase failedCase;

    SituationRun(Structure structure, Situation situation, Combinations combinations, Seats seats, int mostPatterns) {
        this.structure = structure;
        this.situation = situation;
        this.names = new Names(structure.plan());
        this.combinations = combinations;
        this.seats = seats;
        ContactSolver rigid = structure.solver(Give.RIGID);
        Solution dead = solve(rigid, only(model().dead()));
        Solution full = solve(rigid, deadAndAllLive());
        List<Pattern> every = patterns(dead, full);
        List<Pattern> patterns = every.subList(0, Math.min(mostPatterns, every.size()));
        this.patternCount = Math.max(1, patterns.size());
        int[] groups = patterns.stream().mapToInt(this::group).toArray();
        this.cases = new ArrayList<>(Cases.of(model(), Level.ALLOWABLE, combinations.allowable(), patterns, groups));
        cases.addAll(Cases.of(model(), Level.STRENGTH, combinations.strength(), patterns, groups));
        cases.addAll(new StabilityCases(model(), combinations.gravity()).of(frame(), names, dead, full));
        this.occurrences = new Occurrences(situation.name(), cases);
        this.met = new Met(frame());
        this.failedCase = cases.get(0).load();
        for (int m = 0; m < frame().frame().members(); m++) {
            MemberLimits limits = MemberLimits.of(plan(), situation, m, combinations.allowable());
            members.add(new MemberRun(rigid.diagram(m), rigid.diagram(m), limits));
        }
    }

    private Solution solve(ContactSolver solver, LoadCase loadCase) {
        return solver.solve(seats.placed(loadCase, History.WISHED, Give.RIGID), seats.rules(Ties.HOLD));
    }

    private static LoadCase only(int unit) {
        return new LoadCase(new int[] {unit}, new double[] {1});
    }

    private LoadCase deadAndAllLive() {
        int[] units = new int[1 + model().cells().size()];
        double[] factors = new double[units.length];
        java.util.Arrays.fill(factors, 1);
        units[0] = model().dead();
        for (int i = 1; i < units.length; i++) {
            units[i] = model().cells().get(i - 1).unit();
        }
        return new LoadCase(units, factors);
    }

    private int group(Pattern pattern) {
        int[] units = pattern.loaded();
        for (int i = 0; i < units.length; i++) {
            units[i] = model().cells().get(units[i]).unit();
        }
        return structure.solver(Give.RIGID).addGroup(units);
    }

    /**
     * Fixed patterns, then by influence those that relieve or press a bearing, post or pier most: under dead load, or, for a
     * contact that is open then, under dead load with live load everywhere.
     */
    private List<Pattern> patterns(Solution dead, Solution full) {
        Patterns patterns = new Patterns(model(), plan());
        for (int c = 0; !model().cells().isEmpty() && c < frame().contacts(); c++) {
            Solution state = dead.closed(c) ? dead : full;
            if (state.closed(c) && !(frame().places().get(c) instanceof ContactPlace.OnShore)) {
                addInfluence(patterns, c, state);
            }
        }
        return patterns.all();
    }

    private void addInfluence(Patterns patterns, int contact, Solution state) {
        double[] influence = new double[model().cells().size()];
        for (int cell = 0; cell < influence.length; cell++) {
            influence[cell] = state.influence(contact, model().cells().get(cell).unit());
        }
        patterns.addInfluence(() -> names.contact(frame().places().get(contact)), influence);
    }

    /** Solves every case in every setting, or stops at the first in which something can move. */
    void run() {
        for (Give give : structure.gives()) {
            for (History history : seats.histories()) {
                new SettingRun(this, history, give).run();
            }
        }
    }

    /** Notes a case in which something moves. */
    void fail(Solution solution, Case one, Setting setting) {
        failedCase = one.load();
        String reason = new Mechanism(plan(), frame(), names).describe(solution);
        stability = new SituationResult.Moves(reason, one.name(), one.pattern(), setting.bound());
    }

    /** Notes that something moves when what holds down is released. */
    void noteHangsOnTies() {
        hangsOnTies = true;
    }

    /**
     * Counts cases solved.
     *
     * @param tried contact states tried beyond the first of each
     */
    void count(int more, int tried) {
        solved += more;
        changes += tried;
    }

    /** Where cases of a level ended with a post out of line, in whatever history and stiffness was solved before. */
    CaseBlock.Guess guess(Level level, Fit fit, Ties ties, int size) {
        return guesses.computeIfAbsent(level, k -> new HashMap<>())
                .computeIfAbsent(fit, k -> new EnumMap<>(Ties.class))
                .computeIfAbsent(ties, k -> new CaseBlock.Guess(size));
    }

    void plain(Case one, Solution solution, Setting setting) {
        List<Double> forces = new ArrayList<>();
        List<Double> openings = new ArrayList<>();
        List<Double> movements = new ArrayList<>();
        for (int c = 0; c < frame().contacts(); c++) {
            forces.add(solution.force(c));
            openings.add(solution.absent(c) ? 0 : solution.opening(c));
            movements.add(solution.movement(c));
        }
        plainCases.add(
                new SituationResult.PlainCase(one.name(), one.pattern(), setting.bound(), forces, openings, movements));
    }

    boolean stands() {
        return stability instanceof SituationResult.Stands;
    }

    Structure structure() {
        return structure;
    }

    JobPlan plan() {
        return structure.plan();
    }

    Situation situation() {
        return situation;
    }

    LoadModel model() {
        return structure.model();
    }

    Names names() {
        return names;
    }

    PlanFrame frame() {
        return structure.frame();
    }

    Seats seats() {
        return seats;
    }

    int patternCount() {
        return patternCount;
    }

    Combinations combinations() {
        return combinations;
    }

    List<Case> cases() {
        return cases;
    }

    Occurrences occurrences() {
        return occurrences;
    }

    List<MemberRun> members() {
        return members;
    }

    Met met() {
        return met;
    }

    SituationResult.Stability stability() {
        return stability;
    }

    /** Whether the situation stands only as long as what holds down holds. */
    boolean hangsOnTies() {
        return hangsOnTies;
    }

    List<SituationResult.PlainCase> plainCases() {
        return plainCases;
    }

    /** The case in which something moved; the first case where nothing did. */
    LoadCase failedCase() {
        return failedCase;
    }

    /** A case with its patterns written out as units. */
    LoadCase expand(LoadCase loadCase) {
        return structure.solver(Give.RIGID).expand(loadCase);
    }

    SituationResult.Quality quality() {
        double residual =
                members.stream().mapToDouble(MemberRun::residual).max().orElse(0);
        return new SituationResult.Quality(residual, met.penetration(), solved, changes);
    }

    /** Movement (m) of the carried member at a contact in a case. */
    double movement(int contact, int occurrence) {
        Setting setting = occurrences.setting(occurrence);
        LoadCase load = seats.placed(occurrences.caseOf(occurrence).load(), setting.history(), setting.give());
        if (!setting.fit().isTrue()) {
            load = load.with(setting.fit().unit(), setting.fit().factor());
        }
        return structure
                .solver(setting.give())
                .solve(load, seats.rules(setting.ties()))
                .movement(contact);
    }
}
