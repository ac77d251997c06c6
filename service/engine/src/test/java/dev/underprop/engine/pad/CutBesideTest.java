package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.pad;
import static dev.underprop.engine.pad.Under.post;
import static dev.underprop.engine.pad.Under.reason;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Excavation.Cut;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A pad of 0.6 m by 0.4 m under a post at x = 1 m on a shore at y = 2 m: from 0.7 to 1.3 m, and from 1.8 to 2.2 m. */
class CutBesideTest {

    private static final double FAR = Double.POSITIVE_INFINITY;
    private static final Pad PAD = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.HEAVY, new Pad.Within(0));

    private static Finding judge(Excavation excavation, Post.Footing pad) {
        return CutBeside.judge(excavation, post(1, new Post.NoType(), pad), 2, Under.FIRM);
    }

    private static CheckResult.Condition near(Cut... cuts) {
        return (CheckResult.Condition) judge(new Excavation.Cuts(List.of(cuts)), PAD);
    }

    /** 1 m deep wants 1.7321 m: to the right from 3.0321 m on, to the left up to -1.0321 m. */
    @ParameterizedTest
    @CsvSource({
        "3.0321, 4, -9, 9, 1, true",
        "3.0319, 4, -9, 9, 1, false",
        "-4, -1.0321, -9, 9, 1, true",
        "-4, -1.0319, -9, 9, 1, false",
        "-9, 9, 3.9321, 4, 1, true",
        "-9, 9, 3.9319, 4, 1, false",
        "-9, 9, -4, 0.0679, 1, true",
        "-9, 9, -4, 0.0681, 1, false",
        "1.4, 2, -9, 9, 0.0577, true",
        "1.4, 2, -9, 9, 0.0578, false"
    })
    void aCutBesideThePad(double fromX, double toX, double fromY, double toY, double depth, boolean met) {
        assertThat(near(new Cut("pit", fromX, toX, fromY, toY, depth)).met()).isEqualTo(met);
    }

    /** 1.2 m in x and 1.6 m in y from the corner are 2 m: enough for 1.1547 m. */
    @ParameterizedTest
    @CsvSource({"1.1546, true", "1.1548, false"})
    void aCutBeyondTheCorner(double depth, boolean met) {
        assertThat(near(new Cut("pit", 2.5, 3, 3.8, 5, depth)).met()).isEqualTo(met);
    }

    @Test
    void theNearestOfSeveralCutsCounts() {
        Cut far = new Cut("far", 8, 9, -FAR, FAR, 1);
        Cut under = new Cut("drain", 1.2, 9, -FAR, FAR, 0.1);

        assertThat(near(far).met()).isTrue();
        assertThat(near(far, under).met()).isFalse();
        assertThat(near(far, under).reason()).contains("reaches the cut drain");
        assertThat(near(new Cut("pit", 1.8, 9, -FAR, FAR, 1)).reason()).contains("0.50 m (1.6 ft)", "1.73 m");
    }

    @Test
    void thePadMayStandNearerByItsCentring() {
        Pad loose = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.HEAVY, new Pad.Within(0.05));
        Excavation pit = new Excavation.Cuts(List.of(new Cut("pit", 3.05, 9, -FAR, FAR, 1)));

        assertThat(((CheckResult.Condition) judge(pit, PAD)).met()).isTrue();
        assertThat(((CheckResult.Condition) judge(pit, loose)).met()).isFalse();
    }

    @Test
    void unstatedCentringFailsButDoesNotPass() {
        Pad anywhere = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.HEAVY, new Pad.Anywhere());
        Excavation far = new Excavation.Cuts(List.of(new Cut("pit", 8, 9, -FAR, FAR, 1)));
        Excavation near = new Excavation.Cuts(List.of(new Cut("pit", 3, 9, -FAR, FAR, 1)));

        assertThat(reason(judge(far, anywhere))).contains("(declare: centring)");
        assertThat(((CheckResult.Condition) judge(near, anywhere)).met()).isFalse();
        assertThat(((CheckResult.Condition) judge(new Excavation.None(), anywhere)).met())
                .isTrue();
    }

    @Test
    void noneIsAFactAndNothingSaidIsNot() {
        assertThat(((CheckResult.Condition) judge(new Excavation.None(), PAD)).met())
                .isTrue();
        assertThat(reason(judge(new Excavation.Unstated(), PAD))).contains("not stated");
        assertThat(reason(judge(new Excavation.Cuts(List.of(new Cut("pit", 8, 9, 8, 9, 1))), new Post.NoPad())))
                .contains("no pad");
    }

    /**
     * Sand of 30 degrees is pushed up as far as 0.4 m x tan 60° x exp(0.9069) = 1.716 m from the pad; a cut 0.5 m deep wants 0.866 m.
     * The right edge of the pad lies at 1.3 m.
     */
    @ParameterizedTest
    @CsvSource({"3.015, false", "3.017, true"})
    void groundThatBearsByItsStrengthIsCountedOnBesideThePad(double from, boolean passes) {
        Excavation cut = new Excavation.Cuts(List.of(new Cut("pit", from, 9, -FAR, FAR, 0.5)));
        Finding finding = CutBeside.judge(cut, post(1, new Post.NoType(), PAD), 2, GroundStrengthTest.sand(1));

        assertThat(finding instanceof CheckResult.Condition met && met.met()).isEqualTo(passes);
        if (!passes) {
            assertThat(Under.reason(finding))
                    .contains("beside a cut is not worked out")
                    .contains("1.72 m");
        }
    }
}
