package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.BASE;
import static dev.underprop.engine.pad.Under.judged;
import static dev.underprop.engine.pad.Under.pad;
import static dev.underprop.engine.pad.Under.post;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How far off the middle of its foot the load of a post acts, by what its type says. */
class FootTest {

    private static final PostType.Rating TABLE =
            new PostType.Table("test", 1, false, List.of(new PostType.Row(3, 40_000)));

    private static PostType rated(double eccentricity) {
        return new PostType(
                "rated",
                TABLE,
                BASE,
                BASE,
                new PostType.NoTube(),
                new PostType.NoClass(),
                new PostType.NoShaft(),
                eccentricity);
    }

    private static PostType tube(double within, double eccentricity) {
        PostType plain = Under.tube(within);
        return new PostType(
                "tube", TABLE, BASE, BASE, plain.tube(), new PostType.NoClass(), new PostType.NoShaft(), eccentricity);
    }

    @Test
    void aPostOfWhichNothingIsSaidIsTakenAsATube() {
        for (Post.Type type : List.of(new Post.NoType(), new PostType("rated", TABLE, BASE, BASE))) {
            assertThat(PadLoad.Foot.of(type)).isEqualTo(new PadLoad.Foot(0.025, false));
        }
    }

    @Test
    void aTypeMayStateIt() {
        assertThat(PadLoad.Foot.of(rated(0.004))).isEqualTo(new PadLoad.Foot(0.004, true));
        assertThat(PadLoad.Foot.of(rated(0))).isEqualTo(new PadLoad.Foot(0, true));
    }

    /** What the tube is judged with is no less at its foot, whatever else is stated. */
    @Test
    void theGreaterOfWhatIsStatedCounts() {
        assertThat(PadLoad.Foot.of(Under.tube(0.01))).isEqualTo(new PadLoad.Foot(0.01, true));
        assertThat(PadLoad.Foot.of(tube(0.01, 0.03))).isEqualTo(new PadLoad.Foot(0.03, true));
        assertThat(PadLoad.Foot.of(tube(0.02, 0.005))).isEqualTo(new PadLoad.Foot(0.02, true));
    }

    /**
     * 12 kN on a pad of 1.44 kN, centred within 5 mm, leaning by 0.04: the load is 40 mm off at the underside, as with the 30 mm
     * of centring and 10 mm of lean of a load in the middle of its foot.
     */
    @Test
    void aRatingAlonePressesAsFarOffAsATube() {
        Pad pad = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.HEAVY, new Pad.Within(0.005));
        Limits.Plumb plumb = new Limits.Plumb(StrictMath.atan(0.04), true);
        PadLoad load = PadLoad.on(new PostType("rated", TABLE, BASE, BASE), 12_000, 12_000, plumb);
        Finding finding = PadEccentricity.judge(post(0, new Post.NoType(), pad), Under.FIRM, load, Working.OFF);

        assertThat(judged(finding).demand()).isCloseTo(92055.5, within(1.0));
    }
}
