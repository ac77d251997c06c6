package dev.underprop.engine.load;

import static dev.underprop.engine.load.LoadPlans.ANY;
import static dev.underprop.engine.load.LoadPlans.dead;
import static dev.underprop.engine.load.LoadPlans.joist;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Loads on joists, worked by hand. */
class TakeDownTest {

    private static final Offset<Double> TIGHT = within(1e-9);
    private static final List<Joist> TWO = List.of(joist(0, 0, 3), joist(0.6, 0, 3));
    private static final Shore SHORE = LoadPlans.shore("A", 1.5, -0.2, 0.8, 0, 0.6);

    private static JobPlan on(List<Joist> joists, Load... loads) {
        return LoadPlans.plan(joists, List.of(), List.of(SHORE), List.of(loads));
    }

    private static Load.Area area(double fromX, double toX, double fromY, double toY) {
        return new Load.Area("area", dead(1000), fromX, toX, fromY, toY);
    }

    /** Where the middle joist is missing its neighbours draw from twice as far: 1000 and 1000 N/m, then 500, 1000, 500. */
    @Test
    void trimmedJoist() {
        JobPlan plan = on(List.of(joist(0, 0, 4), joist(1, 1, 4), joist(2, 0, 4)), area(-ANY, ANY, -ANY, ANY));

        assertThat(LoadPlans.deadOn(plan, 0)).isCloseTo(1000 * 1 + 500 * 3, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 1)).isCloseTo(1000 * 3, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 2)).isCloseTo(1000 * 1 + 500 * 3, TIGHT);
    }

    @Test
    void unevenSpacing() {
        JobPlan plan = on(List.of(joist(0, 0, 2), joist(0.4, 0, 2), joist(1, 0, 2)), area(-ANY, ANY, -ANY, ANY));

        assertThat(LoadPlans.deadOn(plan, 0)).isCloseTo(1000 * 0.2 * 2, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 1)).isCloseTo(1000 * 0.5 * 2, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 2)).isCloseTo(1000 * 0.3 * 2, TIGHT);
    }

    @Test
    void partitionBetweenTwoJoists() {
        JobPlan plan = on(TWO, new Load.Along("partition", dead(900), 0.15, 0.5, 2.5));

        assertThat(LoadPlans.deadOn(plan, 0)).isCloseTo(0.75 * 900 * 2, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 1)).isCloseTo(0.25 * 900 * 2, TIGHT);
    }

    @Test
    void wallPastTheEndJoist() {
        JobPlan plan = on(TWO, new Load.Across("wall", dead(500), 1, -0.1, 0.7));

        assertThat(LoadPlans.deadOn(plan, 0)).isCloseTo(500 * 0.4, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 1)).isCloseTo(500 * 0.4, TIGHT);
    }

    @Test
    void deckThatOverhangsBothEdgesByHalfAWall() {
        JobPlan plan = on(TWO, area(-0.1, 0.7, 1, 3));

        assertThat(LoadPlans.deadOn(plan, 0)).isCloseTo(1000 * 0.4 * 2, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 1)).isCloseTo(1000 * 0.4 * 2, TIGHT);
    }

    /** What lies further out bears on the outer joist by leverage; it is named, not moved. */
    @Test
    void whatOverhangsFurtherIsRefused() {
        assertThat(LoadModel.uncarried(on(TWO, area(-0.3, 0.8, 1, 3)))).hasSize(1);
        assertThat(LoadModel.uncarried(on(TWO, new Load.Point("beside", dead(1), -0.3, 1))))
                .hasSize(1);
    }

    /** A wall across a floor whose last joists stop short of it would hang in the air there. */
    @Test
    void wallBeforeJoistsThatStopShortIsRefused() {
        List<Joist> cut = List.of(joist(0, 0, 4), joist(0.6, 0, 4), joist(1.2, 0.2, 3.8));
        Load wall = new Load.Across("wall", dead(500), 0.05, -ANY, ANY);

        assertThat(LoadModel.uncarried(on(cut, wall))).containsExactly("wall");
    }

    /** A joist that alone runs on keeps its usual share of the floor out there: half-way to its neighbours. */
    @Test
    void aJoistThatRunsOnAloneKeepsItsWidth() {
        List<Joist> lone = List.of(joist(0, 0, 4), joist(0.6, 0, 5), joist(1.2, 0, 4));
        JobPlan plan = on(lone, area(-ANY, ANY, -ANY, ANY));

        assertThat(LoadPlans.deadOn(plan, 1)).isCloseTo(1000 * 0.6 * 5, TIGHT);
    }

    @Test
    void loadsOnTheShoreStayThere() {
        JobPlan plan = on(
                TWO,
                new Load.OnShore("line", dead(100), 0, -ANY, 0.3),
                new Load.PointOnShore("post above", dead(70), 0, 0.8));

        assertThat(LoadPlans.deadOn(plan, 2)).isCloseTo(100 * 0.5 + 70, TIGHT);
        assertThat(LoadPlans.deadOn(plan, 0) + LoadPlans.deadOn(plan, 1)).isZero();
    }

    @Test
    void whatNothingCarriesIsNamed() {
        JobPlan plan = on(
                TWO,
                new Load.Point("beside", dead(1), 1.7, 1),
                new Load.Point("on", dead(1), 0.3, 1),
                new Load.Point("beyond", dead(1), 0.3, 3.5),
                new Load.Along("too long", dead(1), 0.3, 0, 3.5),
                new Load.Across("too wide", dead(1), 1, 0, 2),
                new Load.Area("too far", dead(1), 0, 0.6, 2, 4),
                new Load.OnShore("past the beam", dead(1), 0, 0, 0.9),
                new Load.PointOnShore("off the beam", dead(1), 0, -0.3),
                new Load.OnShore("on the beam", dead(1), 0, 0, 0.8));

        assertThat(LoadModel.uncarried(plan))
                .containsExactly(
                        "beside", "beyond", "too long", "too wide", "too far", "past the beam", "off the beam");
    }

    /** Joists that end before others begin leave a strip with nothing in it. */
    @Test
    void loadOverAStripWithoutJoistsIsNotLostSilently() {
        List<Joist> apart = List.of(joist(0, 0, 2), joist(0.6, 0, 2), joist(0, 3, 5), joist(0.6, 3, 5));
        JobPlan plan = on(
                apart,
                area(0, 0.6, 1, 4),
                new Load.Along("line", dead(1), 0.3, 1, 4),
                new Load.Across("gap", dead(1), 2.5, 0, 0.6));

        assertThat(LoadModel.uncarried(plan)).containsExactly("area", "line", "gap");
    }
}
