package dev.underprop.engine.assess;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.load.Pattern;
import dev.underprop.engine.load.Patterns;
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
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/** The floor of a plan as an assessment sees it, for rooms that follow it through changes of their own, such as a lift. */
public final class StudiedFloor {

    private final JobPlan plan;
    private final Structure structure;
    private final Names names;
    private final BitSet jacks = new BitSet();
    private final List<Combination> combinations;
    private final List<Gravity> gravity = new ArrayList<>();
    private final Map<List<Integer>, Integer> groups = new HashMap<>();
    private final Map<Ended, List<Gravity>> patterned = new HashMap<>();
    private final Map<Ended, List<Gravity>> relieving = new HashMap<>();
    private final Map<Ended, List<Gravity>> lifting = new HashMap<>();

    private StudiedFloor(JobPlan plan, List<Jack> beside, Halt halt) {
        JobPlan whole = with(plan, beside);
        this.plan = plan;
        this.structure = new Structure(whole, halt);
        this.names = new Names(whole);
        for (int c = 0; c < places().size(); c++) {
            jacks.set(c, places().get(c) instanceof ContactPlace.OnPost head && isOne(beside, post(head)));
        }
        this.combinations = Combinations.of(structure.model()).gravity().stream()
                .filter(c -> c.factor(LoadKind.DEAD) == 1)
                .toList();
        int[] live = structure.model().cells().stream()
                .mapToInt(LoadModel.Cell::unit)
                .toArray();
        int everywhere = live.length == 0
                ? LoadModel.ABSENT
                : structure.solver(Give.RIGID).addGroup(live);
        for (int c = 0; c < combinations.size(); c++) {
            Combination combination = combinations.get(c);
            gravity.add(new Gravity(combination.name(), load(combination, everywhere), c));
        }
    }

    public static StudiedFloor of(JobPlan plan) {
        return of(plan, List.of(), Halt.NEVER);
    }

    /**
     * @param jacks that can be put under shores; no rules have them unless they are asked for by {@link #withJack}
     * @param halt asked while it is solved
     */
    public static StudiedFloor of(JobPlan plan, List<Jack> jacks, Halt halt) {
        return new StudiedFloor(plan, jacks, halt);
    }

    /**
     * A jack under a shore, for as long as it is needed.
     *
     * @param shore under which it stands, by the plan's order
     * @param stand place, height, strength and pad, as those of a post
     */
    public record Jack(int shore, Post stand) {}

    private static JobPlan with(JobPlan plan, List<Jack> jacks) {
        if (jacks.isEmpty()) {
            return plan;
        }
        List<Shore> shores = new ArrayList<>();
        for (int s = 0; s < plan.shores().size(); s++) {
            Shore shore = plan.shores().get(s);
            List<Post> posts = new ArrayList<>(shore.posts());
            for (Jack jack : jacks) {
                if (jack.shore() == s) {
                    posts.add(jack.stand());
                }
            }
            posts.sort(Comparator.comparingDouble(Post::x));
            shores.add(shore.with(posts));
        }
        return new JobPlan(plan.basis(), plan.floor(), shores, plan.ground(), plan.situations(), plan.circumstances());
    }

    private static boolean isOne(List<Jack> jacks, Post post) {
        return jacks.stream().anyMatch(jack -> jack.stand().equals(post));
    }

    /**
     * Gravity loads that act together, all of dead load among them.
     *
     * @param name of the combination, and of what it does with live load
     * @param load for statics
     * @param combination by which strength is judged: its place in {@link #gravity}; -1 where only standing is looked at
     */
    public record Gravity(String name, LoadCase load, int combination) {}

    /**
     * A bound on how far posts and ground give.
     *
     * @param name in words
     * @param solver of the floor on such posts
     */
    public record Bound(String name, ContactSolver solver) {}

