package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Plans.PSI;
import static dev.underprop.engine.assess.Props.PLATE;
import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.pad;
import static dev.underprop.engine.assess.Props.post;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.refusal;
import static dev.underprop.engine.assess.Props.shore;
import static dev.underprop.engine.assess.Props.type;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.assess.SidewaysJudge.Demand;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.LagScrews;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.plan.Shore;
import org.junit.jupiter.api.Test;

/** Two lag screws of 3/8 in, 3 in deep, through a head plate of 7 in by 5 in by 0.12 in into a beam of Hem-Fir. */
class LagCapacityTest {

    private static final Plate HEAD = new Plate(7 * INCH, 5 * INCH, 0.12 * INCH, 36_000 * PSI, Props.ROUND);
    private static final LagScrews TWO = screws(2, 0.375, 3, 1.5, 12, 3);

    private static LagScrews screws(int count, double diameter, double deep, double edge, double end, double apart) {
        return new LagScrews(count, diameter * INCH, deep * INCH, edge * INCH, end * INCH, apart * INCH);
    }

    private static Finding judge(double breadth, Member.Moisture moisture, Plate plate, LagScrews screws) {
        Member beam = shore(breadth * INCH, moisture).beam();
        return new LagCapacity(beam, plate, screws).judge(500);
    }

    private static Finding judge(LagScrews screws) {
        return judge(3.5, Member.Moisture.DRY, HEAD, screws);
    }

    private static double pounds(Finding finding) {
        return judged(finding).capacity() / POUND;
    }

    /** Across the grain: 2 x 126.303 lb x 0.9 x Cg of 0.997960, worked out apart from this code. */
    @Test
    void acrossTheGrainGoverns() {
        assertThat(pounds(judge(TWO))).isCloseTo(226.881, within(0.001));
        assertThat(judged(judge(TWO)).demand()).isEqualTo(500);
    }

    @Test
    void oneScrewIsNoGroup() {
        assertThat(pounds(judge(screws(1, 0.375, 3, 1.5, 12, Double.NaN)))).isCloseTo(0.9 * 126.3027, within(0.001));
    }

    @Test
    void wetWood() {
        assertThat(pounds(judge(3.5, Member.Moisture.WET, HEAD, TWO))).isCloseTo(0.7 * 226.881, within(0.001));
    }

    /** 1.8 in to the end: along 1.8/2.625 of 2 x 196.453 lb x 0.9 x 0.992862, still more than across. At 1.5 in it is less. */
    @Test
    void nearTheEndTheGrainMayGovernAlong() {
        assertThat(pounds(judge(screws(2, 0.375, 3, 1.5, 1.8, 3)))).isCloseTo(226.881, within(0.001));
        assertThat(pounds(judge(screws(2, 0.375, 3, 1.5, 1.5, 3)))).isCloseTo(351.0916 * 1.5 / 2.625, within(0.001));
    }

    @Test
    void whatTheStandardDoesNotAllowIsRefused() {
        assertThat(refusal(judge(screws(2, 0.375, 1.4, 1.5, 12, 3)))).contains("3.7 of their diameters");
        assertThat(refusal(judge(screws(2, 0.375, 3, 1.4, 12, 3)))).contains("an edge");
        assertThat(refusal(judge(screws(2, 0.375, 3, 1.5, 1.2, 3)))).contains("end of the timber");
        assertThat(refusal(judge(screws(2, 0.375, 3, 1.5, 12, 1.8)))).contains("each other");
        assertThat(refusal(judge(screws(2, 0.4, 3, 1.5, 12, 3)))).contains("no such diameter");
    }

    /** In a single board of 1 1/2 in no screw has four diameters to the edge. */
    @Test
    void aThinPlyHoldsNoScrewAcross() {
        assertThat(refusal(judge(1.5, Member.Moisture.DRY, HEAD, screws(2, 0.375, 3, 0.75, 12, 3))))
                .contains("an edge");
    }

    @Test
    void whatIsNotKnownOrDoesNotFitIsNotChecked() {
        Plate silent = new Plate(7 * INCH, 5 * INCH);

        assertThat(reason(judge(3.5, Member.Moisture.DRY, silent, TWO))).contains("thickness");
        assertThat(reason(judge(screws(2, 0.375, 3, 1.8, 12, 3)))).contains("do not fit");
        assertThat(reason(judge(screws(2, 0.375, 9.5, 1.5, 12, 3)))).contains("do not fit");
    }

    private static Finding sideways(Post.End head, Post.Type its) {
        Shore shore = shore(3.5 * INCH, Member.Moisture.DRY);
        Post.Ends ends = new Post.Ends(head, new Post.Fastened("anchors", 5000));
        Post post = post(its, pad(Pad.Kind.CONCRETE), ends);
        return SidewaysJudge.judge(shore, post, new Demand(20_000, 0, 0, 0.02));
    }

    @Test
    void aPostTakesTheLowerOfWhatIsStatedAndWhatIsWorkedOut() {
        Post.Type its = type(HEAD, PLATE);

        assertThat(pounds(sideways(new Post.Fastened("lags", Double.NaN, TWO), its)))
                .isCloseTo(226.881, within(0.001));
        assertThat(judged(sideways(new Post.Fastened("lags", 700, TWO), its)).capacity())
                .isEqualTo(700);
        assertThat(pounds(sideways(new Post.Fastened("lags", 3000, TWO), its))).isCloseTo(226.881, within(0.001));
        assertThat(reason(sideways(new Post.Fastened("lags", Double.NaN, TWO), new Post.NoType())))
                .contains("no post type");
    }

    @Test
    void atTheFootScrewsAreNotJudged() {
        Post.Ends ends = new Post.Ends(new Post.Fastened("bolts", 5000), new Post.Fastened("lags", Double.NaN, TWO));
        Post post = post(type(HEAD, PLATE), pad(Pad.Kind.TIMBER), ends);

        assertThat(reason(
                        SidewaysJudge.judge(shore(3.5 * INCH, Member.Moisture.DRY), post, new Demand(20_000, 0, 0, 0))))
                .contains("at the foot");
    }
}
