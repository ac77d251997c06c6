package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.judged;
import static dev.underprop.engine.pad.Under.pad;
import static dev.underprop.engine.pad.Under.post;
import static dev.underprop.engine.pad.Under.ratio;
import static dev.underprop.engine.pad.Under.reason;
import static dev.underprop.engine.pad.Under.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Pad.Kind;
import dev.underprop.engine.plan.Pad.Stands;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Every make of pad, worked by hand. */
class PadStrengthTest {

    private static final Pad.Within MIDDLE = new Pad.Within(0);

    /** 20 MPa is 2900.755 psi; three times its root is 161.576 psi. */
    private static final double BENDING = 1.114029e6;

    private static Finding judge(Pad pad, double load, double factored, double lean) {
        return PadStrength.judge(post(pad), Under.FIRM, Under.central(load, factored, lean), Under.ALONE, Working.OFF);
    }

    private static Pad cast(double strength, Pad.Centring centring) {
        return pad(Kind.CONCRETE, new Pad.Cast(strength), Under.HEAVY, centring);
    }

    private static Pad thick(double thickness, Kind kind, Pad.Make make) {
        return new Pad("pad", kind, 0.6, 0.4, thickness, Under.HEAVY, make, MIDDLE);
    }

    /**
     * Load over 0.24 m² bends what stands out by 0.25 m beyond 0.1 m of loaded length: q 0.25²/2 over 0.1992²/6. 50 kN is
     * 0.98442 MPa. Off by 0.02 m and 0.025 of 0.25 m more, the worst corner has 1.473229 of it, and 0.27 m stand out.
     */
    @ParameterizedTest
    @CsvSource({"50000, 0, 0, 0.984421e6", "120000, 0, 0, 2.362612e6", "50000, 0.02, 0.025, 1.691604e6"})
    void plainConcreteBends(double factored, double centring, double lean, double stress) {
        Finding finding = judge(cast(20e6, new Pad.Within(centring)), 1, factored, lean);

        assertThat(judged(finding).demand()).isCloseTo(stress, within(2.0));
        assertThat(judged(finding).capacity()).isCloseTo(BENDING, within(2.0));
        assertThat(ratio(finding) <= 1).isEqualTo(stress < BENDING);
    }

    @Test
    void lightConcreteHasLess() {
        Pad light = pad(Kind.CONCRETE, new Pad.Cast(20e6), new Pad.Unknown(), MIDDLE);

        assertThat(judged(judge(light, 1, 1000, 0)).capacity()).isCloseTo(0.75 * BENDING, within(2.0));
    }

    /** 24 kN/m3 that the plan does not state are a weight to reckon with, and say nothing of the aggregate. */
    @Test
    void concreteOfUnstatedWeightCountsAsLight() {
        Pad unstated = pad(Kind.CONCRETE, new Pad.Cast(20e6), new Pad.Known(24_000, false), MIDDLE);

        assertThat(judged(judge(unstated, 1, 1000, 0)).capacity()).isCloseTo(0.75 * BENDING, within(2.0));
    }

    /** 0.2 m and 0.1 m of plate reach 0.1 m and 0.05 m from the post, the pad 0.11 m and 0.2 m from its middle. */
    @ParameterizedTest
    @CsvSource({"0.01, false", "0.0102, true"})
    void aPlateOffTheMiddleMayReachBeyondThePad(double centring, boolean beyond) {
        Pad narrow = new Pad(
                "narrow", Kind.CONCRETE, 0.22, 0.4, 0.25, Under.HEAVY, new Pad.Cast(20e6), new Pad.Within(centring));

        Finding finding = judge(narrow, 1, 1000, 0);

        assertThat(finding instanceof CheckResult.NotChecked open
                        && open.reason().contains("beyond its pad"))
                .isEqualTo(beyond);
    }

    /**
     * A tube that is judged with its load 5 mm off the middle brings it 5 mm further off: 0.02 m in all, as centring alone does
     * in {@link #plainConcreteBends} with 0.015 m of centring and no lean: 1 + 6 x 0.02 x root(1/0.6² + 1/0.4²). 0.265 m
     * stand out.
     */
    @Test
    void theLoadStandsOffTheMiddleOfThePostToo() {
        Post post = post(0, Under.tube(0.005), cast(20e6, new Pad.Within(0.015)));
        Finding finding = PadStrength.judge(
                post, Under.FIRM, new PadLoad(1, 50_000, 0, PadLoad.Foot.of(post.type())), Under.ALONE, Working.OFF);

        assertThat(judged(finding).demand()).isCloseTo(0.984421e6 * 1.360555 * 0.265 * 0.265 / 0.0625, within(5.0));
    }

