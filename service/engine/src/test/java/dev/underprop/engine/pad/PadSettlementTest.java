package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.judged;
import static dev.underprop.engine.pad.Under.pad;
import static dev.underprop.engine.pad.Under.post;
import static dev.underprop.engine.pad.Under.reason;
import static dev.underprop.engine.pad.Under.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.pad.PadSettlement.Loaded;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pads of 0.24 m² on ground of 10 to 40 MN/m³: 2.4 to 9.6 MN/m. Limits 10 mm and 1/500. */
class PadSettlementTest {

    private static final Pad PAD = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.HEAVY, new Pad.Anywhere());
    private static final Limits.Settlement LIMIT = new Limits.Settles(0.010, 0.002, "test");

    private static Loaded at(double x, double least, double greatest) {
        return new Loaded(post(x, new Post.NoType(), PAD), 0, least, greatest);
    }

    private static Finding judge(Loaded here, List<Loaded> shore, Ground ground, Limits.Settlement limit) {
        return PadSettlement.judge(here, shore, List.of(), ground, limit, Working.OFF);
    }

    @ParameterizedTest
    @CsvSource({"12000, 0.005", "36000, 0.015"})
    void aPadAloneAgainstTheTotal(double load, double settlement) {
        Finding finding = judge(at(0, 0, load), List.of(), Under.FIRM, LIMIT);

        assertThat(judged(finding).demand()).isCloseTo(settlement, within(1e-9));
        assertThat(judged(finding).capacity()).isEqualTo(0.010);
    }

    /**
     * 12 kN on soft ground are 5 mm, 4.8 kN on stiff ground 0.5 mm. 20 kN at 2 m sink elastic ground by 0.16009 x 20 kN, and the
     * pad's own spring there is 0.58017 (0.1 x (3.1 x 1.5^0.75 + 1.6)), on 2.4 MN/m: 0.7740 mm more. 5.2740 mm over 2 m, of which
     * 4 mm are allowed. At 8 m it adds 0.1924 mm.
     */
    @Test
    void twoPadsAgainstTheSlope() {
        Loaded here = at(1, 4_800, 12_000);
        Finding near = judge(here, List.of(at(3, 4_800, 20_000)), Under.FIRM, LIMIT);
        Finding far = judge(here, List.of(at(9, 4_800, 20_000)), Under.FIRM, LIMIT);

        assertThat(judged(near).demand()).isCloseTo(0.0045 + 0.0007740, within(1e-6));
        assertThat(judged(near).capacity()).isCloseTo(0.004, within(1e-12));
        assertThat(judged(far).demand()).isCloseTo(0.005 + 0.0001924, within(1e-6));
    }

    /** A load aside sinks the ground like a point, as P (1 - nu²)/(pi E r), and all of them add up, of other shores too. */
    @Test
    void allNeighboursAddUp() {
        Loaded here = at(0, 0, 12_000);
        double one = added(judge(here, List.of(at(6, 0, 30_000)), Under.FIRM, LIMIT));
        double beyond = added(PadSettlement.judge(
                here,
                List.of(),
                List.of(new Loaded(post(0, new Post.NoType(), PAD), 6, 0, 30_000)),
                Under.FIRM,
                LIMIT,
                Working.OFF));
        double both = added(judge(here, List.of(at(6, 0, 30_000), at(-6, 0, 30_000)), Under.FIRM, LIMIT));

        assertThat(one).isCloseTo(30_000 * 0.58017 / (Math.PI * 6) / 2.4e6, within(one * 2e-3));
        assertThat(beyond).isCloseTo(one, within(one * 2e-3));
        assertThat(both).isCloseTo(2 * one, within(1e-12));
    }

    private static double added(Finding finding) {
        return judged(finding).demand() - 0.005;
    }

    /** A limit that a pad alone keeps is broken by its neighbours: 9.5 mm of 10 mm, and 30 kN on either side at 1 m. */
    @Test
    void neighboursBreakALimit() {
        Loaded here = at(0, 0, 22_800);

        assertThat(Under.ratio(judge(here, List.of(), Under.FIRM, LIMIT))).isCloseTo(0.95, within(1e-9));
        assertThat(Under.ratio(judge(here, List.of(at(1, 30_000, 30_000), at(-1, 30_000, 30_000)), Under.FIRM, LIMIT)))
                .isGreaterThan(1);
    }

    @Test
    void theWorstNeighbourCounts() {
        List<Loaded> others = List.of(at(9, 0, 1), at(-1, 9_600, 9_600), at(4, 0, 1));
        Finding finding = judge(at(0, 0, 12_000), others, Under.FIRM, LIMIT);

        assertThat(judged(finding).demand()).isCloseTo(0.004 + 0.0007564, within(1e-6));
        assertThat(judged(finding).capacity()).isCloseTo(0.002, within(1e-12));
    }

    @Test
    void whatIsNotKnownIsNotChecked() {
        Loaded here = at(0, 0, 1000);
        Loaded bare = new Loaded(post(0, new Post.NoType(), new Post.NoPad()), 0, 0, 1000);
        Ground unknown = new Ground.Given(1e5, "report", Ground.Condition.UNDISTURBED);

        assertThat(reason(judge(here, List.of(), Under.FIRM, new Limits.NoSettlement())))
                .contains("may settle");
        assertThat(reason(judge(here, List.of(), unknown, LIMIT))).contains("subgrade");
        assertThat(reason(judge(here, List.of(), new Ground.Unstated(), LIMIT))).contains("ground");
        assertThat(reason(judge(bare, List.of(), Under.FIRM, LIMIT))).contains("no pad");
        assertThat(reason(judge(here, List.of(bare), Under.FIRM, LIMIT))).contains("no pad is named under post P");
        assertThat(reason(PadSettlement.judge(here, List.of(), List.of(bare), Under.FIRM, LIMIT, Working.OFF)))
                .contains("no pad is named under post P");
    }

    @Test
    void peatIsRefused() {
        Ground peat = new Ground.Given(1e5, "report", Ground.Condition.ORGANIC, new Ground.Modulus(1e7, 1e7, "test"));

        assertThat(refusal(judge(at(0, 0, 1), List.of(), peat, LIMIT))).contains("peat");
    }
}