    /** The contact states in which cases are chosen by influence: it is the same wherever the same contacts are closed. */
    private record Ended(Object dead, Object full) {
        static Ended of(Solution dead, Solution full) {
            return new Ended(dead.state(), full.state());
        }
    }

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

    /** As it was given, without jacks. */
    public JobPlan plan() {
        return plan;
    }

    public Frame frame() {
        return structure.frame().frame();
    }

    /** What each contact of the frame is. */
    public List<ContactPlace> places() {
        return structure.frame().places();
    }

    /** Combinations of gravity loads with all of dead load, live load everywhere, dead load alone first. */
    public List<Gravity> gravity() {
        return List.copyOf(gravity);
    }

    /**
     * The same combinations with live load in every pattern but everywhere, as a check of the plan has them: the fixed ones, and
     * by influence those that relieve or press a bearing, post or pier most.
     *
     * @param dead the floor under dead load
     * @param full the floor under dead load and live load everywhere
     */
    public List<Gravity> patterned(Solution dead, Solution full) {
        return patterned.computeIfAbsent(Ended.of(dead, full), met -> findPatterned(dead, full));
    }

    private List<Gravity> findPatterned(Solution dead, Solution full) {
        LoadModel model = structure.model();
        Patterns patterns = new Patterns(model, plan());
        for (int c = 0; !model.cells().isEmpty() && c < places().size(); c++) {
            Solution state = dead.closed(c) ? dead : full;
            if (state.closed(c) && !(places().get(c) instanceof ContactPlace.OnShore)) {
                int contact = c;
                double[] influence = model.cells().stream()
                        .mapToDouble(cell -> state.influence(contact, cell.unit()))
                        .toArray();
                patterns.addInfluence(() -> name(contact), influence);
            }
        }
        List<Gravity> all = new ArrayList<>();
        patterns.all().stream().skip(1).forEach(pattern -> add(pattern, all));
        return all;
    }

    private void add(Pattern pattern, List<Gravity> into) {
        int group = group(Arrays.stream(pattern.loaded())
                .mapToObj(cell -> structure.model().cells().get(cell).unit())
                .toList());
        for (int c = 0; c < combinations.size(); c++) {
            Combination combination = combinations.get(c);
            if (combination.factor(LoadKind.LIVE) > 0) {
                into.add(new Gravity(combination.name() + ", " + pattern.name(), load(combination, group), c));
            }
        }
    }

    /**
     * All of dead load, and whatever else relieves a bearing, post or pier, for each of them.
     *
     * @param dead the floor under dead load
     * @param full the floor under dead load and live load everywhere
     */
    public List<Gravity> relieving(Solution dead, Solution full) {
        return relieving.computeIfAbsent(Ended.of(dead, full), met -> findRelieving(dead, full));
    }

    private List<Gravity> findRelieving(Solution dead, Solution full) {
        return new StabilityCases(structure.model(), combinations, 1)
                .of(structure.frame(), names, dead, full).stream()
                        .map(c -> new Gravity(c.name() + ", " + c.pattern(), grouped(c.load()), c.combination()))
                        .filter(distinct())
                        .toList();
    }

    /**
     * Cases that try to lift the floor off what carries it: 0.6 of dead load where it holds, and in full what relieves.
     *
     * @param dead the floor under dead load
     * @param full the floor under dead load and live load everywhere
     */
    public List<Gravity> lifting(Solution dead, Solution full) {
        return lifting.computeIfAbsent(Ended.of(dead, full), met -> findLifting(dead, full));
    }

    private List<Gravity> findLifting(Solution dead, Solution full) {
        return new StabilityCases(
                        structure.model(), Combinations.of(structure.model()).gravity())
                .of(structure.frame(), names, dead, full).stream()
                        .map(c -> new Gravity(c.name() + ", " + c.pattern(), grouped(c.load()), -1))
                        .filter(distinct())
                        .toList();
    }

