package dev.underprop.engine.check;

import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.ibc2021.Section1604;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.clause.nds2018.Section3_4;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** What one member may bear in one situation, ready to be compared with thousands of cases. Index: combination. */
public final class MemberLimits {

    private final Member member;
    private final double repetitive;
    private final double unbracedTop;
    private final double unbracedBottom;
    private final List<Combination> cases;
    private final double bendingStressOfOne;
    private final double shearStressOfOne;
    private final boolean bendingKnown;
    private final double[] sagging;
    private final double[] hogging;
    private final double[] shear;

    private MemberLimits(
            Member member, double repetitive, double unbracedTop, double unbracedBottom, List<Combination> cases) {
        this.member = member;
        this.repetitive = repetitive;
        this.unbracedTop = unbracedTop;
        this.unbracedBottom = unbracedBottom;
        this.cases = cases;
        TimberCapacity capacity = new TimberCapacity(member, repetitive);
        // Stress is linear in the force: the clauses are asked once, for one unit of it.
        this.bendingStressOfOne = Section3_3.bendingStress(1, member.ply().sectionModulus() * member.plies())
                .value();
        this.shearStressOfOne =
                Section3_4.shearStress(1, member.ply().area() * member.plies()).value();
        this.bendingKnown = capacity.hasBending();
        this.sagging = new double[cases.size()];
        this.hogging = new double[cases.size()];
        this.shear = new double[cases.size()];
        for (int i = 0; i < cases.size(); i++) {
            LoadDuration duration = duration(i);
            shear[i] = capacity.shear(duration);
            if (bendingKnown) {
                sagging[i] = capacity.bending(duration, unbracedTop);
                hogging[i] = capacity.bending(duration, unbracedBottom);
            }
        }
    }

    /**
     * Limits of a member.
     *
     * @param member member number of the situation's frame: joists first, then shore beams
     * @param cases combinations, in the order of their indices
     */
    public static MemberLimits of(JobPlan plan, Situation situation, int member, List<Combination> cases) {
        int joists = plan.floor().joists().size();
        if (member < joists) {
            return ofJoist(plan, situation, member, cases);
        }
        int shores = plan.shores().size();
        return member < joists + shores
                ? ofBeam(plan, member - joists, cases)
                : ofGirder(plan, situation, member - joists - shores, cases);
    }

    /** The floor holds a joist's top edge; its bottom edge is held only where the joist is fastened down. */
    private static MemberLimits ofJoist(JobPlan plan, Situation situation, int index, List<Combination> cases) {
        Joist joist = plan.floor().joists().get(index);
        double bottom = longestPart(joist.start(), joist.end(), fastenings(plan, situation, joist));
        return new MemberLimits(joist.member(), repetitive(plan, index), 0, bottom, cases);
    }

    /** A joist that merely lies on something is held sideways by nothing but friction, so that does not count. */
    private static double[] fastenings(JobPlan plan, Situation situation, Joist joist) {
        List<Bearing> bearings = plan.floor().bearings();
        double[] held = new double[bearings.size()];
        int n = 0;
        for (int b = 0; b < held.length; b++) {
            Bearing bearing = bearings.get(b);
            boolean fastened = bearing.fastening() instanceof Fastening.Held;
            if (fastened && bearing.under(joist) && !situation.takes(b, joist)) {
                held[n++] = bearing.y();
            }
        }
        Arrays.sort(held, 0, n);
        return Arrays.copyOf(held, n);
    }

    /**
     * Cr. What joins the joists is the floor they carry. A joist counts with its neighbours when both are near, or, at the
     * edge, when the next two are; a lapped joist that runs beside it for less than half its length is no neighbour.
     */
    private static double repetitive(JobPlan plan, int index) {
        Joist joist = plan.floor().joists().get(index);
        double[] beside = plan.floor().joists().stream()
                .filter(other -> Math.min(other.end(), joist.end()) - Math.max(other.start(), joist.start())
                        >= joist.length() / 2)
                .mapToDouble(Joist::x)
                .sorted()
                .toArray();
        int at = Arrays.binarySearch(beside, joist.x());
        if (beside.length < 3) {
            return 1;
        }
        double left = at > 0 ? beside[at] - beside[at - 1] : beside[2] - beside[1];
        double right = at < beside.length - 1
                ? beside[at + 1] - beside[at]
                : beside[beside.length - 2] - beside[beside.length - 3];
        return Section4_3.repetitive(
                        3, Math.max(left, right), true, joist.member().ply().breadth())
                .value();
    }

    /** Loose joists hold no edge of a beam; it counts as held where it stands on a post, which is a check of its own. */
    private static MemberLimits ofBeam(JobPlan plan, int index, List<Combination> cases) {
        Shore shore = plan.shores().get(index);
        return ofBeam(shore, shore.posts(), cases);
    }

