package dev.underprop.engine.load;

import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Takes loads down to joists and beams: tributary width for areas and for lines across the joists, lever rule between two
 * joists for lines along them and for points. No load is lost: what cannot be carried is refused.
 */
final class TakeDown {

    private final JobPlan plan;
    private final Strips strips;
    private final Grid grid;
    private final List<UnitLoad.Piece> dead = new ArrayList<>();
    private final List<UnitLoad.Piece> roofLive = new ArrayList<>();
    private final List<UnitLoad.Piece> snow = new ArrayList<>();
    private final List<UnitLoad.Piece> wind = new ArrayList<>();
    private final List<UnitLoad.Piece> seismic = new ArrayList<>();
    private final List<List<UnitLoad.Piece>> live = new ArrayList<>();
    private final List<List<UnitLoad.Piece>> deadByCell = new ArrayList<>();

    TakeDown(JobPlan plan) {
        this(plan, plan.floor().loads());
        addOwnWeight();
    }

    TakeDown(JobPlan plan, List<Load> loads) {
        this.plan = plan;
        this.strips = new Strips(plan.floor().joists());
        this.grid = new Grid(plan.floor(), plan.shores());
        int cells = grid.columns() * (grid.rows() + carriers());
        for (int c = 0; c < cells; c++) {
            live.add(new ArrayList<>());
            deadByCell.add(new ArrayList<>());
        }
        loads.forEach(this::add);
    }

    /** Whether the load finds members to carry all of it. */
    boolean carries(Load load) {
        try {
            return add(load);
        } catch (Strips.Uncarried e) {
            return false;
        }
    }

    private int carriers() {
        return plan.shores().size() + plan.girders().size();
    }

    private void addOwnWeight() {
        List<Joist> joists = plan.floor().joists();
        if (plan.floor().joistWeight() == Floor.JoistWeight.ADDED) {
            for (int j = 0; j < joists.size(); j++) {
                addOwnWeight(j, joists.get(j));
            }
        }
        int member = joists.size();
        int row = grid.rows();
        for (Shore shore : plan.shores()) {
            addOwnWeight(member++, row++, shore.start(), shore.end(), shore.beam());
        }
        for (Girder girder : plan.girders()) {
            addOwnWeight(member++, row++, girder.start(), girder.end(), girder.member());
        }
    }

    private void addOwnWeight(int member, Joist joist) {
        int column = grid.columnOf(joist.x());
        for (int row = 0; row < grid.rows(); row++) {
            double from = Math.max(joist.start(), grid.rowStart(row));
            double to = Math.min(joist.end(), grid.rowEnd(row));
            if (to > from) {
                addDead(column, row, member, from, to, joist.member().weight());
            }
        }
    }

    private void addOwnWeight(int member, int row, double start, double end, Member timber) {
        for (int column = 0; column < grid.columns(); column++) {
            double from = Math.max(start, grid.columnStart(column));
            double to = Math.min(end, grid.columnEnd(column));
            if (to > from) {
                addDead(column, row, member, from, to, timber.weight());
            }
        }
    }

    private void addDead(int column, int row, int member, double from, double to, double weight) {
        addUniform(dead, member, from, to, weight);
        addUniform(deadByCell.get(place(column, row)), member, from, to, weight);
    }

    private boolean add(Load load) {
        if (load instanceof Load.Area area) {
            return addArea(area);
        }
        if (load instanceof Load.Across line) {
            return addAcross(line);
        }
        if (load instanceof Load.Along line) {
            return addAlong(line);
        }
        if (load instanceof Load.Point point) {
            return addPoint(point);
        }
        if (load instanceof Load.OnShore line) {
            return addOnShore(line);
        }
        return addPointOnShore((Load.PointOnShore) load);
    }

