package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Basis;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths that nothing holds, and who counts as a neighbour, worked by hand; what they do to the value is the clauses'. */
class MemberLimitsTest {

    private static final Fastening LOOSE = new Fastening.Loose();
    private static final Fastening TIED = new Fastening.Held(1000, "ties");
    private static final Situation ALL = new Situation("all", List.of(), List.of());
    private static final List<Combination> CASES = Section2_4.gravity(EnumSet.of(LoadKind.DEAD, LoadKind.LIVE));
    private static final int LIVE = 1;
    private static final Member BOARD = Plans.twoByTen(1, 0);
    private static final Member BEAM = Plans.twoByTen(3, 0);

    private static Joist joist(double x, double start, double length) {
        return new Joist("J", x, start, length, BOARD);
    }

    private static JobPlan plan(List<Joist> joists, List<Bearing> bearings, List<Shore> shores) {
        Floor floor = new Floor(joists, bearings, List.of(), Floor.JoistWeight.INCLUDED_IN_DEAD);
        return new JobPlan(Basis.US_ASD, floor, shores, new Ground.Unstated(), List.of(ALL));
    }

    private static JobPlan tied(double first, double second) {
        return plan(
                List.of(joist(0, 0, 4)),
                List.of(
                        Plans.bearing("a", first, TIED),
                        Plans.bearing("b", second, TIED),
                        Plans.bearing("c", 4, LOOSE)),
                List.of());
    }

    private static MemberLimits limits(JobPlan plan, Situation situation, int member) {
        return MemberLimits.of(plan, situation, member, CASES);
    }

    /** F'b of a member over an unbraced length. */
    private static double bending(Member member, double repetitive, double unbraced) {
        return new TimberCapacity(member, repetitive).bending(LoadDuration.TEN_YEARS, unbraced);
    }

    private static void held(MemberLimits got, Member member, double unbraced) {
        assertThat(got.hogging(LIVE)).isCloseTo(bending(member, 1, unbraced), within(1e-6));
        assertThat(bending(member, 1, unbraced)).isLessThan(0.999 * bending(member, 1, unbraced - 0.1));
    }

    /** The floor holds the top edge; of the bottom edge the longest part between ties and ends counts. */
    @ParameterizedTest
    @CsvSource({"1, 3, 2", "3, 1, 2", "0.5, 1.5, 2.5", "2, 2.2, 2", "0, 4, 4"})
    void aJoistIsHeldWhereItIsTied(double first, double second, double longest) {
        MemberLimits got = limits(tied(first, second), ALL, 0);

        held(got, BOARD, longest);
        assertThat(got.sagging(LIVE)).isCloseTo(bending(BOARD, 1, 0), within(1e-6));
    }

    @Test
    void aTieThatIsTakenAwayHoldsNothing() {
        held(limits(tied(1, 3), new Situation("first out", List.of(0), List.of()), 0), BOARD, 3);
        held(limits(tied(1, 3), new Situation("both out", List.of(0, 1), List.of()), 0), BOARD, 4);
    }

    @Test
    void aTieBesideTheJoistHoldsNothing() {
        Bearing aside = new Bearing("aside", 2, 0.1, Plans.RIGID, 1, 9, TIED, List.of());
        held(limits(plan(List.of(joist(0, 0, 4)), List.of(aside), List.of()), ALL, 0), BOARD, 4);
        held(limits(plan(List.of(joist(2, 0, 4)), List.of(aside), List.of()), ALL, 0), BOARD, 2);
    }

    /** 24 in are 0.6096 m. Joists far from where x begins, so that a sum of places is no distance. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.4, 0.8, 0, true",
        "0, 0.4, 0.8, 1, true",
        "0, 0.4, 0.8, 2, true",
        "0, 0.4, 1.1, 0, false",
        "0, 0.4, 1.1, 1, false",
        "0, 0.4, 1.1, 2, false",
        "0, 0.7, 1.1, 0, false",
        "0, 0.7, 1.1, 1, false",
        "0, 0.7, 1.1, 2, false"
    })
    void threeJoistsNearOneAnotherHelpEachOther(double one, double two, double three, int which, boolean help) {
        List<Joist> joists = List.of(joist(5 + one, 0, 4), joist(5 + two, 0, 4), joist(5 + three, 0, 4));

        repetitive(joists, which, help);
    }

    private static void repetitive(List<Joist> joists, int which, boolean help) {
        assertThat(limits(plan(joists, List.of(), List.of()), ALL, which).sagging(LIVE))
                .isCloseTo(bending(BOARD, help ? 1.15 : 1, 0), within(1e-6));
    }

    /** Of four, the one at the edge looks at the next two, and not at the fourth. */
    @ParameterizedTest
    @CsvSource({"0, true", "1, true", "2, false", "3, false"})
    void aNeighbourFarOffCountsForThoseBesideIt(int which, boolean help) {
        List<Joist> joists = IntStream.range(0, 4)
                .mapToObj(i -> joist(5 + (i == 3 ? 1.7 : i * 0.4), 0, 4))
                .toList();

        repetitive(joists, which, help);
    }

