package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Member.Moisture;
import dev.underprop.engine.plan.Member.Treated;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.section.RectangularSection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Posts of Hem-Fir No.2, Fc 1300 psi, Emin 470000 psi; capacities worked out apart from this code. */
class TimberPostJudgeTest {

    private static final TimberPost.Joined NOTHING = new TimberPost.Unjoined();

    private static final TimberPost.Joined NAILS = new TimberPost.Fasteners(
            false, 0.192 * INCH, 4.25 * INCH, 3 * INCH, 5 * INCH, 2, 2.25 * INCH, 1.5 * INCH, true);

    private static final TimberPost.Joined BOLTS = new TimberPost.Fasteners(
            true, 0.5 * INCH, Double.NaN, 3.75 * INCH, 6 * INCH, 2, 2.5 * INCH, 1.5 * INCH, true);

    private static Member member(double breadth, double depth, int plies, Moisture moisture, Treated treated) {
        RectangularSection ply = new RectangularSection(breadth * INCH, depth * INCH);
        Member.Details details = new Member.Details(new Member.Stamped(), new Member.Whole(), treated);
        return new Member("post", ply, plies, Plans.HEM_FIR_2, true, moisture, 0, details);
    }

    private static Member square() {
        return member(3.5, 3.5, 1, Moisture.DRY, Treated.UNTREATED);
    }

    private static Member boards() {
        return member(1.5, 5.5, 3, Moisture.DRY, Treated.UNTREATED);
    }

    private static PostType type(TimberPost post, Plate plate) {
        return new PostType(
                "timber", new PostType.NotRated(), plate, plate, new PostType.NoTube(), new PostType.NoClass(), post);
    }

    /** Between steel plates of 200 mm. */
    private static Finding judge(TimberPost post, double height, double load) {
        return TimberPostJudge.judge(type(post, Props.PLATE), post, height * INCH, load * POUND, 1);
    }

    private static double capacity(TimberPost post, double height) {
        return judged(judge(post, height, 1)).capacity() / POUND;
    }

    /** Fc* 1345.5 psi, FcE 513.54 psi, CP 0.34525. */
    @Test
    void aSquarePostPassesAndFails() {
        TimberPost post = new TimberPost(square(), 0, false, NOTHING);
        assertThat(capacity(post, 96)).isCloseTo(5690.5724, within(0.01));
        assertThat(judged(judge(post, 96, 6000)).demand()).isCloseTo(6000 * POUND, within(1e-6));
    }

    /** Wet: CM 0.8 for Fc as 1300·1.15 psi is above 750 psi, 0.9 for E; incised: 0.8 and 0.95. */
    @Test
    void wetAndIncisedBearsLess() {
        TimberPost wet = new TimberPost(member(3.5, 3.5, 1, Moisture.WET, Treated.NOT_INCISED), 0, false, NOTHING);
        TimberPost incised = new TimberPost(member(3.5, 3.5, 1, Moisture.WET, Treated.INCISED), 0, false, NOTHING);

        assertThat(capacity(wet, 96)).isCloseTo(5038.4663, within(0.01));
        assertThat(capacity(incised, 96)).isCloseTo(4646.8237, within(0.01));
    }

    /** Half an inch off the middle; on edge 3623 lb, flat 3629 lb, halfway between them less. */
    @Test
    void aLoadOffTheMiddle() {
        assertThat(capacity(new TimberPost(square(), 0.5 * INCH, false, NOTHING), 96))
                .isCloseTo(3284.0421, within(0.01));
    }

    /** At 12 in the steel plates let the column's own value rule; without them three quarters of Fc* on the end grain. */
    @Test
    void endGrain() {
        TimberPost post = new TimberPost(square(), 0, false, NOTHING);
        Plate bare = new Plate(3.5 * INCH, 3.5 * INCH);
        Plate small = new Plate(3.5 * INCH, 1.75 * INCH, 0.01, 250e6, new PostType.NoShank());

        assertThat(capacity(post, 12)).isCloseTo(16344.0601, within(0.01));
        assertThat(judged(TimberPostJudge.judge(type(post, bare), post, 12 * INCH, 1, 1))
                                .capacity()
                        / POUND)
                .isCloseTo(0.75 * 1345.5 * 12.25, within(0.01));
        assertThat(judged(TimberPostJudge.judge(type(post, small), post, 12 * INCH, 1, 1))
                                .capacity()
                        / POUND)
                .isCloseTo(1345.5 * 12.25 / 2, within(0.01));
    }

    /** Three boards, 8 ft: le/d over the thickness 21.3 with Kf, over the depth 17.5 without. */
    @Test
    void boardsJoinedActAsOneWithTheFactorOfTheirFastening() {
        assertThat(capacity(new TimberPost(boards(), 0, false, NAILS), 96)).isCloseTo(10241.2960, within(0.01));
        assertThat(capacity(new TimberPost(boards(), 0, false, BOLTS), 96)).isCloseTo(12801.6200, within(0.01));
    }