    private boolean addArea(Load.Area area) {
        boolean some = false;
        for (Strips.Strip strip : strips.all()) {
            for (int row = 0; row < grid.rows(); row++) {
                double from = Math.max(Math.max(strip.from(), area.fromY()), grid.rowStart(row));
                double to = Math.min(Math.min(strip.to(), area.toY()), grid.rowEnd(row));
                if (to > from) {
                    some |= addAreaPart(area, strip, row, from, to);
                }
            }
        }
        return some && reaches(area.fromY(), area.toY());
    }

    /** Whether a stated extent along y lies on the floor, with joists all along it. */
    private boolean reaches(double from, double to) {
        double near = strips.all().get(0).from();
        double far = strips.all().get(strips.all().size() - 1).to();
        return (Double.isInfinite(from) || from >= near - 1e-3)
                && (Double.isInfinite(to) || to <= far + 1e-3)
                && (Double.isInfinite(from) || Double.isInfinite(to) || covers(from, to, near, far));
    }

    /** What lies over a gap in the floor would be lost; a load without stated limits is on the floor alone. */
    private boolean covers(double from, double to, double near, double far) {
        double covered = strips.all().stream()
                .mapToDouble(s -> Math.max(0, Math.min(to, s.to()) - Math.max(from, s.from())))
                .sum();
        return covered >= Math.min(to, far) - Math.max(from, near) - 1e-3;
    }

    private boolean addAreaPart(Load.Area area, Strips.Strip strip, int row, double from, double to) {
        boolean some = false;
        for (Strips.Width width : strips.widths(strip, area.fromX(), area.toX())) {
            some = true;
            for (int column = 0; column < grid.columns(); column++) {
                double part = overlap(width, column);
                if (part > 0) {
                    spread(area.intensity(), column, row, width.joist(), from, to, part);
                }
            }
        }
        return some;
    }

    private double overlap(Strips.Width width, int column) {
        return Math.min(width.to(), grid.columnEnd(column)) - Math.max(width.from(), grid.columnStart(column));
    }

    private boolean addAcross(Load.Across line) {
        boolean all = false;
        for (Strips.Strip strip : strips.at(line.y())) {
            all = strips.reaches(strip, line.from(), line.to());
            for (Strips.Width width : strips.widths(strip, line.from(), line.to())) {
                for (int column = 0; column < grid.columns(); column++) {
                    double part = overlap(width, column);
                    if (part > 0) {
                        place(line.intensity(), column, grid.rowOf(line.y()), width.joist(), line.y(), part);
                    }
                }
            }
        }
        return all;
    }

    private boolean addAlong(Load.Along line) {
        boolean some = false;
        int column = grid.columnOf(line.x());
        for (Strips.Strip strip : strips.all()) {
            for (int row = 0; row < grid.rows(); row++) {
                double from = Math.max(Math.max(strip.from(), line.from()), grid.rowStart(row));
                double to = Math.min(Math.min(strip.to(), line.to()), grid.rowEnd(row));
                if (to > from) {
                    some = true;
                    for (Strips.Lever lever : strips.levers(strip, line.x())) {
                        spread(line.intensity(), column, row, lever.joist(), from, to, lever.part());
                    }
                }
            }
        }
        return some && reaches(line.from(), line.to());
    }

    private boolean addPoint(Load.Point point) {
        boolean some = false;
        for (Strips.Strip strip : strips.at(point.y())) {
            for (Strips.Lever lever : strips.levers(strip, point.x())) {
                some = true;
                place(
                        point.intensity(),
                        grid.columnOf(point.x()),
                        grid.rowOf(point.y()),
                        lever.joist(),
                        point.y(),
                        lever.part());
            }
        }
        return some;
    }

    private boolean addOnShore(Load.OnShore line) {
        Shore shore = plan.shores().get(line.shore());
        double start = Double.isInfinite(line.from()) ? shore.start() : line.from();
        double end = Double.isInfinite(line.to()) ? shore.end() : line.to();
        if (start < shore.start() - 1e-9 || end > shore.end() + 1e-9 || !(end > start)) {
            return false;
        }
        int member = plan.floor().joists().size() + line.shore();
        for (int column = 0; column < grid.columns(); column++) {
            double from = Math.max(Math.max(start, shore.start()), grid.columnStart(column));
            double to = Math.min(Math.min(end, shore.end()), grid.columnEnd(column));
            if (to > from) {
                spread(line.intensity(), column, grid.rows() + line.shore(), member, from, to, 1);
            }
        }
        return true;
    }