    @Test
    void plainConcreteIsRefusedBeyondItsRule() {
        assertThat(refusal(judge(cast(15e6, MIDDLE), 1, 1000, 0))).contains("2500 psi");
        assertThat(refusal(judge(cast(80e6, MIDDLE), 1, 1000, 0))).contains("10000 psi");
        assertThat(refusal(judge(thick(0.2, Kind.CONCRETE, new Pad.Cast(20e6)), 1, 1000, 0)))
                .contains("thinner than 8 in");
        assertThat(refusal(judge(cast(20e6, new Pad.Within(0.06)), 1, 1000, 0))).contains("lifts");
        assertThat(ratio(judge(thick(0.2032, Kind.CONCRETE, new Pad.Cast(20e6)), 1, 1000, 0)))
                .isLessThan(1);
    }

    @Test
    void whatIsNotKnownOfACastPadIsNotChecked() {
        assertThat(reason(judge(cast(Double.NaN, MIDDLE), 1, 1000, 0))).contains("strength of the concrete");
        assertThat(reason(judge(cast(20e6, new Pad.Anywhere()), 1, 1000, 0))).contains("centring");
        assertThat(reason(judge(cast(20e6, MIDDLE), 1, Double.NaN, 0))).contains("strength combinations");
        assertThat(reason(PadStrength.judge(
                        post(0, new Post.NoType(), cast(20e6, MIDDLE)),
                        Under.FIRM,
                        Under.central(1, 1, 0),
                        Under.ALONE,
                        Working.OFF)))
                .contains("no post type");
        Pad small = new Pad("small", Kind.CONCRETE, 0.19, 0.4, 0.25, Under.HEAVY, new Pad.Cast(20e6), MIDDLE);
        assertThat(reason(judge(small, 1, 1000, 0))).contains("beyond its pad");
        assertThat(reason(PadStrength.judge(
                        post(new Post.NoPad()), Under.FIRM, Under.central(1, 1, 0), Under.ALONE, Working.OFF)))
                .contains("no pad");
    }

