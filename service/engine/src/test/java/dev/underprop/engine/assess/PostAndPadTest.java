package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.pad.PadPressure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.standard.Citation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rating tables and pads. */
class PostAndPadTest {

    private static final Citation TABLE = Citation.read("test", "", "table");
    private static final Post.Stiffness RIGID = Post.Stiffness.exactly(Plans.RIGID);

    private static Post post(double height, Post.Type type, Post.Footing pad) {
        return new Post("P", 0, height, RIGID, 0, 0, type, pad);
    }

    private static PostType rated(double factor, boolean interpolate) {
        List<PostType.Row> rows =
                List.of(new PostType.Row(2, 60_000), new PostType.Row(3, 40_000), new PostType.Row(4, 10_000));
        PostType.Plate plate = new PostType.Plate(0.15, 0.15);
        return new PostType("rated", new PostType.Table("test", factor, interpolate, rows), plate, plate);
    }

    private static double capacity(Finding finding) {
        return ((CheckResult.Judged) finding).capacity();
    }

    /** Height, lift, factor, whether interpolation is asked for, capacity (N). */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 1, false, 60000",
        "1, 0, 1, true, 60000",
        "2, 0, 1, false, 60000",
        "2.001, 0, 1, false, 40000",
        "2.5, 0, 1, false, 40000",
        "2.5, 0, 1, true, 50000",
        "3.75, 0, 1, true, 17500",
        "4, 0, 1, false, 10000",
        "4, 0, 1, true, 10000",
        "2.5, 0, 2, false, 20000",
        "2.5, 0, 2.5, true, 20000",
        "1.9, 0.2, 1, false, 40000",
        "2.9, 0.2, 1, true, 37000"
    })
    void ratingTable(double height, double lift, double factor, boolean interpolate, double expected) {
        Finding finding = PostJudge.judge(post(height, rated(factor, interpolate), new Post.NoPad()), 1000, lift, 0, 1)
                .finding();

        assertThat(capacity(finding)).isCloseTo(expected, within(1e-6));
        assertThat(((CheckResult.Judged) finding).demand()).isEqualTo(1000);
    }

    @ParameterizedTest
    @CsvSource({"4.0001, 0, false", "4.0001, 0, true", "3.99, 0.02, false", "3.99, 0.02, true"})
    void aboveTheLastRowThereIsNoRating(double height, double lift, boolean interpolate) {
        assertThat(PostJudge.judge(post(height, rated(1, interpolate), new Post.NoPad()), 1, lift, 0, 1)
                        .finding())
                .isInstanceOf(CheckResult.Refused.class);
    }

    @Test
    void withoutATypeOrARatingNothingIsChecked() {
        PostType.Plate plate = new PostType.Plate(0.1, 0.1);
        PostType unrated = new PostType("unrated", new PostType.NotRated(), plate, plate);

        assertThat(PostJudge.judge(post(2, new Post.NoType(), new Post.NoPad()), 1, 0, 0, 1)
                        .finding())
                .isInstanceOf(CheckResult.NotChecked.class);
        assertThat(PostJudge.judge(post(2, unrated, new Post.NoPad()), 1, 0, 0, 1)
                        .finding())
                .isInstanceOf(CheckResult.NotChecked.class);
    }

    private static Pad pad(Pad.Weight weight) {
        return new Pad("pad", Pad.Kind.CONCRETE, 0.5, 0.4, 0.25, weight);
    }

    private static Finding on(Ground ground, Post.Footing pad) {
        return PadPressure.judge(
                post(2, new Post.NoType(), pad),
                ground,
                new PadLoad(10_000, Double.NaN, 0.025, new PadLoad.Foot(0, true)),
                Working.OFF);
    }

    private static Ground presumptive(Ground.Condition condition, double depth) {
        return new Ground.Presumptive("sand", 95_000, TABLE, condition, depth);
    }

    /** 10 kN on 0.2 m² and 0.25 m of 24 kN/m³. */
    @Test
    void pressureContainsTheOwnWeight() {
        Finding finding = on(presumptive(Ground.Condition.UNDISTURBED, 0.3048), pad(new Pad.Known(24_000, true)));

        assertThat(((CheckResult.Judged) finding).demand()).isCloseTo(50_000 + 6_000, within(1e-9));
        assertThat(capacity(finding)).isEqualTo(95_000);
        assertThat(capacity(on(
                        new Ground.Given(70_000, "report", Ground.Condition.UNDISTURBED),
                        pad(new Pad.Known(0, false)))))
                .isEqualTo(70_000);
    }

    @ParameterizedTest
    @CsvSource({"FILL", "ORGANIC"})
    void fillAndOrganicGroundAreRefused(Ground.Condition condition) {
        assertThat(on(presumptive(condition, 0.3048), pad(new Pad.Known(24_000, true))))
                .isInstanceOf(CheckResult.Refused.class);
    }

    @Test
    void whatIsNotStatedIsNotChecked() {
        Pad known = pad(new Pad.Known(24_000, true));
        assertThat(List.of(
                        on(presumptive(Ground.Condition.UNSTATED, 0.3048), known),
                        on(presumptive(Ground.Condition.UNDISTURBED, Double.NaN), known),
                        on(presumptive(Ground.Condition.UNDISTURBED, 0.3), known),
                        on(new Ground.Given(95_000, "report", Ground.Condition.FILL), known),
                        on(new Ground.Unstated(), known),
                        on(new Ground.Given(95_000, "report", Ground.Condition.UNDISTURBED), pad(new Pad.Unknown())),
                        on(new Ground.Given(95_000, "report", Ground.Condition.UNDISTURBED), new Post.NoPad())))
                .allMatch(f -> f instanceof CheckResult.NotChecked);
    }

    /** A value may have been given for other ground, or for this ground as it once was: the plan must say how it is found. */
    @ParameterizedTest
    @CsvSource({"UNSTATED, not stated", "UNKNOWN, unknown"})
    void aValueGivenForGroundOfNoStatedConditionIsNotShownToHold(Ground.Condition condition, String words) {
        Finding finding = on(new Ground.Given(95_000, "report", condition), pad(new Pad.Known(24_000, true)));

        assertThat(finding)
                .isInstanceOfSatisfying(
                        CheckResult.NotChecked.class,
                        open -> assertThat(open.reason())
                                .contains("the condition of the ground is " + words, "(declare: condition)"));
    }

    @Test
    void peatCarriesNoPadWhateverValueIsGiven() {
        assertThat(on(new Ground.Given(95_000, "guess", Ground.Condition.ORGANIC), pad(new Pad.Known(24_000, true))))
                .isInstanceOf(CheckResult.Refused.class);
    }

    /** A table that rises with height is read at its least value up to there. */
    @Test
    void aRatingNeverGrowsWithHeight() {
        PostType.Table rising =
                new PostType.Table("test", 1, false, List.of(new PostType.Row(2, 1_000), new PostType.Row(3, 40_000)));
        PostType type = new PostType("odd", rising, new PostType.Plate(0.1, 0.1), new PostType.Plate(0.1, 0.1));

        Finding finding =
                PostJudge.judge(post(2.5, type, new Post.NoPad()), 900, 0, 0, 1).finding();

        assertThat(((CheckResult.Judged) finding).capacity()).isEqualTo(1_000);
    }
}
