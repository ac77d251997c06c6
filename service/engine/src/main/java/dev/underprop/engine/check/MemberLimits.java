package dev.underprop.engine.check;

import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.ibc2021.Section1604;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.clause.nds2018.Section3_4;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import java.util.Arrays;
import java.util.List;

/** What one member may bear in one situation, ready to be compared with thousands of cases. Index: combination. */
public final class MemberLimits {

    private final double modulus;
    private final double area;
    private final boolean bendingKnown;
    private final double[] sagging;
    private final double[] hogging;
    private final double[] shear;

    private MemberLimits(
            Member member, double repetitive, double unbracedTop, double unbracedBottom, List<Combination> cases) {
        TimberCapacity capacity = new TimberCapacity(member, repetitive);
        this.modulus = member.ply().sectionModulus() * member.plies();
        this.area = member.ply().area() * member.plies();
        this.bendingKnown = capacity.hasBending();
        this.sagging = new double[cases.size()];
        this.hogging = new double[cases.size()];
        this.shear = new double[cases.size()];
        for (int i = 0; i < cases.size(); i++) {
            LoadDuration duration = Section2_3.duration(cases.get(i).controlling());
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
        return member < joists ? ofJoist(plan, situation, member, cases) : ofBeam(plan, member - joists, cases);
    }

    /** The floor holds a joist's top edge; its bottom edge is held only where it rests on something. */
    private static MemberLimits ofJoist(JobPlan plan, Situation situation, int index, List<Combination> cases) {
        Joist joist = plan.floor().joists().get(index);
        double[] seats = seats(plan, situation, joist);
        double bottom = longestPart(joist.start(), joist.end(), seats);
        return new MemberLimits(joist.member(), repetitive(plan, index), 0, bottom, cases);
    }

    private static double[] seats(JobPlan plan, Situation situation, Joist joist) {
        List<Bearing> bearings = plan.floor().bearings();
        double[] seats = new double[bearings.size() + plan.shores().size()];
        int n = 0;
        for (int b = 0; b < bearings.size(); b++) {
            if (bearings.get(b).under(joist) && !situation.removed().contains(b)) {
                seats[n++] = bearings.get(b).y();
            }
        }
        for (Shore shore : plan.shores()) {
            if (shore.under(joist)) {
                seats[n++] = shore.y();
            }
        }
        Arrays.sort(seats, 0, n);
        return Arrays.copyOf(seats, n);
    }

    /** Cr; what joins the joists is the floor they carry. */
    private static double repetitive(JobPlan plan, int index) {
        Joist joist = plan.floor().joists().get(index);
        double left = Double.POSITIVE_INFINITY;
        double right = Double.POSITIVE_INFINITY;
        int beside = 0;
        for (Joist other : plan.floor().joists()) {
            if (other.start() < joist.end() && other.end() > joist.start()) {
                beside++;
                double apart = other.x() - joist.x();
                left = apart < 0 ? Math.min(left, -apart) : left;
                right = apart > 0 ? Math.min(right, apart) : right;
            }
        }
        double farther = Math.max(left, right);
        double spacing = Double.isInfinite(farther) ? Math.min(left, right) : farther;
        if (Double.isInfinite(spacing)) {
            return 1;
        }
        return Section4_3.repetitive(beside, spacing, true, joist.member().ply().breadth())
                .value();
    }

    /** Loose joists hold no edge of a beam; it counts as held where it stands on a post, which is a check of its own. */
    private static MemberLimits ofBeam(JobPlan plan, int index, List<Combination> cases) {
        Shore shore = plan.shores().get(index);
        double[] posts = shore.posts().stream().mapToDouble(Post::x).toArray();
        double unbraced = longestPart(shore.start(), shore.end(), posts);
        return new MemberLimits(shore.beam(), 1, unbraced, unbraced, cases);
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
        return Section3_3.bendingStress(moment, modulus).value();
    }

    /** Shear stress (Pa) of a shear force (N). */
    public double shearStress(double force) {
        return Section3_4.shearStress(force, area).value();
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

    /** Span divided by this is the deflection allowed under all load. */
    public double totalDivisor() {
        return Section1604.floorTotal().value();
    }

    /** Span divided by this is the deflection allowed from loads that come and go. */
    public double liveDivisor() {
        return Section1604.floorLive().value();
    }
}
