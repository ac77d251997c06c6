package dev.underprop.engine.lift;

import static dev.underprop.engine.lift.Lifts.ACME;
import static dev.underprop.engine.lift.Lifts.FOOT;
import static dev.underprop.engine.lift.Lifts.INCH;
import static dev.underprop.engine.lift.Lifts.POUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import java.util.List;
import org.junit.jupiter.api.Test;

class LifterTest {

    private static final LiftLimits EIGHTH = Lifts.limits(INCH / 8, 1.0 / 40);

    private final JobPlan four = Lifts.fastened(Lifts.row(4, new Post.Rigid(), 3500 * POUND, 2 * FOOT));

    @Test
    void raisesALineInPassesWhereOneGoWouldOverloadAPost() {
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, EIGHTH, ACME, 0.5 * INCH));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.PLANNED);
        assertThat(plan.stages()).hasSize(4);
        assertThat(plan.count().least()).isEqualTo(4);
        assertThat(plan.stages().get(1).passes().size()).isGreaterThan(1);
        assertThat(plan.stages().get(1).start()).isEqualTo(24);
        assertThat(plan.posts()).allSatisfy(p -> assertThat(p.planned()).isCloseTo(0.5 * INCH, within(1e-12)));
        assertThat(plan.points()).allSatisfy(p -> assertThat(p.end().greatest()).isCloseTo(0, within(1e-9)));
    }

    @Test
    void raisesNoPostAloneThatCannotCarryWhatItTakesFromItsNeighbours() {
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, EIGHTH, ACME, 0, 0.5 * INCH, 0, 0));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        assertThat(plan.stages()).isEmpty();
        LiftPlan.Stopped stopped = (LiftPlan.Stopped) plan.obstacle();
        assertThat(stopped.limit().kind()).isEqualTo(Limit.Kind.POST);
        assertThat(stopped.post()).isEqualTo("A2");
        assertThat(stopped.value()).isGreaterThan(1);
        assertThat(stopped.help()).isNotEmpty();
        assertThat(plan.posts().get(1).planned()).isLessThan(0.5 * INCH);
    }

    @Test
    void endsWhereLimitsStopItWhenAskedTo() {
        LiftRequest asked = Lifts.request(four, EIGHTH, ACME, 0, 0.5 * INCH, 0, 0);
        LiftPlan plan = Lifter.plan(
                four,
                new LiftRequest(
                        asked.during(),
                        asked.survey(),
                        new LiftRequest.Target(asked.target().plane(), true),
                        asked.limits(),
                        asked.screws(),
                        asked.order(),
                        asked.crept(),
                        asked.progress(),
                        asked.after()));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.SHORT);
        assertThat(plan.stages()).isNotEmpty();
        assertThat(plan.posts().get(1).planned()).isPositive().isLessThan(0.5 * INCH);
    }

    @Test
    void whatHelpsLetsItThrough() {
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, EIGHTH, ACME, 0, 0.5 * INCH, 0, 0));
        LiftPlan.Help help = ((LiftPlan.Stopped) plan.obstacle())
                .help().stream()
                        .filter(h -> h.limit().kind() == Limit.Kind.POST)
                        .findFirst()
                        .orElseThrow();
        boolean alone = ((LiftPlan.Stopped) plan.obstacle()).help().size() == 1;
        JobPlan stronger =
                Lifts.fastened(Lifts.row(4, new Post.Rigid(), 3500 * POUND * help.needed() * 1.0001, 2 * FOOT));
        JobPlan notQuite =
                Lifts.fastened(Lifts.row(4, new Post.Rigid(), 3500 * POUND * help.needed() * 0.99, 2 * FOOT));

        assertThat(alone).isTrue();
        assertThat(Lifter.plan(stronger, Lifts.request(stronger, EIGHTH, ACME, 0, 0.5 * INCH, 0, 0))
                        .outcome())
                .isEqualTo(LiftPlan.Outcome.PLANNED);
        assertThat(Lifter.plan(notQuite, Lifts.request(notQuite, EIGHTH, ACME, 0, 0.5 * INCH, 0, 0))
                        .outcome())
                .isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
    }

    /** Both walls stand and a shore in the middle is raised: the joists, light as they are, come off the walls. */
    @Test
    void stopsBeforeJoistsLeaveAWall() {
        JobPlan plan = Lifts.row(4, new Post.Rigid(), 12000 * POUND, 8 * FOOT);
        LiftRequest asked = Lifts.request(plan, Lifts.limits(INCH / 8, 1.0 / 40), ACME, 1 * INCH);
        LiftPlan answer = Lifter.plan(plan, during(asked));

        assertThat(answer.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        LiftPlan.Stopped stopped = (LiftPlan.Stopped) answer.obstacle();
        assertThat(stopped.limit().kind()).isEqualTo(Limit.Kind.CONTACT);
        assertThat(stopped.limit().place()).contains("far wall");
        assertThat(stopped.raised()).isBetween(INCH / 4, INCH);
    }

    private static LiftRequest during(LiftRequest asked) {
        return new LiftRequest(
                Lifts.SHORED,
                asked.survey(),
                asked.target(),
                asked.limits(),
                asked.screws(),
                asked.order(),
                asked.crept(),
                asked.progress(),
                asked.after());
    }

    @Test
    void travelAndTotalStopALiftBeforeItBegins() {
        LiftScrew shortScrew =
                new LiftScrew(ACME.lead(), ACME.part(), ACME.thread(), ACME.wrench(), ACME.pull(), 0.3 * INCH);
        LiftPlan travel = Lifter.plan(four, Lifts.request(four, EIGHTH, shortScrew, 0.5 * INCH));
        LiftPlan total = Lifter.plan(four, Lifts.request(four, EIGHTH, ACME, 4 * INCH));

        assertThat(travel.outcome()).isEqualTo(LiftPlan.Outcome.IMPOSSIBLE);
        LiftPlan.Stopped stopped = (LiftPlan.Stopped) travel.obstacle();
        assertThat(stopped.limit().kind()).isEqualTo(Limit.Kind.TRAVEL);
        assertThat(stopped.value()).isCloseTo(0.5 * INCH, within(1e-12));
        assertThat(stopped.raised()).isCloseTo(9 * INCH / 32, within(1e-12));
        assertThat(((LiftPlan.Stopped) total.obstacle()).limit().kind()).isEqualTo(Limit.Kind.TOTAL);
    }

    @Test
    void whatIsNotStatedIsNotChecked() {
        LiftScrew bare =
                new LiftScrew(ACME.lead(), ACME.part(), LiftScrew.Rubbing.UNSTATED, Double.NaN, Double.NaN, Double.NaN);
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, Lifts.limits(INCH / 8, Double.NaN), bare, 0.5 * INCH));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(plan.open())
                .anyMatch(o -> o.startsWith("change of slope"))
                .anyMatch(o -> o.startsWith("screw travel"))
                .anyMatch(o -> o.startsWith("torque"))
                .anyMatch(o -> o.startsWith("wrench pull"));
        assertThat(plan.stages().get(0).turns().get(0).torque().known()).isFalse();
    }

    /** By hand: T = F dm/2 (tan lambda + f/cos a)/(1 - f/cos a tan lambda), and the collar with the greatest friction. */
    @Test
    void torqueIsThatOfTheScrewOverLoadAndFriction() {
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, EIGHTH, ACME, 0.5 * INCH));
        LiftPlan.Turn turn = plan.stages().get(0).turns().get(0);
        double load = turn.after().greatest();
        double slope = 0.25 / (Math.PI * 1.375);
        double f = 0.2 / StrictMath.cos(StrictMath.toRadians(14.5));
        double torque = load * 1.375 * INCH / 2 * (slope + f) / (1 - f * slope) + load * 0.15 * 0.9 * INCH;

        assertThat(turn.torque().greatest()).isCloseTo(torque, within(1e-9 * torque));
        assertThat(turn.pull().greatest()).isCloseTo(torque / (24 * INCH), within(1e-9 * torque));
        assertThat(turn.torque().least()).isLessThan(torque);
    }

    @Test
    void aPullThatIsTooMuchForOnePersonIsAFinding() {
        LiftScrew weak = new LiftScrew(ACME.lead(), ACME.part(), ACME.thread(), 4 * INCH, 20 * POUND, ACME.travel());
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, EIGHTH, weak, 0.25 * INCH));

        assertThat(plan.remarks()).anyMatch(r -> r.kind() == LiftPlan.Remark.Kind.WRENCH);
        assertThat(Lifter.plan(four, Lifts.request(four, EIGHTH, ACME, 0.25 * INCH))
                        .remarks())
                .noneMatch(r -> r.kind() == LiftPlan.Remark.Kind.WRENCH);
    }

    @Test
    void roundingIsSaid() {
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, EIGHTH, ACME, 0.27 * INCH));

        assertThat(plan.posts().get(0).planned()).isCloseTo(9 * INCH / 32, within(1e-12));
        assertThat(plan.remarks()).anyMatch(r -> r.kind() == LiftPlan.Remark.Kind.ROUNDING);
    }

    @Test
    void moreStagesThanTheLeastAreExplained() {
        LiftScrew coarse = new LiftScrew(0.2 * INCH, 0.25, ACME.thread(), ACME.wrench(), ACME.pull(), ACME.travel());
        LiftPlan plan = Lifter.plan(four, Lifts.request(four, EIGHTH, coarse, 0.5 * INCH));

        assertThat(plan.count().least()).isEqualTo(4);
        assertThat(plan.count().stages()).isEqualTo(5);
        assertThat(plan.count().why()).contains("whole smallest turns");
    }

    @Test
    void aScrewTooCoarseForAStageIsRefused() {
        LiftScrew coarse = new LiftScrew(0.25 * INCH, 1, ACME.thread(), ACME.wrench(), ACME.pull(), ACME.travel());

        assertThat(Lifter.misfits(four, Lifts.request(four, EIGHTH, coarse, 0.5 * INCH)))
                .contains(new Misfit.TooCoarse(0, "A1", 0.25 * INCH, INCH / 8));
    }

    /** Thirty posts in twenty-four stages are more than one answer holds. */
    @Test
    void aSearchThatIsGivenUpIssuesNoTurn() {
        JobPlan large = Lifts.row(30, new Post.NoStiffness(), 12000 * POUND, 2 * FOOT);
        LiftPlan plan = Lifter.plan(large, Lifts.request(large, Lifts.limits(INCH / 8, 1.0 / 20), ACME, 3 * INCH));

        assertThat(plan.outcome()).isEqualTo(LiftPlan.Outcome.INCOMPLETE);
        assertThat(plan.reason()).contains("given up");
        assertThat(plan.stages()).isEmpty();
    }

    @Test
    void aPostWithoutALevelIsAMisfit() {
        LiftRequest asked = Lifts.request(four, EIGHTH, ACME, 0.5 * INCH);
        List<LiftRequest.Point> two = asked.survey().points().subList(0, 2);
        LiftRequest bare = new LiftRequest(
                asked.during(),
                new LiftRequest.Survey(two, INCH / 32),
                asked.target(),
                asked.limits(),
                asked.screws(),
                asked.order(),
                asked.crept(),
                asked.progress(),
                asked.after());

        assertThat(Lifter.misfits(four, bare))
                .containsExactly(new Misfit.NoLevel(2, "A3", false), new Misfit.NoLevel(3, "A4", false));
        assertThatThrownBy(() -> Lifter.plan(four, bare)).isInstanceOf(IllegalArgumentException.class);
    }
}
