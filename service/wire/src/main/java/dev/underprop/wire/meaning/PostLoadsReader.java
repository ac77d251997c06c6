package dev.underprop.wire.meaning;

import dev.underprop.api.model.PadSizingRequest;
import dev.underprop.api.model.PostLoad;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_3;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.sizing.Loaded;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.quantity.ValueWriter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads posts by their loads. The suppliers are to be asked only when the request has no fault. */
final class PostLoadsReader {

    /** No check of a pad asks how tall the post on it is (m). */
    private static final double ANY_HEIGHT = 1;

    private final Spot root;
    private final PadSizingRequest model;
    private final boolean cut;
    private final double lean;
    private final Optional<Supplier<PostType.Plate>> common;
    private final PadLoad.Foot foot;

    PostLoadsReader(Spot root, PadSizingRequest model, Excavation excavation, Limits limits) {
        this.root = root;
        this.model = model;
        this.cut = excavation instanceof Excavation.Cuts;
        this.lean = PadLoad.lean(limits.plumb());
        this.common = plate(model.getBasePlate(), root.member("basePlate"));
        this.foot = foot(root.text("eccentricity", model.getEccentricity()), PadLoad.Foot.USUAL);
    }

    private static PadLoad.Foot foot(Text eccentricity, PadLoad.Foot otherwise) {
        double off = eccentricity.quantityOr(Range.ECCENTRICITY, otherwise.off());
        // What is given but faulty has been reported; no load is made of it.
        return eccentricity.given() && off >= 0 ? new PadLoad.Foot(off, true) : otherwise;
    }

    private static Optional<Supplier<PostType.Plate>> plate(dev.underprop.api.model.@Nullable Plate plate, Spot at) {
        return plate == null ? Optional.empty() : Optional.of(PlateReader.read(plate, at));
    }

    List<Supplier<Loaded>> read() {
        List<Supplier<Loaded>> posts = new ArrayList<>();
        List<PostLoad> given = model.getLoads();
        NameTable<PostLoad> names = new NameTable<>("post");
        // One y among several would put the other posts at 0, where they are not.
        boolean across = cut || (given != null && given.stream().anyMatch(load -> load.getY() != null));
        for (int i = 0; given != null && i < given.size(); i++) {
            Spot at = root.member("loads").element(i);
            names.add(given.get(i).getName(), given.get(i), at.member("name"));
            posts.add(read(given.get(i), given.size() > 1 || cut, across, at));
        }
        return posts;
    }

    private Supplier<Loaded> read(PostLoad given, boolean placed, boolean across, Spot at) {
        Text atX = at.text("x", given.getX());
        Text atY = at.text("y", given.getY());
        double x = placed ? atX.quantity(Range.POSITION) : atX.quantityOr(Range.POSITION, 0);
        double y = across ? atY.quantity(Range.POSITION) : atY.quantityOr(Range.POSITION, 0);
        Optional<Supplier<PostType.Plate>> own = plate(given.getBasePlate(), at.member("basePlate"));
        PadLoad.Foot off = foot(at.text("eccentricity", given.getEccentricity()), foot);
        Text service = at.text("service", given.getService());
        Text factored = at.text("factored", given.getFactored());
        Map<LoadKind, Double> parts = parts(given, at);
        if (parts.isEmpty() && !service.given()) {
            at.report(Messages.LOADS_EMPTY, "", Fault.shown(given.getName()));
        } else if (!parts.isEmpty() && (service.given() || factored.given())) {
            at.report(Messages.LOADS_TWO_WAYS, "", Fault.shown(given.getName()));
        }
        Sums sums = service.given() ? sums(service, factored) : Sums.of(parts);
        return () -> new Loaded(
                new Post(
                        given.getName(),
                        x,
                        ANY_HEIGHT,
                        new Post.NoStiffness(),
                        0,
                        0,
                        own.or(() -> common)
                                .<Post.Type>map(plate -> type(plate.get()))
                                .orElseGet(Post.NoType::new),
                        new Post.NoPad()),
                "y = " + ValueWriter.nine(y),
                y,
                new PadLoad(sums.greatest, sums.factored, lean, off),
                sums.least);
    }

    private static PostType type(PostType.Plate base) {
        return new PostType("of the request", new PostType.NotRated(), base, base);
    }

    /** Sums of the loads of a post (N); what was given as a sum may be nothing at the least. */
    private record Sums(double greatest, double factored, double least) {

        static Sums of(Map<LoadKind, Double> parts) {
            return new Sums(
                    greatest(parts, Section2_4.gravity(parts.keySet())),
                    greatest(parts, Section2_3.strength(parts.keySet())),
                    parts.getOrDefault(LoadKind.DEAD, 0.0));
        }

        private static double greatest(Map<LoadKind, Double> parts, List<Combination> combinations) {
            double most = 0;
            for (Combination combination : combinations) {
                double sum = 0;
                for (Combination.Term term : combination.terms()) {
                    sum += term.factor() * parts.getOrDefault(term.kind(), 0.0);
                }
                most = Math.max(most, sum);
            }
            return most;
        }
    }

    private Sums sums(Text service, Text factored) {
        double greatest = service.quantity(Range.CAPACITY);
        double most = factored.quantityOr(Range.CAPACITY, Double.NaN);
        if (most < greatest) {
            factored.spot().report(Messages.FACTORED_BELOW_SERVICE, factored.value());
        }
        return new Sums(greatest, most, 0);
    }

    private static Map<LoadKind, Double> parts(PostLoad given, Spot at) {
        Map<LoadKind, Double> parts = new EnumMap<>(LoadKind.class);
        part(LoadKind.LIVE, at.text("live", given.getLive()), parts);
        part(LoadKind.ROOF_LIVE, at.text("roofLive", given.getRoofLive()), parts);
        part(LoadKind.SNOW, at.text("snow", given.getSnow()), parts);
        Text dead = at.text("dead", given.getDead());
        if (dead.given() || !parts.isEmpty()) {
            parts.put(LoadKind.DEAD, dead.quantity(Range.POINT_LOAD));
        }
        return parts;
    }

    private static void part(LoadKind kind, Text text, Map<LoadKind, Double> parts) {
        if (text.given()) {
            parts.put(kind, text.quantity(Range.POINT_LOAD));
        }
    }
}
