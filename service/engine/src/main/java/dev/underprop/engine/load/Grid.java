package dev.underprop.engine.load;

import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The cells in which live load may lie or not: columns between the lines of all posts and piers, rows between the lines that
 * carry the joists. A bearing under the very end of the joists cuts no row of its own.
 */
final class Grid {

    /** Cuts nearer than this are one (m): no live load is told apart by a hand's breadth less. */
    private static final double SAME_CUT = 1e-3;

    private record Cut(double at, String name) {}

    private final double[] columns;
    private final List<Cut> rows;

    Grid(Floor floor, List<Shore> shores) {
        DoubleStream posts = shores.stream().flatMap(s -> s.posts().stream()).mapToDouble(Post::x);
        DoubleStream piers = floor.bearings().stream()
                .filter(b -> b.body() instanceof Girder)
                .flatMap(b -> ((Girder) b.body()).piers().stream())
                .mapToDouble(Girder.Pier::x);
        this.columns = distinct(DoubleStream.concat(posts, piers));
        double near = floor.joists().stream().mapToDouble(Joist::start).min().orElse(0);
        double far = floor.joists().stream().mapToDouble(Joist::end).max().orElse(0);
        Stream<Cut> bearings = floor.bearings().stream()
                .filter(b -> b.y() - near > b.length() && far - b.y() > b.length())
                .map(b -> new Cut(b.y(), b.name()));
        Stream<Cut> across = shores.stream().map(s -> new Cut(s.y(), s.name()));
        this.rows = distinctCuts(Stream.concat(across, bearings));
    }

    private static List<Cut> distinctCuts(Stream<Cut> cuts) {
        List<Cut> kept = new ArrayList<>();
        cuts.sorted(Comparator.comparingDouble(Cut::at)).forEach(cut -> {
            if (kept.isEmpty() || cut.at - kept.get(kept.size() - 1).at > SAME_CUT) {
                kept.add(cut);
            }
        });
        return kept;
    }

    private static double[] distinct(DoubleStream cuts) {
        double[] sorted = cuts.sorted().toArray();
        double[] kept = new double[sorted.length];
        int n = 0;
        for (double cut : sorted) {
            if (n == 0 || cut - kept[n - 1] > SAME_CUT) {
                kept[n++] = cut;
            }
        }
        return Arrays.copyOf(kept, n);
    }

    int columns() {
        return columns.length + 1;
    }

    int rows() {
        return rows.size() + 1;
    }

    double columnStart(int column) {
        return column == 0 ? Double.NEGATIVE_INFINITY : columns[column - 1];
    }

    double columnEnd(int column) {
        return column == columns.length ? Double.POSITIVE_INFINITY : columns[column];
    }

    /** What a row is called: by the lines that bound it. */
    String rowName(int row) {
        if (rows.isEmpty()) {
            return "the joists";
        }
        if (row == 0) {
            return "the joists before " + rows.get(0).name;
        }
        String before = rows.get(row - 1).name;
        return row == rows.size()
                ? "the joists beyond " + before
                : "the joists from " + before + " to " + rows.get(row).name;
    }

    double rowStart(int row) {
        return row == 0 ? Double.NEGATIVE_INFINITY : rows.get(row - 1).at;
    }

    double rowEnd(int row) {
        return row == rows.size() ? Double.POSITIVE_INFINITY : rows.get(row).at;
    }

    /** Row that holds y; a place on a line belongs to the row before it. */
    int rowOf(double y) {
        int row = 0;
        while (row < rows.size() && y > rows.get(row).at + SAME_CUT) {
            row++;
        }
        return row;
    }

    /** Column that holds x; a place on a post line belongs to the column before it. */
    int columnOf(double x) {
        int column = 0;
        while (column < columns.length && x > columns[column] + SAME_CUT) {
            column++;
        }
        return column;
    }
}