    @Test
    void twoJoistsAreTooFew() {
        repetitive(List.of(joist(5, 0, 4), joist(5.4, 0, 4)), 0, false);
        repetitive(List.of(joist(5, 0, 4), joist(5.4, 0, 4)), 1, false);
    }

    /** A lapped joist runs beside another for half its length, or for a little less. */
    @ParameterizedTest
    @CsvSource({"2, true", "2.1, false", "3.9, false"})
    void aLappedJoistIsANeighbourForHalfTheLength(double start, boolean help) {
        List<Joist> joists = List.of(joist(5, 0, 4), joist(5.4, 0, 4), joist(5.8, start, 4));

        repetitive(joists, 0, help);
    }

    private static Shore shore(String name, double start, double length, double... posts) {
        List<Post> all = new ArrayList<>();
        for (double x : posts) {
            all.add(Plans.post(name + x, x, Plans.RIGID));
        }
        return new Shore(name, 1, BEAM, start, length, List.of(), all);
    }

    /** Joists come first, then beams, then girders. */
    @Test
    void beamsAreHeldOnTheirPosts() {
        JobPlan plan = plan(
                List.of(joist(0, 0, 4), joist(0.4, 0, 4)),
                List.of(),
                List.of(shore("A", -0.5, 5, 0, 1.5, 4), shore("B", 0, 6, 1, 2)));

        held(limits(plan, ALL, 2), BEAM, 2.5);
        held(limits(plan, ALL, 3), BEAM, 4);
        assertThat(limits(plan, ALL, 2).sagging(LIVE))
                .isEqualTo(limits(plan, ALL, 2).hogging(LIVE));
    }

    private static Bearing girder(String name, double y, double... piers) {
        List<Girder.Pier> all = new ArrayList<>();
        for (double x : piers) {
            all.add(new Girder.Pier(name + x, x, 0.1, Plans.RIGID, LOOSE));
        }
        Girder body = new Girder(BEAM, 0, 6, all);
        return new Bearing(name, y, 0.1, Plans.RIGID, 0, 6, LOOSE, List.of(), body);
    }

    @Test
    void girdersAreHeldOnThePiersThatStand() {
        Situation without = new Situation(
                "pier out", List.of(), List.of(), List.of(), List.of(new Situation.PierOut(2, 1)), List.of());
        JobPlan plan = plan(
                List.of(joist(0, 0, 4)),
                List.of(girder("g", 0, 0, 6), Plans.bearing("wall", 2, LOOSE), girder("h", 4, 0, 2, 5, 6)),
                List.of(shore("A", 0, 6, 0, 6)));

        held(limits(plan, ALL, 2), BEAM, 6);
        held(limits(plan, ALL, 3), BEAM, 3);
        held(limits(plan, without, 3), BEAM, 5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> limits(plan, ALL, 4))
                .withMessageContaining("girder");
    }

    /** M over three section moduli, 3V/2 over three areas. */
    @Test
    void stressesAreOfAllPliesTogether() {
        MemberLimits got = limits(plan(List.of(), List.of(), List.of(shore("A", 0, 3, 0, 3))), ALL, 0);
        RectangularSection ply = BEAM.ply();

        assertThat(got.bendingStress(6000)).isCloseTo(2000 / ply.sectionModulus(), within(1e-3));
        assertThat(got.shearStress(6000)).isCloseTo(3000 / ply.area(), within(1e-3));
        assertThat(got.shear(LIVE)).isCloseTo(150 * Plans.PSI, within(1e-3));
        assertThat(got.bendingKnown()).isTrue();
        assertThat(got.liveDivisor()).isEqualTo(360);
        assertThat(got.totalDivisor()).isEqualTo(240);
    }

    @Test
    void aBoardOutsideItsTableHasNoBendingValue() {
        WoodGrade grade = Plans.HEM_FIR_2;
        Member thick =
                new Member("thick", new RectangularSection(0.14, 0.235), 1, grade, false, Member.Moisture.DRY, 0);
        Shore shore = new Shore("A", 1, thick, 0, 3, List.of(), List.of(Plans.post("P", 1, Plans.RIGID)));

        assertThat(limits(plan(List.of(), List.of(), List.of(shore)), ALL, 0).bendingKnown())
                .isFalse();
        assertThat(grade.citation()).isEqualTo(Citation.read("NDS Supplement", "2018", "Table 4A"));
    }
}