    /**
     * Of the beam of a shore that is held sideways only where it stands on some of its posts.
     *
     * @param posts in order of x; none where nothing holds it
     */
    public static MemberLimits ofBeam(Shore shore, List<Post> posts, List<Combination> cases) {
        double[] held = posts.stream().mapToDouble(Post::x).toArray();
        double unbraced = longestPart(shore.start(), shore.end(), held);
        return new MemberLimits(shore.beam(), 1, unbraced, unbraced, cases);
    }

    /** As for a beam: held where it stands on a pier that is there. */
    private static MemberLimits ofGirder(JobPlan plan, Situation situation, int index, List<Combination> cases) {
        List<Bearing> bearings = plan.floor().bearings();
        int left = index;
        for (int b = 0; b < bearings.size(); b++) {
            if (bearings.get(b).body() instanceof Girder girder && left-- == 0) {
                return ofGirder(girder, situation, b, cases);
            }
        }
        throw new IllegalArgumentException("no such girder");
    }

    private static MemberLimits ofGirder(Girder girder, Situation situation, int bearing, List<Combination> cases) {
        double[] piers = IntStream.range(0, girder.piers().size())
                .filter(p -> !situation.takesPier(bearing, p))
                .mapToDouble(p -> girder.piers().get(p).x())
                .toArray();
        double unbraced = longestPart(girder.start(), girder.end(), piers);
        return new MemberLimits(girder.member(), 1, unbraced, unbraced, cases);
    }

    private static double longestPart(double start, double end, double[] held) {
        double longest = 0;
        double from = start;
        for (double at : held) {
            longest = Math.max(longest, at - from);
            from = at;
        }
        return Math.max(longest, end - from);
    }

    /** Whether the tables give a bending value for this section. */
    public boolean bendingKnown() {
        return bendingKnown;
    }

    /** Bending stress (Pa) of a moment (N·m). */
    public double bendingStress(double moment) {
        return moment * bendingStressOfOne;
    }

    /** Shear stress (Pa) of a shear force (N). */
    public double shearStress(double force) {
        return force * shearStressOfOne;
    }

    /** Adjusted bending value for sagging (Pa). */
    public double sagging(int combination) {
        return sagging[combination];
    }

    /** Adjusted bending value for hogging (Pa). */
    public double hogging(int combination) {
        return hogging[combination];
    }

    /** Adjusted shear value (Pa). */
    public double shear(int combination) {
        return shear[combination];
    }

    /**
     * Tells how a bending stress and what is allowed to it come about.
     *
     * @param stress met (Pa)
     * @param hogging whether the bottom edge is pressed
     */
    public void tellBending(double stress, boolean hogging, int combination, Working working) {
        TimberCapacity.section(member, working);
        double modulus = working.step(
                "S",
                "section modulus, all plies",
                Dimension.SECTION_MODULUS,
                member.ply().sectionModulus() * member.plies(),
                "n × b × d^2 / 6");
        String sign = hogging ? "hogging moment, bottom edge pressed" : "sagging moment, top edge pressed";
        working.analysis("M", sign, Dimension.MOMENT, stress / bendingStressOfOne);
        Cited stressed = Section3_3.bendingStress(1, modulus);
        working.rule("fb", "bending stress", Dimension.STRESS, stress, stressed.citation(), "M / S");
        new TimberCapacity(member, repetitive)
                .bending(duration(combination), hogging ? unbracedBottom : unbracedTop, working);
    }

    /** Tells how a shear stress (Pa) and what is allowed to it come about. */
    public void tellShear(double stress, int combination, Working working) {
        TimberCapacity.section(member, working);
        double area = working.step(
                "A", "area, all plies", Dimension.AREA, member.ply().area() * member.plies(), "n × b × d");
        working.analysis("V", "greatest shear, nothing left out", Dimension.FORCE, stress / shearStressOfOne);
        working.rule(
                "fv",
                "shear stress",
                Dimension.STRESS,
                stress,
                Section3_4.shearStress(1, area).citation(),
                "1.5 × V / A");
        new TimberCapacity(member, repetitive).shear(duration(combination), working);
    }

    private LoadDuration duration(int combination) {
        return Section2_3.duration(cases.get(combination).controlling());
    }

    /** The member that has these limits. */
    public Member member() {
        return member;
    }

    /** Span divided by this is the deflection allowed under all load. */
    public double totalDivisor() {
        return total().value();
    }

    /** Span divided by this is the deflection allowed from loads that come and go. */
    public double liveDivisor() {
        return live().value();
    }

    /** {@link #totalDivisor} with its rule. */
    public static Cited total() {
        return Section1604.floorTotal();
    }

    /** {@link #liveDivisor} with its rule. */
    public static Cited live() {
        return Section1604.floorLive();
    }
}
