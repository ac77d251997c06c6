package dev.underprop.engine.load;

import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Supplier;

/**
 * The live load patterns of a plan: all; for every shore and girder its odd spans, its even spans, each pair of neighbours and each
 * single span; the same for the parts of the joists between the lines that carry them; and, asked for one by one, the
 * pattern of influence that relieves or presses a given contact most. A pattern that repeats another is kept once.
 */
public final class Patterns {

    /** Influence below this part of the greatest is rounding: its sign would differ from a plan to its mirror image. */
    private static final double ROUNDING = 1e-9;

    private final LoadModel model;
    private final int count;
    private final Set<BitSet> known = new HashSet<>();
    private final List<Pattern> patterns = new ArrayList<>();

    /** Collects the patterns that do not depend on the contact state. */
    public Patterns(LoadModel model, JobPlan plan) {
        this.model = model;
        this.count = model.cells().size();
        add("live load everywhere", cell -> true);
        for (Shore shore : plan.shores()) {
            List<Line> posts =
                    shore.posts().stream().map(p -> new Line(p.name(), p.x())).toList();
            addGroups(spanNames(posts), "spans of " + shore.name(), cell -> spanOf(posts, cell.column()));
        }
        for (Bearing bearing : plan.floor().bearings()) {
            if (bearing.body() instanceof Girder girder) {
                List<Line> piers = girder.piers().stream()
                        .map(p -> new Line(p.name(), p.x()))
                        .toList();
                addGroups(spanNames(piers), "spans of " + bearing.name(), cell -> spanOf(piers, cell.column()));
            }
        }
        addGroups(model.rowNames(), "parts of the joists", LoadModel.Cell::row);
    }

    /** A post or pier: what bounds the spans of a beam. */
    private record Line(String name, double x) {}

    private static List<String> spanNames(List<Line> lines) {
        List<String> names = new ArrayList<>();
        names.add("left of " + lines.get(0).name);
        for (int i = 1; i < lines.size(); i++) {
            names.add(lines.get(i - 1).name + " to " + lines.get(i).name);
        }
        names.add("right of " + lines.get(lines.size() - 1).name);
        return names;
    }

    private int spanOf(List<Line> lines, int column) {
        double from = model.columnStarts().get(column);
        int span = 0;
        while (span < lines.size() && lines.get(span).x <= from + 1e-3) {
            span++;
        }
        return span;
    }

    private interface GroupOf {
        int of(LoadModel.Cell cell);
    }

    private void addGroups(List<String> names, String what, GroupOf group) {
        int n = names.size();
        add("live load on odd " + what, cell -> group.of(cell) % 2 == 0);
        add("live load on even " + what, cell -> group.of(cell) % 2 == 1);
        for (int i = 0; i < n; i++) {
            int here = i;
            if (i + 1 < n) {
                add(
                        "live load on " + names.get(i) + " and " + names.get(i + 1),
                        cell -> group.of(cell) == here || group.of(cell) == here + 1);
            }
            add("live load on " + names.get(i), cell -> group.of(cell) == here);
        }
    }

    private void add(String name, java.util.function.Predicate<LoadModel.Cell> loaded) {
        addCells(() -> name, c -> loaded.test(model.cells().get(c)));
    }

    private void addCells(Supplier<String> name, IntPredicate loaded) {
        BitSet cells = new BitSet(count);
        for (int c = 0; c < count; c++) {
            if (loaded.test(c)) {
                cells.set(c);
            }
        }
        keep(name, cells);
    }

    private void keep(Supplier<String> name, BitSet cells) {
        if (!cells.isEmpty() && known.add(cells)) {
            patterns.add(new Pattern(name.get(), cells));
        }
    }

    /**
     * Adds the pattern that relieves a contact most and the one that presses it most.
     *
     * @param place what the contact is called
     * @param influence change of the contact force per unit of live load in each cell
     */
    public void addInfluence(Supplier<String> place, double[] influence) {
        double greatest = 0;
        for (double change : influence) {
            greatest = Math.max(greatest, Math.abs(change));
        }
        BitSet relieves = new BitSet(count);
        BitSet presses = new BitSet(count);
        for (int c = 0; c < count; c++) {
            relieves.set(c, influence[c] < -ROUNDING * greatest);
            presses.set(c, influence[c] > ROUNDING * greatest);
        }
        keep(() -> "live load where it relieves " + place.get(), relieves);
        keep(() -> "live load where it adds to " + place.get(), presses);
    }

    /** The patterns in order, "everywhere" first. Empty where there is no live load. */
    public List<Pattern> all() {
        return List.copyOf(patterns);
    }
}