    /** Of 1 1/2 in each: 6 ft is le/d 48, 8 ft 64. */
    @Test
    void boardsNotJoinedAreColumnsOfTheirOwn() {
        TimberPost.Joined poor = new TimberPost.Fasteners(
                false, 0.192 * INCH, 4 * INCH, 3 * INCH, 5 * INCH, 2, 2.25 * INCH, 1.5 * INCH, true);

        assertThat(capacity(new TimberPost(boards(), 0, false, NOTHING), 72)).isCloseTo(4033.1948, within(0.01));
        assertThat(capacity(new TimberPost(boards(), 0, false, poor), 72)).isCloseTo(4033.1948, within(0.01));
        assertThat(refusal(judge(new TimberPost(boards(), 0, false, NOTHING), 96, 1)))
                .contains("64.0 is above 50");
        assertThat(capacity(new TimberPost(boards(), 0, true, NOTHING), 96)).isLessThan(4033.1948);
    }

    @ParameterizedTest
    @CsvSource({"176, false, above 50", "263, true, above 75"})
    void tooSlenderIsRefused(double height, boolean construction, String reason) {
        assertThat(refusal(judge(new TimberPost(square(), 0, construction, NOTHING), height, 1)))
                .contains(reason);
        assertThat(capacity(new TimberPost(square(), 0, construction, NOTHING), height - 1.1))
                .isPositive();
    }

    @Test
    void whatIsNotStatedIsNotChecked() {
        assertThat(reason(judge(
                        new TimberPost(member(3.5, 3.5, 1, Moisture.UNSTATED, Treated.UNTREATED), 0, false, NOTHING),
                        96,
                        1)))
                .contains("moisture");
        assertThat(reason(judge(
                        new TimberPost(member(3.5, 3.5, 1, Moisture.DRY, Treated.UNSTATED), 0, false, NOTHING), 96, 1)))
                .contains("treated");
        assertThat(reason(judge(
                        new TimberPost(member(3.5, 3.5, 1, Moisture.DRY, Treated.FIRE_RETARDANT), 0, false, NOTHING),
                        96,
                        1)))
                .contains("treater");
        assertThat(reason(judge(new TimberPost(boards(), 0.01, false, NAILS), 96, 1)))
                .contains("built-up");
        assertThat(reason(judge(
                        new TimberPost(member(5.5, 3.5, 1, Moisture.DRY, Treated.UNTREATED), 0, false, NOTHING),
                        96,
                        1)))
                .contains("lesser size");
        assertThat(reason(judge(
                        new TimberPost(member(5.5, 5.5, 1, Moisture.DRY, Treated.UNTREATED), 0, false, NOTHING),
                        96,
                        1)))
                .contains("no compression value");
    }

    /** 1 in off the middle over 7 ft: 7280 lb, 4951 and 5001 lb at 0, 45 and 90 degrees, and least at 66 degrees. */
    @Test
    void theWorstDirectionLiesBetween() {
        Member oblong = member(3.5, 5.5, 1, Moisture.DRY, Treated.UNTREATED);

        assertThat(capacity(new TimberPost(oblong, INCH, false, NOTHING), 84)).isCloseTo(4791.6345, within(0.001));
    }

    private static JobPlan under(Member beam, Plate plate, double load) {
        TimberPost timber = new TimberPost(member(3.5, 5.5, 1, Moisture.DRY, Treated.UNTREATED), 0, false, NOTHING);
        JobPlan bare =
                Simple.beam(beam, 2, 0.2, 0.2, List.of(Simple.point(0, load * POUND), Simple.point(2, load * POUND)));
        Shore shore = bare.shores().get(0);
        List<Post> posts = shore.posts().stream()
                .map(p -> new Post(p.name(), p.x(), 1, p.stiffness(), 0, 0, type(timber, plate), p.footing()))
                .toList();
        Shore on = new Shore("A", 0, beam, shore.start(), shore.length(), List.of(), posts);
        return Simple.plan(bare.floor(), List.of(on), bare.ground());
    }

    /** Fc* 1287 psi. A beam of 3 in on a post 5.5 in deep presses 3.5 by 3 in: 10135 lb, and 13513 lb under steel. */
    @Test
    void atTheHeadOnlyTheBreadthOfTheBeamPresses() {
        Plate bare = new Plate(3.5 * INCH, 5.5 * INCH);
        Plate steel = new Plate(3.5 * INCH, 5.5 * INCH, 0.003, 250e6, new PostType.Square(3.5 * INCH));
        CheckResult overloaded = Simple.check(under(Plans.twoByTen(2, 0), bare, 12_000), CheckId.POST_RATING, "P1");
        CheckResult plated = Simple.check(under(Plans.twoByTen(2, 0), steel, 12_000), CheckId.POST_RATING, "P1");

        assertThat(judged(overloaded.finding()).capacity() / POUND).isCloseTo(0.75 * 1287 * 10.5, within(0.01));
        assertThat(overloaded.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(judged(plated.finding()).capacity() / POUND).isCloseTo(1287 * 10.5, within(0.01));
        assertThat(judged(Simple.check(under(Plans.twoByTen(4, 0), bare, 12_000), CheckId.POST_RATING, "P1")
                                        .finding())
                                .capacity()
                        / POUND)
                .isCloseTo(0.75 * 1287 * 3.5 * 5.5, within(0.01));
    }
}
