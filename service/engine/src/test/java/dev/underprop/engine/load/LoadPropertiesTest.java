package dev.underprop.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.statics.UnitLoad;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What must hold on any floor, looked at on many irregular ones. */
class LoadPropertiesTest {

    private static final int FLOORS = 600;

    /** The floor with the loads that its members can carry. */
    private static JobPlan carried(long seed) {
        JobPlan plan = RandomFloors.of(seed);
        List<String> lost = LoadModel.uncarried(plan);
        List<Load> kept = plan.floor().loads().stream()
                .filter(l -> !lost.contains(l.name()))
                .toList();
        return with(plan, kept);
    }

    private static JobPlan with(JobPlan plan, List<Load> loads) {
        return LoadPlans.plan(plan.floor().joists(), plan.floor().bearings(), plan.shores(), loads);
    }

    private static double sum(JobPlan plan, ToDoubleFunction<Intensity> kind) {
        return plan.floor().loads().stream()
                .mapToDouble(l -> kind.applyAsDouble(l.intensity()) * Totals.extent(plan, l))
                .sum();
    }

    @Test
    void noLoadIsLostOrMade() {
        int loads = 0;
        int given = 0;
        for (long seed = 1; seed <= FLOORS; seed++) {
            JobPlan plan = carried(seed);
            LoadModel model = LoadModel.of(plan);
            assertTotal(seed, LoadPlans.total(model, model.dead()), sum(plan, Intensity::dead));
            assertTotal(seed, LoadPlans.total(model, model.roofLive()), sum(plan, Intensity::roofLive));
            assertTotal(seed, LoadPlans.total(model, model.snow()), sum(plan, Intensity::snow));
            assertTotal(seed, LoadPlans.live(model), sum(plan, Intensity::live));
            loads += plan.floor().loads().size();
            given += RandomFloors.of(seed).floor().loads().size();
        }
        System.out.println(FLOORS + " random floors: " + loads + " of " + given + " loads find members to carry them");
        assertThat(loads).isGreaterThan(given * 7 / 10).isLessThan(given);
    }

    private static void assertTotal(long seed, double actual, double wanted) {
        assertThat(actual).as("seed %d", seed).isCloseTo(wanted, within(1e-9 * Math.max(1, wanted)));
    }

    @Test
    void everyPieceLiesOnItsMember() {
        for (long seed = 1; seed <= FLOORS; seed++) {
            JobPlan plan = carried(seed);
            for (UnitLoad unit : LoadModel.of(plan).units()) {
                for (UnitLoad.Piece piece : unit.pieces()) {
                    assertInside(seed, plan, piece);
                }
            }
        }
    }

    private static void assertInside(long seed, JobPlan plan, UnitLoad.Piece piece) {
        int joists = plan.floor().joists().size();
        boolean joist = piece.member() < joists;
        double start = joist
                ? plan.floor().joists().get(piece.member()).start()
                : plan.shores().get(piece.member() - joists).start();
        double end = joist
                ? plan.floor().joists().get(piece.member()).end()
                : plan.shores().get(piece.member() - joists).end();
        double from = piece instanceof UnitLoad.Uniform u ? u.from() : ((UnitLoad.Point) piece).at();
        double to = piece instanceof UnitLoad.Uniform u ? u.to() : ((UnitLoad.Point) piece).at();
        assertThat(from).as("seed %d", seed).isGreaterThanOrEqualTo(start - 1e-9);
        assertThat(to).as("seed %d", seed).isLessThanOrEqualTo(end + 1e-9);
    }

    /** Lever rule keeps the moment about the y axis, of a point and of a line along the joists. */
    @Test
    void pointsAndLinesAlongKeepTheirPlace() {
        int looked = 0;
        for (long seed = 1; seed <= FLOORS; seed++) {
            JobPlan all = carried(seed);
            for (Load load : all.floor().loads()) {
                double x = load instanceof Load.Point p ? p.x() : load instanceof Load.Along a ? a.x() : Double.NaN;
                if (!Double.isNaN(x) && inside(all, load, x)) {
                    JobPlan plan = with(all, List.of(load));
                    LoadModel model = LoadModel.of(plan);
                    double moment = model.units().get(model.dead()).pieces().stream()
                            .mapToDouble(p -> p.total()
                                    * plan.floor().joists().get(p.member()).x())
                            .sum();
                    double wanted = load.intensity().dead() * Totals.extent(plan, load) * x;
                    assertThat(moment).as("seed %d", seed).isCloseTo(wanted, within(1e-9 * Math.max(1, wanted)));
                    looked++;
                }
            }
        }
        assertThat(looked).isGreaterThan(200);
    }

    /** Whether there are joists on both sides all along the load. */
    private static boolean inside(JobPlan plan, Load load, double x) {
        double from = load instanceof Load.Point p ? p.y() : Math.max(0, ((Load.Along) load).from());
        double to = load instanceof Load.Point p ? p.y() : Math.min(4, ((Load.Along) load).to());
        return plan.floor().joists().stream().anyMatch(j -> j.x() <= x && j.start() <= from && j.end() >= to)
                && plan.floor().joists().stream().anyMatch(j -> j.x() >= x && j.start() <= from && j.end() >= to);
    }

    @Test
    void ownWeightIsAddedWhenThePlanSaysSo() {
        JobPlan plan = RandomFloors.of(3);
        double shores = plan.shores().stream().mapToDouble(Shore::length).sum();
        double joists =
                plan.floor().joists().stream().mapToDouble(Joist::length).sum();
        JobPlan heavy = Heavy.of(plan, 30, 70);
        LoadModel model = LoadModel.of(heavy);
        assertThat(LoadPlans.total(model, model.dead())).isCloseTo(30 * joists + 70 * shores, within(1e-9));
    }
}
