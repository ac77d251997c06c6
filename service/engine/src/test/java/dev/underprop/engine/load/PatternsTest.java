package dev.underprop.engine.load;

import static dev.underprop.engine.load.LoadPlans.ANY;
import static dev.underprop.engine.load.LoadPlans.joist;
import static dev.underprop.engine.load.LoadPlans.live;
import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Where live load may lie. */
class PatternsTest {

    private static final List<Joist> JOISTS = joists();

    private static List<Joist> joists() {
        List<Joist> joists = new ArrayList<>();
        for (int i = 0; i <= 8; i++) {
            joists.add(joist(i * 0.5, 0, 4));
        }
        return joists;
    }

    private static JobPlan plan(double fromY, Shore... shores) {
        Load area = new Load.Area("floor", live(2000), -ANY, ANY, fromY, ANY);
        return LoadPlans.plan(JOISTS, List.of(LoadPlans.bearing("wall", 0.05)), List.of(shores), List.of(area));
    }

    private static Patterns patterns(JobPlan plan) {
        return new Patterns(LoadModel.of(plan), plan);
    }

    private static List<String> names(JobPlan plan) {
        return patterns(plan).all().stream().map(Pattern::name).toList();
    }

    /** Columns that a pattern loads. */
    private static Set<Integer> columns(JobPlan plan, String name) {
        LoadModel model = LoadModel.of(plan);
        Pattern pattern = patterns(plan).all().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
        Set<Integer> columns = new TreeSet<>();
        for (int cell : pattern.loaded()) {
            columns.add(model.cells().get(cell).column());
        }
        return columns;
    }

    @Test
    void beamWithOverhangs() {
        JobPlan plan = plan(2, LoadPlans.shore("A", 1, -0.1, 4.1, 0.7, 1.7, 2.7, 3.7));

        assertThat(names(plan))
                .containsExactly(
                        "live load everywhere",
                        "live load on odd spans of A",
                        "live load on even spans of A",
                        "live load on left of A1 and A1 to A2",
                        "live load on left of A1",
                        "live load on A1 to A2 and A2 to A3",
                        "live load on A1 to A2",
                        "live load on A2 to A3 and A3 to A4",
                        "live load on A2 to A3",
                        "live load on A3 to A4 and right of A4",
                        "live load on A3 to A4",
                        "live load on right of A4");
        assertThat(columns(plan, "live load everywhere")).containsExactly(0, 1, 2, 3, 4);
        assertThat(columns(plan, "live load on odd spans of A")).containsExactly(0, 2, 4);
        assertThat(columns(plan, "live load on even spans of A")).containsExactly(1, 3);
        assertThat(columns(plan, "live load on A2 to A3 and A3 to A4")).containsExactly(2, 3);
        assertThat(columns(plan, "live load on right of A4")).containsExactly(4);
    }

    @Test
    void partsOfTheJoists() {
        JobPlan plan = plan(-ANY, LoadPlans.shore("A", 1, 0, 4, 0, 4), LoadPlans.shore("B", 2.5, 0, 4, 0, 4));

        assertThat(names(plan))
                .containsExactly(
                        "live load everywhere",
                        "live load on odd parts of the joists",
                        "live load on even parts of the joists",
                        "live load on the joists before A and the joists from A to B",
                        "live load on the joists before A",
                        "live load on the joists from A to B and the joists beyond B",
                        "live load on the joists beyond B");
    }

    @Test
    void noPatternIsThereTwice() {
        for (long seed = 1; seed <= 300; seed++) {
            JobPlan plan = RandomFloors.of(seed);
            List<String> lost = LoadModel.uncarried(plan);
            List<Load> kept = plan.floor().loads().stream()
                    .filter(l -> !lost.contains(l.name()))
                    .toList();
            JobPlan carried = LoadPlans.plan(plan.floor().joists(), plan.floor().bearings(), plan.shores(), kept);
            Patterns patterns = patterns(carried);
            double[] influence = new double[LoadModel.of(carried).cells().size()];
            for (int cell = 0; cell < influence.length; cell++) {
                influence[cell] = cell % 2 == 0 ? 1 : -1;
            }
            patterns.addInfluence(() -> "a post", influence);
            assertThat(patterns.all().stream().map(Pattern::cells))
                    .as("seed %d", seed)
                    .doesNotHaveDuplicates();
            assertThat(patterns.all().stream().map(Pattern::name))
                    .as("seed %d", seed)
                    .doesNotHaveDuplicates();
            assertThat(patterns.all()).allMatch(p -> p.loaded().length > 0);
        }
    }

    @Test
    void influencePicksTheCellsBySign() {
        JobPlan plan = plan(2, LoadPlans.shore("A", 1, 0, 4, 0, 1, 2, 4));
        Patterns patterns = patterns(plan);
        int before = patterns.all().size();
        double[] influence = new double[LoadModel.of(plan).cells().size()];
        java.util.Arrays.fill(influence, -1);
        influence[0] = 2;
        influence[1] = 0;
        patterns.addInfluence(() -> "A1", influence);

        assertThat(patterns.all().size()).isLessThanOrEqualTo(before + 2);
        assertThat(patterns.all()).anyMatch(p -> List.of(0).equals(boxed(p)));
        assertThat(patterns.all()).anyMatch(p -> List.of(2).equals(boxed(p)));
    }

    private static List<Integer> boxed(Pattern pattern) {
        List<Integer> list = new ArrayList<>();
        for (int cell : pattern.loaded()) {
            list.add(cell);
        }
        return list;
    }

    /** Post lines of two shores half a millimetre apart are one line; both shores see their spans. */
    @Test
    void postLinesNearlyTheSame() {
        Shore a = LoadPlans.shore("A", 1, 0, 4, 0, 2, 4);
        Shore exact = LoadPlans.shore("B", 2.5, 0, 4, 0, 2, 4);
        Shore off = LoadPlans.shore("B", 2.5, 0, 4.1, 0.0005, 1.9995, 4.0005);

        assertThat(names(plan(-ANY, a, off))).isEqualTo(names(plan(-ANY, a, exact)));
        assertThat(columns(plan(-ANY, a, off), "live load on odd spans of A"))
                .isEqualTo(columns(plan(-ANY, a, exact), "live load on odd spans of A"));
        LoadModel near = LoadModel.of(plan(-ANY, a, off));
        assertThat(LoadPlans.live(near)).isCloseTo(2000 * 16, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void gridKeepsNoCutTwice() {
        JobPlan plan =
                plan(-ANY, LoadPlans.shore("A", 1, 0, 4, 1, 3), LoadPlans.shore("B", 1.0005, 0, 4, 1.0005, 3.002));
        Grid grid = new Grid(plan.floor(), plan.shores());

        assertThat(grid.columns()).isEqualTo(4);
        assertThat(grid.rows()).isEqualTo(2);
        assertThat(grid.columnOf(1.0008)).isZero();
        assertThat(grid.columnOf(1.002)).isEqualTo(1);
        assertThat(grid.rowOf(1)).isZero();
        assertThat(grid.rowOf(1.1)).isEqualTo(1);
    }
}
