package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.pad.PadPressure;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.Frame;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Rules;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.List;

/** The floor of a plan as an assessment sees it, for rooms that follow it through changes of their own, such as a lift. */
public final class StudiedFloor {

    private final Structure structure;
    private final Names names;
    private final List<Combination> combinations;
    private final List<Gravity> gravity = new ArrayList<>();

    private StudiedFloor(JobPlan plan) {
        this.structure = new Structure(plan);
        this.names = new Names(plan);
        this.combinations = Combinations.of(structure.model()).gravity().stream()
                .filter(c -> c.factor(LoadKind.DEAD) == 1)
                .toList();
        int[] live = structure.model().cells().stream()
                .mapToInt(LoadModel.Cell::unit)
                .toArray();
        int everywhere = live.length == 0
                ? LoadModel.ABSENT
                : structure.solver(Give.RIGID).addGroup(live);
        for (Combination combination : combinations) {
            gravity.add(new Gravity(combination.name(), load(combination, everywhere)));
        }
    }

    public static StudiedFloor of(JobPlan plan) {
        return new StudiedFloor(plan);
    }

    /**
     * Gravity loads that act together, all of dead load among them.
     *
     * @param name of the combination
     * @param load live load everywhere
     */
    public record Gravity(String name, LoadCase load) {}

    /**
     * A bound on how far posts and ground give.
     *
     * @param name in words
     * @param solver of the floor on such posts
     */
    public record Bound(String name, ContactSolver solver) {}

    private LoadCase load(Combination combination, int live) {
        LoadModel model = structure.model();
        LoadCase load = new LoadCase(new int[] {model.dead()}, new double[] {1});
        load = with(load, model.roofLive(), combination.factor(LoadKind.ROOF_LIVE));
        load = with(load, model.snow(), combination.factor(LoadKind.SNOW));
        return with(load, live, combination.factor(LoadKind.LIVE));
    }

    private static LoadCase with(LoadCase load, int unit, double factor) {
        return unit == LoadModel.ABSENT || factor == 0 ? load : load.with(unit, factor);
    }

    public JobPlan plan() {
        return structure.plan();
    }

    public Frame frame() {
        return structure.frame().frame();
    }

    /** What each contact of the frame is. */
    public List<ContactPlace> places() {
        return structure.frame().places();
    }

    /** Combinations of gravity loads with all of dead load, dead load alone first. */
    public List<Gravity> gravity() {
        return List.copyOf(gravity);
    }

    /**
     * Cases that try to lift the floor off what carries it: 0.6 of dead load where it holds, and in full what relieves.
     *
     * @param dead the floor under dead load
     * @param full the floor under dead load and live load everywhere
     */
    public List<Gravity> lifting(Solution dead, Solution full) {
        return new StabilityCases(
                        structure.model(), Combinations.of(structure.model()).gravity())
                .of(structure.frame(), names, dead, full).stream()
                        .map(c -> new Gravity(c.name() + ", " + c.pattern(), c.load()))
                        .toList();
    }

    /** Rigid first; the others where posts or ground give. */
    public List<Bound> bounds() {
        return structure.gives().stream()
                .map(give -> new Bound(give.words(), structure.solver(give)))
                .toList();
    }

    /** What was taken of the stiffness of posts that the plan does not state, in words. */
    public List<String> said() {
        return structure.bounds().said();
    }

    /**
     * The floor as found under dead load, without shores, where bearings have come down.
     *
     * @param settled changes of the gaps at bearings and piers (m), positive where they came down
     * @return what it found, of which the outcome says whether the floor stands on its bearings alone
     */
    public Found found(Bound bound, List<UnitLoad.Offset> settled) {
        LoadCase dead = new LoadCase(new int[] {structure.model().dead()}, new double[] {1});
        if (!settled.isEmpty()) {
            int unit = bound.solver().addOffsets(settled);
            dead = new LoadCase(new int[] {unit, structure.model().dead()}, new double[] {1, 1});
        }
        AsFound found = AsFound.of(structure.frame(), bound.solver(), dead);
        return new Found(found.solution(), found.stands() ? found.shifts() : List.of());
    }

    /**
     * The floor as found.
     *
     * @param solution under dead load
     * @param snug changes of gaps by which the shores lie snug under it
     */
    public record Found(Solution solution, List<UnitLoad.Offset> snug) {}

    /** Which contacts are there in a situation, and which hold down. */
    public Rules rules(Situation situation) {
        return structure.frame().rules(situation, Ties.HOLD);
    }

    /** Whether a contact is taken away in a situation. */
    public boolean taken(int contact, Situation situation) {
        return structure.frame().taken(contact, situation);
    }

    /** Limits of a member by the combinations of {@link #gravity}, in their order. */
    public MemberLimits limits(Situation situation, int member) {
        return MemberLimits.of(plan(), situation, member, combinations);
    }

    /**
     * A post against its strength.
     *
     * @param lift how far it stands taller than its height in the plan (m)
     * @param load (N), not negative
     */
    public Finding post(ContactPlace.OnPost head, double lift, double load) {
        Shore shore = plan().shores().get(head.shore());
        double lean = plan().circumstances().limits().plumb().lean();
        return PostJudge.judge(post(head), load, lift, lean, shore.beam().breadth())
                .finding();
    }

    /** Pressure under its pad against what the ground is allowed to take. */
    public Finding pad(ContactPlace.OnPost head, double load) {
        PadLoad on = new PadLoad(
                load, Double.NaN, PadLoad.lean(plan().circumstances().limits().plumb()));
        return PadPressure.judge(post(head), plan().ground(), on, Working.OFF);
    }

    public Post post(ContactPlace.OnPost head) {
        return plan().shores().get(head.shore()).posts().get(head.post());
    }

    /** A contact in the plan's names. */
    public String name(int contact) {
        return names.contact(places().get(contact));
    }

    /** A member in the plan's names. */
    public String member(int member) {
        return names.member(member);
    }

    /** In words, what moves in a solution that is no settled one. */
    public String moves(Solution solution) {
        return new Mechanism(plan(), structure.frame(), names).describe(solution);
    }

    /** Contact states factorised so far. */
    public int factorised() {
        return structure.factorised();
    }
}
