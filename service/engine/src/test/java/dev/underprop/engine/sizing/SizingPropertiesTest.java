package dev.underprop.engine.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.sizing.PostSizing.State;
import dev.underprop.engine.soil.BearingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is at hand and whatever the load: what is proposed passes, and nothing smaller of its kind does. */
class SizingPropertiesTest {

    private static final int SEEDS = 300;

    private static PostSizing size(List<Candidate> stock, double load, double pressure, Objective objective) {
        PadChecks.Site site = Offers.site(Offers.ground(pressure));
        Task task = new Task(List.of(Offers.post("P", 0, load)), site, stock, objective);
        return PadSizer.size(task).posts().get(0);
    }

    private static Pad proposed(PostSizing sizing) {
        return sizing.proposals().get(0).trial().candidate().pad();
    }

    @ParameterizedTest
    @EnumSource(Objective.class)
    void aProposedPadPassesAndNoneOfItsKindThatIsNowhereLargerDoes(Objective objective) {
        TreeSet<String> kinds = new TreeSet<>();
        int found = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Offers offers = new Offers(seed);
            List<Candidate> stock = offers.stock(12);
            double load = offers.between(3_000, 60_000);
            double pressure = offers.between(60_000, 300_000);
            PostSizing sizing = size(stock, load, pressure, objective);
            if (sizing.proposals().isEmpty()) {
                continue;
            }
            found++;
            kinds.add(proposed(sizing).kind().name());
            Loaded post = Offers.post("P", 0, load);
            PadChecks judges = new PadChecks(Offers.site(Offers.ground(pressure)));
            Candidate chosen = sizing.proposals().get(0).trial().candidate();
            assertThat(judges.all(post.on(chosen.pad(), Double.POSITIVE_INFINITY), PadChecks.Around.NOBODY))
                    .as("seed " + seed)
                    .allMatch(c -> c.verdict() == Verdict.PASS);
            assertThat(sizing.state()).isEqualTo(State.ADEQUATE);
            for (Candidate other : stock) {
                boolean better = objective.bestFirst().compare(other, chosen) < 0;
                boolean smaller = other.within(chosen) && objective == Objective.AREA;
                if (better || smaller) {
                    Trial trial = Trial.of(other, post.on(other.pad(), Double.POSITIVE_INFINITY), judges);
                    assertThat(trial.outcome()).as("seed " + seed + " " + other).isNotEqualTo(Trial.Outcome.PASSES);
                }
            }
        }
        System.out.println(
                "pads proposed for " + found + " of " + SEEDS + " random posts by " + objective + ": " + kinds);
        assertThat(found).isGreaterThan(SEEDS / 2);
        assertThat(kinds).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void weakerGroundNeverGivesASmallerPad() {
        int compared = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Offers offers = new Offers(seed);
            List<Candidate> stock = offers.stock(12);
            double load = offers.between(3_000, 60_000);
            double area = 0;
            for (double pressure = 300_000; pressure > 20_000; pressure *= 0.8) {
                PostSizing sizing = size(stock, load, pressure, Objective.AREA);
                double now = sizing.proposals().isEmpty()
                        ? Double.POSITIVE_INFINITY
                        : proposed(sizing).area();
                assertThat(now).as("seed " + seed + " at " + pressure).isGreaterThanOrEqualTo(area);
                compared += area > 0 && now < Double.POSITIVE_INFINITY ? 1 : 0;
                area = now;
            }
        }
        assertThat(compared).isGreaterThan(SEEDS);
    }

    /** The same on ground of known strength, by every author that has pushes: weaker by friction, by cohesion and by water. */
    @ParameterizedTest
    @EnumSource(BearingMethod.class)
    void weakerStrengthNeverGivesASmallerPad(BearingMethod method) {
        int compared = 0;
        int found = 0;
        for (long seed = 1; seed <= SEEDS / 4; seed++) {
            Offers offers = new Offers(seed);
            List<Candidate> stock = offers.stock(12);
            double load = offers.between(3_000, 40_000);
            for (Ground.Shear[] row : weaker()) {
                double area = 0;
                for (Ground.Shear shear : row) {
                    PadChecks.Site site = Offers.site(Offers.strength(method, shear));
                    PostSizing sizing = PadSizer.size(
                                    new Task(List.of(Offers.post("P", 0, load)), site, stock, Objective.AREA))
                            .posts()
                            .get(0);
                    boolean none = sizing.proposals().isEmpty();
                    double now =
                            none ? Double.POSITIVE_INFINITY : proposed(sizing).area();
                    assertThat(now).as("seed " + seed + " on " + shear).isGreaterThanOrEqualTo(area);
                    compared += area > 0 && !none ? 1 : 0;
                    found += none ? 0 : 1;
                    area = now;
                    if (!none) {
                        PostSizing.Proposal first = sizing.proposals().get(0);
                        assertThat(first.checks()).allMatch(c -> c.verdict() == Verdict.PASS);
                    }
                }
            }
        }
        System.out.println("pads on ground of known strength by " + method + ": " + found + " found");
        assertThat(compared > SEEDS).isEqualTo(method.inclines());
    }

    private static Ground.Shear[][] weaker() {
        Ground.Shear[][] rows = new Ground.Shear[2][12];
        for (int i = 0; i < 12; i++) {
            rows[0][i] = new Ground.Drained(2_000.0 * (i < 6 ? 6 - i : 0), StrictMath.toRadians(45 - 2.5 * i));
            rows[1][i] = new Ground.Undrained(150_000 * StrictMath.pow(0.8, i));
        }
        return rows;
    }

    @Test
    void nothingOnTheFrontIsBetteredAndAllOfItPasses() {
        int longest = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Offers offers = new Offers(seed);
            PostSizing sizing = size(offers.stock(12), offers.between(3_000, 30_000), 150_000, Objective.COST);
            for (PostSizing.Proposal one : sizing.proposals()) {
                assertThat(one.checks()).noneMatch(c -> c.verdict() == Verdict.FAIL);
                for (PostSizing.Proposal other : sizing.proposals()) {
                    Candidate a = one.trial().candidate();
                    Candidate b = other.trial().candidate();
                    boolean bettered = a != b
                            && b.pad().area() <= a.pad().area()
                            && b.weight() <= a.weight()
                            && b.price() <= a.price();
                    assertThat(bettered).isFalse();
                }
            }
            longest = Math.max(longest, sizing.proposals().size());
        }
        assertThat(longest).isGreaterThan(2);
    }

    /** The load that a shortfall still allows passes; a hair more does not. */
    @Test
    void theLeastChangeIsOne() {
        int shown = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Offers offers = new Offers(seed);
            List<Candidate> stock = offers.stock(3);
            double load = offers.between(60_000, 200_000);
            PostSizing sizing = size(stock, load, 100_000, Objective.AREA);
            if (!sizing.shortfall().isEmpty()
                    && sizing.shortfall().get(0) instanceof PostSizing.Nearest nearest
                    && nearest.load() > 0) {
                shown++;
                List<Candidate> only = List.of(nearest.candidate());
                assertThat(size(only, nearest.load(), 100_000, Objective.AREA).proposals())
                        .isNotEmpty();
                assertThat(size(only, nearest.load() * 1.0001, 100_000, Objective.AREA)
                                .proposals())
                        .isEmpty();
            }
        }
        assertThat(shown).isGreaterThan(SEEDS / 2);
    }

    /** Posts in a row, ever closer: the pads chosen never lie over each other unless the answer says so. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 1, 0.7, 0.5, 0.3})
    void padsOfNeighboursDoNotOverlapUnsaid(double apart) {
        int overlaps = 0;
        for (long seed = 1; seed <= 50; seed++) {
            Offers offers = new Offers(seed);
            List<Candidate> stock = offers.stock(12);
            List<Loaded> posts = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                posts.add(Offers.post("P" + i, i * apart, offers.between(3_000, 20_000)));
            }
            Task task = new Task(posts, Offers.site(Offers.ground(150_000)), stock, Objective.AREA);
            List<PostSizing> sized = PadSizer.size(task).posts();
            for (int i = 1; i < sized.size(); i++) {
                if (overlap(sized.get(i - 1), sized.get(i), apart)) {
                    overlaps++;
                    assertThat(List.of(sized.get(i - 1).state(), sized.get(i).state()))
                            .as("seed %d, posts %d and %d", seed, i - 1, i)
                            .containsOnly(State.NONE);
                }
            }
            for (PostSizing post : sized) {
                for (PostSizing.Proposal first :
                        post.proposals().stream().limit(1).toList()) {
                    boolean fails = first.checks().stream().anyMatch(c -> c.verdict() == Verdict.FAIL);
                    assertThat(post.state() == State.NONE).isEqualTo(fails);
                }
            }
        }
        assertThat(overlaps > 0).as("overlaps met").isEqualTo(apart <= 0.5);
    }

    /** Whether the pads proposed under two posts of a shore lie over each other, by their sizes along it alone. */
    private static boolean overlap(PostSizing one, PostSizing other, double apart) {
        return !one.proposals().isEmpty()
                && !other.proposals().isEmpty()
                && apart < (along(one) + along(other)) / 2 - 1e-9;
    }

    private static double along(PostSizing post) {
        return post.proposals().get(0).trial().candidate().pad().along();
    }

    @Test
    void touchingPadsAreOfferedAsOne() {
        List<Candidate> stock = new Offers(1).stock(12);
        List<Loaded> posts = List.of(Offers.post("P", 0, 10_000), Offers.post("Q", 0.2, 30_000));
        PadSizing sizing = PadSizer.size(new Task(posts, Offers.site(Offers.ground(100_000)), stock, Objective.AREA));

        assertThat(sizing.state()).isEqualTo(State.NONE);
        Neighbours pair = sizing.neighbours().stream()
                .filter(n -> !n.combined().isEmpty())
                .findFirst()
                .orElseThrow();
        Neighbours.Combined one = pair.combined().get(0);
        assertThat(one.x()).isCloseTo(0.15, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(one.load()).isEqualTo(40_000);
        assertThat(one.along() * one.across() * 100_000).isGreaterThanOrEqualTo(one.load());
    }

    /** Differences of settlement between a heavy and a light post drive the heavy one's pad up in area. */
    @Test
    void padsGrowUntilTheySettleAlike() {
        List<Candidate> stock = new Offers(3).stock(30);
        List<Loaded> posts = List.of(Offers.post("P", 0, 30_000), Offers.post("Q", 1.5, 3_000));
        PadChecks.Site strict = new PadChecks.Site(
                Offers.ground(300_000),
                new dev.underprop.engine.plan.Excavation.None(),
                new dev.underprop.engine.plan.Limits.Settles(0.02, 0.0012, "agreed"));
        PadChecks.Site lax = Offers.site(Offers.ground(300_000));
        double free = area(new Task(posts, lax, stock, Objective.AREA));
        double held = area(new Task(posts, strict, stock, Objective.AREA));

        assertThat(held).isGreaterThan(free);
    }

    private static double area(Task task) {
        PostSizing post = PadSizer.size(task).posts().get(0);
        assertThat(post.proposals().get(0).checks())
                .extracting(CheckResult::verdict)
                .containsOnly(Verdict.PASS);
        return proposed(post).area();
    }
}
