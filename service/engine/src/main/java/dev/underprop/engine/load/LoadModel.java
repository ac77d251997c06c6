package dev.underprop.engine.load;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.statics.UnitLoad;
import java.util.List;

/**
 * The loads of a plan as statics takes them: one unit for all dead load, one each for roof live load, snow, and the vertical
 * parts of wind and earthquake, one for the live load of every cell, and the dead load once more cell by cell. Units that
 * carry nothing are left out.
 *
 * @param units unit loads, at full value
 * @param dead number of the dead unit
 * @param roofLive number of the roof live unit, or {@link #ABSENT}
 * @param snow number of the snow unit, or {@link #ABSENT}
 * @param wind number of the unit of wind, or {@link #ABSENT}
 * @param seismic number of the unit of earthquake, or {@link #ABSENT}
 * @param cells live load cells
 * @param deadCells dead load by cells: together they are the dead unit
 * @param columnStarts x where each column begins (m); the first begins at minus infinity
 * @param rowNames what each row of the floor is called; higher row numbers are loads directly on a shore
 */
public record LoadModel(
        List<UnitLoad> units,
        int dead,
        int roofLive,
        int snow,
        int wind,
        int seismic,
        List<Cell> cells,
        List<Cell> deadCells,
        List<Double> columnStarts,
        List<String> rowNames) {

    /** Marks a unit that is not there. */
    public static final int ABSENT = -1;

    /**
     * Load of one cell.
     *
     * @param unit its unit load
     * @param column column, 0 left of the first post line
     * @param row row, 0 before the first line that carries joists
     */
    public record Cell(int unit, int column, int row) {}

    public LoadModel {
        units = List.copyOf(units);
        cells = List.copyOf(cells);
        deadCells = List.copyOf(deadCells);
        columnStarts = List.copyOf(columnStarts);
        rowNames = List.copyOf(rowNames);
    }

    /** Takes the loads of a plan down to its members. */
    public static LoadModel of(JobPlan plan) {
        return new TakeDown(plan).model();
    }

    /** Names of the loads that lie where no joist or beam can take them. */
    public static List<String> uncarried(JobPlan plan) {
        TakeDown takeDown = new TakeDown(plan, List.of());
        return plan.floor().loads().stream()
                .filter(load -> !takeDown.carries(load))
                .map(Load::name)
                .toList();
    }
}