    private boolean addPointOnShore(Load.PointOnShore point) {
        Shore shore = plan.shores().get(point.shore());
        if (point.x() < shore.start() || point.x() > shore.end()) {
            return false;
        }
        int member = plan.floor().joists().size() + point.shore();
        place(point.intensity(), grid.columnOf(point.x()), grid.rows() + point.shore(), member, point.x(), 1);
        return true;
    }

    private void spread(Intensity value, int column, int row, int member, double from, double to, double part) {
        addDead(column, row, member, from, to, value.dead() * part);
        addUniform(roofLive, member, from, to, value.roofLive() * part);
        addUniform(snow, member, from, to, value.snow() * part);
        addUniform(wind, member, from, to, value.wind() * part);
        addUniform(seismic, member, from, to, value.seismic() * part);
        addUniform(live.get(place(column, row)), member, from, to, value.live() * part);
    }

    private void place(Intensity value, int column, int row, int member, double at, double part) {
        addPoint(dead, member, at, value.dead() * part);
        addPoint(deadByCell.get(place(column, row)), member, at, value.dead() * part);
        addPoint(roofLive, member, at, value.roofLive() * part);
        addPoint(snow, member, at, value.snow() * part);
        addPoint(wind, member, at, value.wind() * part);
        addPoint(seismic, member, at, value.seismic() * part);
        addPoint(live.get(place(column, row)), member, at, value.live() * part);
    }

    private int place(int column, int row) {
        return row * grid.columns() + column;
    }

    private static void addUniform(List<UnitLoad.Piece> to, int member, double from, double end, double intensity) {
        if (intensity != 0) {
            to.add(new UnitLoad.Uniform(member, from, end, intensity));
        }
    }

    private static void addPoint(List<UnitLoad.Piece> to, int member, double at, double force) {
        if (force != 0) {
            to.add(new UnitLoad.Point(member, at, force));
        }
    }

    LoadModel model() {
        List<UnitLoad> units = new ArrayList<>();
        units.add(new UnitLoad("dead", dead));
        int roof = addUnit(units, "roof live", roofLive);
        int snowUnit = addUnit(units, "snow", snow);
        int windUnit = addUnit(units, "wind", wind);
        int seismicUnit = addUnit(units, "seismic", seismic);
        List<LoadModel.Cell> cells = cells(units, "live", live);
        List<LoadModel.Cell> deadCells = cells(units, "dead of a cell", deadByCell);
        return new LoadModel(
                units, 0, roof, snowUnit, windUnit, seismicUnit, cells, deadCells, columnStarts(), rowNames());
    }

    private List<LoadModel.Cell> cells(List<UnitLoad> units, String name, List<List<UnitLoad.Piece>> byCell) {
        List<LoadModel.Cell> cells = new ArrayList<>();
        for (int c = 0; c < byCell.size(); c++) {
            int unit = addUnit(units, name, byCell.get(c));
            if (unit != LoadModel.ABSENT) {
                cells.add(new LoadModel.Cell(unit, c % grid.columns(), c / grid.columns()));
            }
        }
        return cells;
    }

    private List<Double> columnStarts() {
        return IntStream.range(0, grid.columns()).mapToObj(grid::columnStart).toList();
    }

    private List<String> rowNames() {
        return IntStream.range(0, grid.rows()).mapToObj(grid::rowName).toList();
    }

    private static int addUnit(List<UnitLoad> units, String name, List<UnitLoad.Piece> pieces) {
        if (pieces.isEmpty()) {
            return LoadModel.ABSENT;
        }
        units.add(new UnitLoad(name, pieces));
        return units.size() - 1;
    }
}