    @Test
    void aBlockHasItsRatingOrNothing() {
        Pad rated = pad(Kind.CONCRETE, new Pad.Rated(20_000, "test sheet", Double.NaN), Under.HEAVY, MIDDLE);
        Pad solid = pad(Kind.CONCRETE, new Pad.Block(false, 20e6), Under.HEAVY, MIDDLE);
        Pad hollow = pad(Kind.CONCRETE, new Pad.Block(true, 20e6), Under.HEAVY, MIDDLE);

        assertThat(ratio(judge(rated, 10_000, 90_000, 0))).isEqualTo(0.5);
        assertThat(ratio(judge(rated, 30_000, 30_000, 0))).isEqualTo(1.5);
        assertThat(reason(judge(solid, 1, 1, 0))).contains("no rating");
        assertThat(refusal(judge(hollow, 1, 1, 0))).contains("hollow block splits");
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void whatIsNotDescribedIsNotChecked(Kind kind) {
        assertThat(reason(judge(pad(kind, new Pad.Unmade(20e6), Under.HEAVY, MIDDLE), 1, 1, 0)))
                .contains("pad");
    }

    /** 24 kN over 0.24 m² on a strip of 20 mm: 100 kPa 0.25²/2 over 0.02²/4 is 31.25 MPa; 250 MPa over 1.67 are allowed. */
    @ParameterizedTest
    @CsvSource({"24000, 31.25e6", "240000, 312.5e6"})
    void aSteelPlateBends(double load, double stress) {
        Finding finding = judge(thick(0.02, Kind.STEEL, new Pad.Plate(250e6)), load, Double.NaN, 0);

        assertThat(judged(finding).demand()).isCloseTo(stress, within(1.0));
        assertThat(judged(finding).capacity()).isCloseTo(250e6 / 1.67, within(1.0));
    }

    /** Off by 0.01 m, 0.26 m stand out: 31.25 MPa x (0.26/0.25)² x (1 + 6 x 0.01 x root(1/0.6² + 1/0.4²)). */
    @Test
    void aSteelPlateStandsOutFurtherWhereThePostIsOffItsMiddle() {
        Pad off = new Pad("pad", Kind.STEEL, 0.6, 0.4, 0.02, Under.HEAVY, new Pad.Plate(250e6), new Pad.Within(0.01));

        assertThat(judged(judge(off, 24_000, Double.NaN, 0)).demand())
                .isCloseTo(31.25e6 * 1.0816 * 1.180278, within(100.0));
    }

    @Test
    void aSteelPlateFarOffTheMiddleIsRefused() {
        Pad off = pad(Kind.STEEL, new Pad.Plate(250e6), Under.HEAVY, new Pad.Within(0.06));

        assertThat(refusal(judge(off, 1000, 1000, 0))).contains("lifts");
    }

    /** Four crossings of 0.01 m², 0.3 m and 0.1 m apart. Off by 0.01 m the worst has 1 + 0.01/0.15 + 0.01/0.05. */
    @ParameterizedTest
    @CsvSource({"0, 1e6", "0.01, 1.266667e6"})
    void aCribIsPressedWhereItsTimbersCross(double centring, double stress) {
        Pad crib = pad(Kind.CRIB, new Pad.Stack(2, 0.1, 3e6, "guide", true), Under.HEAVY, new Pad.Within(centring));
        Finding finding = onPlate(crib, 0.43, 0.23, 40_000);

        assertThat(judged(finding).demand()).isCloseTo(stress, within(1.0));
        assertThat(judged(finding).capacity()).isEqualTo(3e6);
    }

    private static Finding onPlate(Pad pad, double along, double across, double load) {
        PostType.Plate plate = new PostType.Plate(along, across);
        PostType type = new PostType("type", new PostType.NotRated(), plate, plate);
        return PadStrength.judge(
                post(0, type, pad), Under.FIRM, Under.central(load, Double.NaN, 0), Under.ALONE, Working.OFF);
    }

    /**
     * The outer crossings end 0.2 m and 0.1 m from the middle. A plate of less lets the timbers carry its load there in bending;
     * so does one that is large enough but may stand off the middle. A crossing that fails still fails.
     */
    @Test
    void aCribWhoseTimbersBendIsNotChecked() {
        Pad.Stack stack = new Pad.Stack(2, 0.1, 3e6, "guide", true);
        Pad crib = pad(Kind.CRIB, stack, Under.HEAVY, MIDDLE);

        assertThat(ratio(onPlate(crib, 0.4, 0.2, 40_000))).isLessThan(1);
        assertThat(reason(onPlate(crib, 0.39, 0.2, 40_000))).contains("bend");
        assertThat(reason(onPlate(crib, 0.4, 0.19, 40_000))).contains("bend");
        assertThat(reason(onPlate(pad(Kind.CRIB, stack, Under.HEAVY, new Pad.Within(0.01)), 0.4, 0.2, 40_000)))
                .contains("bend");
        assertThat(ratio(onPlate(crib, 0.2, 0.1, 140_000))).isGreaterThan(1);
    }

    /**
     * 36 in square of two timbers of 5.5 in, 20 kip on a plate of 8 in: the outer crossings are 19.5 in apart, and 20 kip x
     * 19.5 in / 4 over two timbers of 27.73 in³ is 1758 psi. Under any plate the ground presses up between crossings 14 in clear
     * of one another, more than the 11 in over which a load spreads in the timber.
     */
    @Test
    void aWideCribOfTwoTimbersIsNotChecked() {
        double inch = 0.0254;
        Pad crib = new Pad(
                "crib",
                Kind.CRIB,
                36 * inch,
                36 * inch,
                22 * inch,
                Under.HEAVY,
                new Pad.Stack(2, 5.5 * inch, 2e6, "guide", true),
                MIDDLE);

        assertThat(reason(onPlate(crib, 8 * inch, 8 * inch, 88_964))).contains("bend");
        assertThat(reason(onPlate(crib, 36 * inch, 36 * inch, 88_964))).contains("bend");
    }

    /** Nine crossings, 0.15 m apart; off by 0.03 m each way: 1 + 2 x 0.03 x 3 x 0.15 / (2 x 0.15²). */
    @Test
    void aCribOfThreeTimbersALayer() {
        Pad crib = new Pad(
                "crib",
                Kind.CRIB,
                0.6,
                0.6,
                0.5,
                Under.HEAVY,
                new Pad.Stack(3, 0.1, 3e6, "guide", true),
                new Pad.Within(0.03));

        assertThat(judged(onPlate(crib, 0.47, 0.47, 90_000)).demand()).isCloseTo(1.6e6, within(1.0));
    }

    @Test
    void aCribKeepsItsRules() {
        Pad.Stack good = new Pad.Stack(2, 0.1, 3e6, "guide", true);
        Pad open = pad(Kind.CRIB, new Pad.Stack(2, 0.1, 3e6, "guide", false), Under.HEAVY, MIDDLE);
        Pad narrow = pad(Kind.CRIB, new Pad.Stack(2, 0.12, 3e6, "guide", true), Under.HEAVY, MIDDLE);
        Pad off = pad(Kind.CRIB, good, Under.HEAVY, new Pad.Within(0.04));

        assertThat(ratio(onPlate(thick(0.3, Kind.CRIB, good), 0.4, 0.2, 40_000)))
                .isLessThan(1);
        assertThat(refusal(judge(thick(0.31, Kind.CRIB, good), 1, 1, 0))).contains("too tall");
        assertThat(refusal(judge(narrow, 1, 1, 0))).contains("too narrow");
        assertThat(refusal(judge(off, 1, 1, 0))).contains("crossing lifts");
        assertThat(reason(judge(open, 1, 1, 0))).contains("solid");
    }

    /**
     * h is 0.1992 m, l 1.0928 m on the soft bound, the loaded circle 0.03989 m: 46.3275, 116.176 and 65.076 Pa a newton.
     */
    @ParameterizedTest
    @CsvSource({"INTERIOR, 46.3275", "EDGE, 116.176", "CORNER, 65.076"})
    void aSlabBendsOnItsGround(Stands stands, double unit) {
        Finding finding = judge(slab(20e6, "two cores", stands), 1, 20_000, 0.025);

        assertThat(judged(finding).demand()).isCloseTo(unit * 20_000, within(20.0));
        assertThat(judged(finding).capacity()).isCloseTo(BENDING, within(2.0));
        assertThat(ratio(finding) <= 1).isEqualTo(stands == Stands.INTERIOR);
    }

    /** Three times 1.0928 m. A slab that breaks under one post alone breaks under two. */
    @Test
    void postsNearOneAnotherOnASlabAreNotChecked() {
        Post post = post(slab(20e6, "two cores", Stands.INTERIOR));
        PadLoad load = Under.central(1, 20_000, 0);

        assertThat(ratio(PadStrength.judge(post, Under.FIRM, load, 3.279, Working.OFF)))
                .isLessThan(1);
        assertThat(reason(PadStrength.judge(post, Under.FIRM, load, 3.278, Working.OFF)))
                .contains("another post");
        assertThat(ratio(PadStrength.judge(post, Under.FIRM, Under.central(1, 40_000, 0), 1.2, Working.OFF)))
                .isGreaterThan(1);
    }

    private static Pad slab(double strength, String measured, Stands stands) {
        return pad(Kind.SLAB, new Pad.SlabPart(strength, measured, stands), Under.HEAVY, new Pad.Anywhere());
    }

    @Test
    void whatIsNotKnownOfASlabIsNotChecked() {
        assertThat(reason(judge(slab(20e6, "", Stands.INTERIOR), 1, 1, 0))).contains("thickness");
        assertThat(reason(judge(slab(Double.NaN, "core", Stands.INTERIOR), 1, 1, 0)))
                .contains("strength");
        assertThat(reason(judge(slab(20e6, "core", Stands.UNSTATED), 1, 1, 0))).contains("edge");
        assertThat(reason(judge(slab(20e6, "core", Stands.EDGE), 1, Double.NaN, 0)))
                .contains("strength combinations");
        assertThat(reason(PadStrength.judge(
                        post(slab(20e6, "core", Stands.EDGE)),
                        new Ground.Unstated(),
                        Under.central(1, 1, 0),
                        Under.ALONE,
                        Working.OFF)))
                .contains("gives is not known");
    }

    @Test
    void aSlabIsRefusedBeyondItsRule() {
        Pad.Make made = new Pad.SlabPart(20e6, "core", Stands.CORNER);
        Pad wide = new Pad("wide", Kind.SLAB, 3, 2, 0.25, Under.HEAVY, made);

        assertThat(refusal(judge(wide, 1, 1000, 0))).contains("spread");
        assertThat(refusal(judge(slab(15e6, "core", Stands.INTERIOR), 1, 1000, 0)))
                .contains("2500 psi");
        assertThat(refusal(judge(thick(0.05, Kind.SLAB, made), 1, 1000, 0))).contains("nothing counts");
    }

    @Test
    void theRuleIsThatOfTheMake() {
        assertThat(PadStrength.citation(post(cast(20e6, MIDDLE))).text()).contains("ACI 318-19");
        assertThat(PadStrength.citation(post(slab(20e6, "core", Stands.EDGE))).text())
                .contains("Westergaard");
        assertThat(PadStrength.factored(post(cast(20e6, MIDDLE)))).isTrue();
        assertThat(PadStrength.factored(post(thick(0.02, Kind.STEEL, new Pad.Plate(250e6)))))
                .isFalse();
    }
}
