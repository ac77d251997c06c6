package dev.underprop.wire.meaning;

import dev.underprop.api.model.Load;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Reads the loads. Each comes back as a supplier, to be asked only when the plan has no fault. */
final class LoadsReader {

    private static final Set<String> AREA = Set.of("fromX", "toX", "fromY", "toY");
    private static final Set<String> LINE = Set.of("along", "at", "joist", "on", "from", "to");
    private static final Set<String> LINE_ON_SHORE = Set.of("along", "on", "from", "to");
    private static final Set<String> POINT = Set.of("on", "x", "y");
    private static final Set<String> POINT_ON_SHORE = Set.of("on", "x");

    private final List<JoistDraft> joists;
    private final NameTable<Integer> joistNames;
    private final NameTable<Integer> shores;

    LoadsReader(List<JoistDraft> joists, NameTable<Integer> joistNames, NameTable<Integer> shores) {
        this.joists = joists;
        this.joistNames = joistNames;
        this.shores = shores;
    }

    List<Supplier<dev.underprop.engine.plan.Load>> read(List<Load> loads, Spot spot) {
        NameTable<Load> names = new NameTable<>("load");
        List<Supplier<dev.underprop.engine.plan.Load>> read = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            Spot at = spot.element(i);
            names.add(loads.get(i).getName(), loads.get(i), at.member("name"));
            read.add(read(loads.get(i), at));
        }
        return read;
    }

    private Supplier<dev.underprop.engine.plan.Load> read(Load load, Spot at) {
        Map<String, Text> texts = places(load, at);
        Optional<String> kind = at.text("kind", load.getKind()).choice(List.of("area", "line", "point"));
        if (kind.isEmpty()) {
            return () -> {
                throw new IllegalStateException("a load of no kind");
            };
        }
        boolean onShore = texts.get("on").given();
        return switch (kind.get()) {
            case "area" -> area(load, at, texts);
            case "line" -> onShore ? lineOnShore(load, at, texts) : line(load, at, texts);
            default -> onShore ? pointOnShore(load, at, texts) : point(load, at, texts);
        };
    }

    private static Map<String, Text> places(Load load, Spot at) {
        Map<String, Text> texts = new LinkedHashMap<>();
        put(texts, at.text("along", load.getAlong()));
        put(texts, at.text("at", load.getAt()));
        put(texts, at.text("joist", load.getJoist()));
        put(texts, at.text("on", load.getOn()));
        put(texts, at.text("from", load.getFrom()));
        put(texts, at.text("to", load.getTo()));
        put(texts, at.text("fromX", load.getFromX()));
        put(texts, at.text("toX", load.getToX()));
        put(texts, at.text("fromY", load.getFromY()));
        put(texts, at.text("toY", load.getToY()));
        put(texts, at.text("x", load.getX()));
        put(texts, at.text("y", load.getY()));
        return texts;
    }

    private static void put(Map<String, Text> texts, Text text) {
        texts.put(text.name(), text);
    }

    private static void refuseOthers(Map<String, Text> texts, Set<String> own, String what) {
        texts.values().stream()
                .filter(text -> text.given() && !own.contains(text.name()))
                .forEach(text -> text.spot().report(Messages.LOAD_MEMBER_FOREIGN, text.value(), text.name(), what));
    }

    private static Supplier<dev.underprop.engine.plan.Load> area(Load load, Spot at, Map<String, Text> texts) {
        refuseOthers(texts, AREA, "an area load");
        Supplier<Intensity> intensity = IntensityReader.read(load, at, IntensityReader.Of.AREA);
        double[] x = extent(texts.get("fromX"), texts.get("toX"));
        double[] y = extent(texts.get("fromY"), texts.get("toY"));
        return () -> new dev.underprop.engine.plan.Load.Area(load.getName(), intensity.get(), x[0], x[1], y[0], y[1]);
    }

    private Supplier<dev.underprop.engine.plan.Load> lineOnShore(Load load, Spot at, Map<String, Text> texts) {
        refuseOthers(texts, LINE_ON_SHORE, "a line load on a shore");
        Supplier<Intensity> intensity = IntensityReader.read(load, at, IntensityReader.Of.LINE);
        Text along = texts.get("along");
        if (along.given()) {
            along.choice(List.of("x"));
        }
        double[] x = extent(texts.get("from"), texts.get("to"));
        Optional<Integer> shore =
                shores.find(texts.get("on").value(), texts.get("on").spot());
        return () -> new dev.underprop.engine.plan.Load.OnShore(
                load.getName(), intensity.get(), shore.orElseThrow(), x[0], x[1]);
    }

    private Supplier<dev.underprop.engine.plan.Load> line(Load load, Spot at, Map<String, Text> texts) {
        refuseOthers(texts, LINE, "a line load");
        Supplier<Intensity> intensity = IntensityReader.read(load, at, IntensityReader.Of.LINE);
        double[] extent = extent(texts.get("from"), texts.get("to"));
        Text along = texts.get("along");
        if (!along.given()) {
            along.spot().report(Messages.LOAD_PLACE_MISSING, "", "along");
            return refused();
        }
        Optional<String> axis = along.choice(List.of("x", "y"));
        if (axis.isEmpty()) {
            return refused();
        }
        if (axis.get().equals("x")) {
            refuseOthers(texts, Set.of("along", "at", "from", "to"), "a line load along x");
            double y = place(texts.get("at"));
            return () ->
                    new dev.underprop.engine.plan.Load.Across(load.getName(), intensity.get(), y, extent[0], extent[1]);
        }
        return alongJoists(load, intensity, texts, extent);
    }

    private Supplier<dev.underprop.engine.plan.Load> alongJoists(
            Load load, Supplier<Intensity> intensity, Map<String, Text> texts, double[] extent) {
        Text joist = texts.get("joist");
        if (!joist.given()) {
            double x = place(texts.get("at"));
            return () ->
                    new dev.underprop.engine.plan.Load.Along(load.getName(), intensity.get(), x, extent[0], extent[1]);
        }
        if (texts.get("at").given()) {
            joist.spot().report(Messages.LOAD_PLACE_TWICE, joist.value(), "at", "joist");
        }
        Optional<JoistDraft> found =
                joistNames.find(joist.value(), joist.spot()).map(joists::get);
        if (found.isEmpty()) {
            return refused();
        }
        JoistDraft under = found.get();
        double from = Double.isInfinite(extent[0]) ? under.start() : extent[0];
        double to = Double.isInfinite(extent[1]) ? under.end() : extent[1];
        if (under.known() && (from < under.start() - 1e-9 || to > under.end() + 1e-9 || to <= from)) {
            joist.spot().report(Messages.LOAD_UNCARRIED, joist.value());
        }
        return () -> new dev.underprop.engine.plan.Load.Along(load.getName(), intensity.get(), under.x(), from, to);
    }

    private Supplier<dev.underprop.engine.plan.Load> point(Load load, Spot at, Map<String, Text> texts) {
        refuseOthers(texts, POINT, "a point load");
        Supplier<Intensity> intensity = IntensityReader.read(load, at, IntensityReader.Of.POINT);
        double x = place(texts.get("x"));
        double y = place(texts.get("y"));
        return () -> new dev.underprop.engine.plan.Load.Point(load.getName(), intensity.get(), x, y);
    }

    private Supplier<dev.underprop.engine.plan.Load> pointOnShore(Load load, Spot at, Map<String, Text> texts) {
        refuseOthers(texts, POINT_ON_SHORE, "a point load on a shore");
        Supplier<Intensity> intensity = IntensityReader.read(load, at, IntensityReader.Of.POINT);
        double x = place(texts.get("x"));
        Optional<Integer> shore =
                shores.find(texts.get("on").value(), texts.get("on").spot());
        return () -> new dev.underprop.engine.plan.Load.PointOnShore(
                load.getName(), intensity.get(), shore.orElseThrow(), x);
    }

    private static double place(Text text) {
        if (!text.given()) {
            text.spot().report(Messages.LOAD_PLACE_MISSING, "", text.name());
            return Double.NaN;
        }
        return text.quantity(Range.POSITION);
    }

    /** From and to (m), infinite where absent; an end that is not beyond the beginning is reported. */
    static double[] extent(Text from, Text to) {
        double begin = from.quantityOr(Range.POSITION, Double.NEGATIVE_INFINITY);
        double end = to.quantityOr(Range.POSITION, Double.POSITIVE_INFINITY);
        if (end <= begin) {
            to.spot().report(Messages.EXTENT_EMPTY, to.value());
        }
        return new double[] {begin, end};
    }

    private static Supplier<dev.underprop.engine.plan.Load> refused() {
        return () -> {
            throw new IllegalStateException("a load that was refused");
        };
    }
}
