package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Props.PLATE;
import static dev.underprop.engine.assess.Props.ROUND;
import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.pad;
import static dev.underprop.engine.assess.Props.post;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.shore;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.section.RectangularSection;
import org.junit.jupiter.api.Test;

/** Plates in bending under 20 kN. Allowed are 250/1.67 MPa. */
class PlateJudgeTest {

    private static final double ALLOWED = 250e6 / 1.67;
    private static final Shore BEAM = shore(0.1, Member.Moisture.DRY);
    private static final Pad PAD = pad(Pad.Kind.CONCRETE);

    private static Finding judge(Plate head, Plate base) {
        return PlateJudge.judge(BEAM, post(head, base, PAD), 20_000);
    }

    /** Head: 1 MPa on 0.2 m by 0.1 m, 80 mm out along: 3200 N over 25 mm². Base: half of it. */
    @Test
    void theHeadTakesTheLoadOverTheBeamAlone() {
        assertThat(judged(judge(PLATE, PLATE)).demand()).isCloseTo(128e6, within(1.0));
        assertThat(judged(judge(PLATE, PLATE)).capacity()).isCloseTo(ALLOWED, within(1.0));
    }

    /** Base of 5 mm: 0.5 MPa, 80 mm out: 1600 N over 6.25 mm². */
    @Test
    void aThinBaseFails() {
        Finding finding = judge(PLATE, new Plate(0.2, 0.2, 0.005, 250e6, ROUND));

        assertThat(judged(finding).demand()).isCloseTo(256e6, within(1.0));
        assertThat(judged(finding).capacity()).isCloseTo(ALLOWED, within(1.0));
    }

    /** A square tube of 100 mm: 52.5 mm out; head 1 MPa x 0.0525² / 2 over 25 mm². */
    @Test
    void aSquareTube() {
        Plate plate = new Plate(0.2, 0.2, 0.01, 250e6, new PostType.Square(0.1));

        assertThat(judged(judge(plate, plate)).demand()).isCloseTo(55.125e6, within(1.0));
    }

    /** A plate long across the beam bends along the beam only: nothing presses beyond the beam. */
    @Test
    void onlyWhatIsPressedBends() {
        Plate wide = new Plate(0.04, 0.5, 0.01, 250e6, ROUND);
        Plate stout = new Plate(0.2, 0.2, 0.1, 250e6, ROUND);

        // 5 MPa on 0.04 m by 0.1 m; 30 mm out across: 2250 N over 25 mm².
        assertThat(judged(judge(wide, stout)).demand()).isCloseTo(90e6, within(1.0));
    }

    @Test
    void whatIsNotStatedIsNotChecked() {
        Plate thickness = new Plate(0.2, 0.2, Double.NaN, 250e6, ROUND);
        Plate yield = new Plate(0.2, 0.2, 0.01, Double.NaN, ROUND);
        Plate shank = new Plate(0.2, 0.2, 0.01, 250e6, new PostType.NoShank());

        assertThat(reason(judge(thickness, PLATE))).contains("thickness of the head plate");
        assertThat(reason(judge(PLATE, thickness))).contains("thickness of the base plate");
        assertThat(reason(judge(yield, PLATE))).contains("yield stress of the head plate");
        assertThat(reason(judge(PLATE, shank))).contains("meets the base plate");
        assertThat(reason(PlateJudge.judge(BEAM, post(PLATE, PLATE, new Post.NoPad()), 1)))
                .contains("no pad");
        assertThat(reason(PlateJudge.judge(BEAM, post(new Post.NoType(), PAD, Post.Ends.UNDECLARED), 1)))
                .contains("no post type");
    }

    @Test
    void anUnevenPressureIsNotJudged() {
        Plate narrow = new Plate(0.2, 0.09, 0.01, 250e6, ROUND);
        Plate large = new Plate(0.6, 0.2, 0.01, 250e6, ROUND);
        Shore ends = shore(BEAM.beam(), -0.05);

        assertThat(reason(judge(narrow, PLATE))).contains("narrower than the beam");
        assertThat(reason(judge(PLATE, large))).contains("beyond its pad");
        assertThat(reason(PlateJudge.judge(ends, post(PLATE, PLATE, PAD), 1))).contains("beam's end");
    }

    /** Something that fails is told before something that is not known. */
    @Test
    void aFailureIsNotHiddenByWhatIsNotKnown() {
        Plate thin = new Plate(0.2, 0.2, 0.005, 250e6, ROUND);

        assertThat(judged(judge(new Plate(0.2, 0.2), thin)).demand()).isCloseTo(256e6, within(1.0));
    }

    private static Finding timber(Plate head, Plate base) {
        Member stick = new Member(
                "stick", new RectangularSection(0.1, 0.1), 1, Plans.HEM_FIR_2, false, Member.Moisture.DRY, 0);
        PostType type = new PostType(
                "timber",
                new PostType.NotRated(),
                head,
                base,
                new PostType.NoTube(),
                new PostType.NoClass(),
                new TimberPost(stick, 0, false, new TimberPost.Unjoined()));
        return PlateJudge.judge(BEAM, post(type, PAD, Post.Ends.UNDECLARED), 20_000);
    }

    /** A plate that reaches beyond the timber is judged as any, 52.5 mm out at the head and half of that pressure below. */
    @Test
    void aPostOfTimberThatFillsItsPlatesBendsNone() {
        Plate bare = new Plate(0.1, 0.1);
        Plate steel = new Plate(0.2, 0.2, 0.01, 250e6, new PostType.Square(0.1));

        assertThat(timber(bare, bare)).isInstanceOf(CheckResult.NotApplicable.class);
        assertThat(judged(timber(steel, bare)).demand()).isCloseTo(55.125e6, within(1.0));
        assertThat(judged(timber(bare, steel)).demand()).isCloseTo(27.5625e6, within(1.0));
        assertThat(reason(timber(bare, new Plate(0.2, 0.2)))).contains("base plate");
        assertThat(reason(timber(new Plate(0.1, 0.2), bare))).contains("head plate");
    }
}
