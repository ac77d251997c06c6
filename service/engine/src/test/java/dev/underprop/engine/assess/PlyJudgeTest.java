package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plies.NAILED;
import static dev.underprop.engine.assess.Plies.nailed;
import static dev.underprop.engine.assess.Plies.nails;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Assembly;
import dev.underprop.engine.plan.Assembly.Joint;
import dev.underprop.engine.plan.Assembly.JointsAt;
import dev.underprop.engine.plan.Assembly.Nails;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.section.RectangularSection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Three plies of 2x10, 4.5 in broad, over one post at x = 0 with a head plate of 200 mm. */
class PlyJudgeTest {

    private static final Joist ACROSS = joist(-1, 2);

    private static Joist joist(double start, double length) {
        return new Joist("J", 0, start, length, Plans.twoByTen(1, 0));
    }

    private static Shore shore(int plies, Post.Type type) {
        Post post = Props.post(type, new Post.NoPad(), Post.Ends.UNDECLARED);
        return new Shore("A", 0, Plans.twoByTen(plies, 0), -1.5, 3, List.of(), List.of(post));
    }

    private static Shore shore(int plies) {
        return shore(plies, Props.type(Props.PLATE, Props.PLATE));
    }

    private static Finding judge(Assembly assembly) {
        return judge(shore(3), assembly, List.of());
    }

    private static Finding judge(Shore shore, Assembly assembly, List<Judged> asOne) {
        return PlyJudge.judge(Plies.with(shore, assembly), List.of(ACROSS), asOne);
    }

    private static CheckResult.Condition condition(Finding finding) {
        return (CheckResult.Condition) finding;
    }

    @Test
    void onePieceHasNoPlies() {
        assertThat(judge(shore(1), Assembly.UNDECLARED, List.of())).isInstanceOf(CheckResult.NotApplicable.class);
    }

    @Test
    void nailedByTheTableHolds() {
        assertThat(condition(judge(NAILED)).met()).isTrue();
        assertThat(condition(judge(nailed(new Nails(
                                0.192 * Plans.INCH, 4 * Plans.INCH, 2, 32 * Plans.INCH, true, false, true, 2))))
                        .met())
                .isTrue();
    }

    @Test
    void whatIsNotDeclaredIsNotChecked() {
        Nails nails = nails(0.131, 3, 24);

        assertThat(Props.reason(judge(Assembly.UNDECLARED))).contains("not declared");
        assertThat(Props.reason(judge(new Assembly(nails, new Assembly.JointsUndeclared()))))
                .contains("pieced");
        assertThat(Props.reason(judge(new Assembly(new Assembly.NoNailing(), new JointsAt(List.of())))))
                .contains("how the plies are fastened");
    }

    static Stream<Nails> amiss() {
        double d = 0.131 * Plans.INCH;
        double l = 3 * Plans.INCH;
        double s = 24 * Plans.INCH;
        return Stream.of(
                nails(0.12, 3, 24),
                nails(0.131, 2.5, 24),
                nails(0.131, 3, 25),
                nails(0.192, 4, 33),
                new Nails(d, l, 1, s, true, true, true, 3),
                new Nails(d, l, 2, s, false, true, true, 3),
                new Nails(d, l, 2, s, true, false, true, 3),
                new Nails(d, l, 2, s, true, true, false, 3),
                new Nails(d, l, 2, s, true, true, true, 2));
    }

    @ParameterizedTest
    @MethodSource("amiss")
    void nailedOtherwiseFails(Nails nails) {
        assertThat(condition(judge(nailed(nails))).met()).isFalse();
    }

    @Test
    void thePlainTableIsForTwoInchPlies() {
        Member thick = new Member(
                "beam", new RectangularSection(0.05, 0.25), 2, Plans.HEM_FIR_2, false, Member.Moisture.DRY, 0);

        assertThat(Props.reason(judge(Props.shore(thick, -1.5), NAILED, List.of())))
                .contains("nominal 2 in");
    }

    /** The beam reaches from -2.25 in to 2.25 in; a joist that ends over it bears on some plies only. */
    @Test
    void aJoistThatEndsOverTheBeamIsNotChecked() {
        Shore shore = Plies.with(shore(3), NAILED);

        assertThat(Props.reason(PlyJudge.judge(shore, List.of(ACROSS, joist(-1, 1.05)), List.of())))
                .contains("every ply");
        assertThat(condition(PlyJudge.judge(shore, List.of(joist(-1, 1 + 2.25 * Plans.INCH)), List.of()))
                        .met())
                .isTrue();
    }

    /** A plate of 200 mm and 1.5 in of bearing on either side leave 61.9 mm from the post's middle. */
    @Test
    void jointsStandOverPosts() {
        List<Judged> light = List.of(new Judged(Measure.STRESS, 1e6, 6e6));

        assertThat(Props.judged(judge(shore(3), nailed(nails(0.131, 3, 24), new Joint(1, 0.0615)), light))
                        .demand())
                .isCloseTo(1.5e6, within(1e-3));
        assertThat(condition(judge(shore(3), nailed(nails(0.131, 3, 24), new Joint(1, -0.0625)), light))
                        .met())
                .isFalse();
        assertThat(Props.reason(
                        judge(shore(3, new Post.NoType()), nailed(nails(0.131, 3, 24), new Joint(1, 0)), light)))
                .contains("no post type");
    }

    /** Of three plies two run through: half as much again on each, of every check; the worst counts. */
    @Test
    void thePliesThatRunThroughCarryAll() {
        List<Judged> asOne =
                List.of(new Judged(Measure.STRESS, 1e6, 6e6), new Judged(Measure.DEFLECTION, 0.008, 0.010));
        Judged one = Props.judged(judge(shore(3), nailed(nails(0.131, 3, 24), new Joint(2, 0)), asOne));
        Judged two = Props.judged(judge(
                shore(3), nailed(nails(0.131, 3, 24), new Joint(1, 0), new Joint(2, 0), new Joint(2, 0.01)), asOne));

        assertThat(one.demand()).isCloseTo(0.012, within(1e-12));
        assertThat(one.capacity()).isEqualTo(0.010);
        assertThat(two.demand()).isCloseTo(0.024, within(1e-12));
    }

    @Test
    void aBeamOfWhichNoPlyRunsThroughFails() {
        Joint[] all = {new Joint(1, 0), new Joint(2, 0.01), new Joint(3, -0.01)};

        assertThat(condition(judge(nailed(nails(0.131, 3, 24), all))).reason()).contains("no ply");
        assertThat(condition(judge(nailed(nails(0.131, 3, 24), all))).met()).isFalse();
        assertThat(condition(judge(shore(1), nailed(nails(0.131, 3, 24), new Joint(1, 0)), List.of()))
                        .met())
                .isFalse();
    }
}