    /** The same load with cells that act alike as one unit: asked for at every turn, it costs one addition instead of many. */
    private LoadCase grouped(LoadCase load) {
        Map<Double, List<Integer>> alike = new TreeMap<>();
        for (int i = 0; i < load.size(); i++) {
            alike.computeIfAbsent(load.factor(i), f -> new ArrayList<>()).add(load.unit(i));
        }
        int[] units = new int[alike.size()];
        double[] factors = new double[units.length];
        int n = 0;
        for (Map.Entry<Double, List<Integer>> one : alike.entrySet()) {
            units[n] = group(one.getValue());
            factors[n++] = one.getKey();
        }
        return new LoadCase(units, factors);
    }

    private int group(List<Integer> units) {
        return units.size() == 1
                ? units.get(0)
                : groups.computeIfAbsent(
                        units,
                        all -> structure
                                .solver(Give.RIGID)
                                .addGroup(
                                        all.stream().mapToInt(Integer::intValue).toArray()));
    }

    /** Lets the same load through once: what relieves one bearing is often what relieves the next. */
    private static Predicate<Gravity> distinct() {
        Set<List<Double>> seen = new HashSet<>();
        return gravity -> {
            List<Double> key = new ArrayList<>();
            for (int i = 0; i < gravity.load().size(); i++) {
                key.add((double) gravity.load().unit(i));
                key.add(gravity.load().factor(i));
            }
            return seen.add(key);
        };
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
        AsFound found = AsFound.of(structure.frame(), bound.solver(), dead, jacks);
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
        Rules rules = structure.frame().rules(situation, Ties.HOLD);
        BitSet absent = rules.absent();
        absent.or(jacks);
        return new Rules(absent, rules.fastened());
    }

    /** The same with a jack set too. */
    public Rules withJack(Rules rules, int jack) {
        BitSet absent = rules.absent();
        absent.clear(jack);
        return new Rules(absent, rules.fastened());
    }

    /** The same with a post that must not carry. */
    public Rules withoutPost(Rules rules, int post) {
        BitSet absent = rules.absent();
        absent.set(post);
        return new Rules(absent, rules.fastened());
    }

    /** Whether a contact is the head of a jack. */
    public boolean isJack(int contact) {
        return jacks.get(contact);
    }

    /** The same with every shore away, its beam and its posts. */
    public Rules withoutShores(Situation situation) {
        Rules rules = rules(situation);
        BitSet absent = rules.absent();
        for (int c = 0; c < places().size(); c++) {
            ContactPlace place = places().get(c);
            if (place instanceof ContactPlace.OnShore || place instanceof ContactPlace.OnPost) {
                absent.set(c);
            }
        }
        return new Rules(absent, rules.fastened());
    }

    /** Whether a contact is taken away in a situation. */
    public boolean taken(int contact, Situation situation) {
        return structure.frame().taken(contact, situation);
    }

    /** Limits of a member by the combinations of {@link #gravity}, in their order. */
    public MemberLimits limits(Situation situation, int member) {
        return MemberLimits.of(plan(), situation, member, combinations);
    }

    /** Limits of a shore's beam while one of its posts stands free of it: neither that post nor a jack holds it sideways. */
    public MemberLimits limitsWithout(ContactPlace.OnPost freed) {
        Shore shore = plan.shores().get(freed.shore());
        Post post = post(freed);
        return MemberLimits.ofBeam(
                shore, shore.posts().stream().filter(p -> !p.equals(post)).toList(), combinations);
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
        Post post = post(head);
        PadLoad on = PadLoad.on(
                post.type(), load, Double.NaN, plan().circumstances().limits().plumb());
        return PadPressure.judge(post, plan().ground(), on, Working.OFF);
    }

    public Post post(ContactPlace.OnPost head) {
        return structure.plan().shores().get(head.shore()).posts().get(head.post());
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
        return new Mechanism(structure.plan(), structure.frame(), names).describe(solution);
    }

    /** Contact states factorised so far. */
    public int factorised() {
        return structure.factorised();
    }
}
