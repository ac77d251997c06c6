package dev.underprop.wire.meaning;

import dev.underprop.api.model.PostType;
import dev.underprop.api.model.Rating;
import dev.underprop.engine.plan.Post;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads the types of post. */
final class PostTypesReader {

    /**
     * A type as far as it was understood.
     *
     * @param stiffness that it states, or that it states none
     * @param ends what it declares of the ends of its posts
     * @param type to be asked for only when the plan has no fault
     */
    record Draft(
            Optional<Post.Stiffness> stiffness, Post.Ends ends, Supplier<dev.underprop.engine.plan.PostType> type) {}

    private final TimberPostReader timber;

    PostTypesReader(TimberReader timber) {
        this.timber = new TimberPostReader(timber);
    }

    NameTable<Draft> read(@Nullable List<PostType> types, Spot spot) {
        NameTable<Draft> table = new NameTable<>("post type");
        for (int i = 0; types != null && i < types.size(); i++) {
            Spot at = spot.element(i);
            table.add(types.get(i).getName(), draft(types.get(i), at), at.member("name"));
        }
        return table;
    }

    private Draft draft(PostType type, Spot at) {
        Optional<Post.Stiffness> stiffness = StiffnessReader.read(new StiffnessReader.Said(
                at.truth("rigid", type.getRigid()),
                at.text("stiffness", type.getStiffness()),
                at.text("soft", type.getSoft()),
                at.text("stiff", type.getStiff())));
        Supplier<dev.underprop.engine.plan.PostType.Plate> head =
                PlateReader.read(type.getHeadPlate(), at.member("headPlate"));
        Supplier<dev.underprop.engine.plan.PostType.Plate> base =
                PlateReader.read(type.getBasePlate(), at.member("basePlate"));
        Supplier<dev.underprop.engine.plan.PostType.Tube> tube = TubeReader.read(type.getTube(), at.member("tube"));
        Supplier<dev.underprop.engine.plan.PostType.Named> named =
                PropClassReader.read(at.text("propClass", type.getPropClass()));
        Supplier<? extends dev.underprop.engine.plan.PostType.Shaft> shaft = shaft(type, at);
        Supplier<dev.underprop.engine.plan.PostType.Rating> rating = rating(type.getRating(), at.member("rating"));
        double off = at.text("eccentricity", type.getEccentricity()).quantityOr(Range.ECCENTRICITY, Double.NaN);
        return new Draft(
                stiffness,
                EndReader.read(type.getHead(), type.getFoot(), at),
                () -> new dev.underprop.engine.plan.PostType(
                        type.getName(),
                        rating.get(),
                        head.get(),
                        base.get(),
                        tube.get(),
                        named.get(),
                        shaft.get(),
                        off));
    }

    private Supplier<? extends dev.underprop.engine.plan.PostType.Shaft> shaft(PostType type, Spot at) {
        if (type.getTimber() != null) {
            if (type.getTube() != null || type.getPropClass() != null || type.getTelescope() != null) {
                at.member("timber").report(Messages.POST_MADE_TWO_WAYS, "");
            }
            return timber.read(type.getTimber(), at.member("timber"));
        }
        boolean plain =
                type.getTube() != null && Boolean.TRUE.equals(type.getTube().getPlain());
        if (plain && (type.getTelescope() != null || type.getPropClass() != null)) {
            at.member("tube").member("plain").report(Messages.TUBE_NOT_PLAIN, "");
        }
        return type.getTelescope() == null
                ? dev.underprop.engine.plan.PostType.NoShaft::new
                : TelescopeReader.read(type.getTelescope(), at.member("telescope"));
    }

    private static Supplier<dev.underprop.engine.plan.PostType.Rating> rating(@Nullable Rating rating, Spot at) {
        if (rating == null) {
            return dev.underprop.engine.plan.PostType.NotRated::new;
        }
        double factor = factor(rating, at);
        List<double[]> rows = rows(rating, at.member("rows"));
        boolean interpolate = Boolean.TRUE.equals(rating.getInterpolate());
        return () -> new dev.underprop.engine.plan.PostType.Table(
                rating.getSource(),
                factor,
                interpolate,
                rows.stream()
                        .map(row -> new dev.underprop.engine.plan.PostType.Row(row[0], row[1]))
                        .toList());
    }

    private static double factor(Rating rating, Spot at) {
        Optional<String> kind = at.text("kind", rating.getKind()).choice(List.of("allowable", "characteristic"));
        Double factor = rating.getFactor();
        if (kind.isPresent() && kind.get().equals("allowable") && factor != null) {
            at.member("factor").report(Messages.FACTOR_REFUSED, "");
        }
        if (kind.isPresent() && kind.get().equals("characteristic") && factor == null) {
            at.member("factor").report(Messages.FACTOR_MISSING, "");
        }
        return factor == null ? 1 : factor;
    }

    private static List<double[]> rows(Rating rating, Spot at) {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < rating.getRows().size(); i++) {
            Spot row = at.element(i);
            double height =
                    row.text("height", rating.getRows().get(i).getHeight()).quantity(Range.HEIGHT);
            double load = row.text("load", rating.getRows().get(i).getLoad()).quantity(Range.CAPACITY);
            if (i > 0 && height <= rows.get(i - 1)[0]) {
                row.member("height")
                        .report(
                                Messages.RATING_NOT_RISING,
                                rating.getRows().get(i).getHeight());
            }
            rows.add(new double[] {height, load});
        }
        return rows;
    }
}
