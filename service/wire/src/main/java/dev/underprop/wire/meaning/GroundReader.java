package dev.underprop.wire.meaning;

import dev.underprop.api.model.ElasticGround;
import dev.underprop.api.model.Ground;
import dev.underprop.api.model.Subgrade;
import dev.underprop.engine.plan.Ground.Condition;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Reads what the pads stand on: a class of a table, or a value that somebody gives. */
final class GroundReader {

    private static final List<String> CONDITIONS =
            List.of("undisturbed", "fill", "compacted fill", "unprepared fill", "organic", "peat", "unknown");

    private GroundReader() {}

    static Supplier<dev.underprop.engine.plan.Ground> read(@Nullable Ground ground, Spot at) {
        if (ground == null) {
            return dev.underprop.engine.plan.Ground.Unstated::new;
        }
        Text table = at.text("table", ground.getTable());
        Text soil = at.text("class", ground.getGroundClass());
        Text allowable = at.text("allowable", ground.getAllowable());
        Text source = at.text("source", ground.getSource());
        double depth = at.text("foundingDepth", ground.getFoundingDepth()).quantityOr(Range.FOUNDING_DEPTH, Double.NaN);
        Condition condition = condition(at.text("condition", ground.getCondition()));
        double pressure = allowable.quantityOr(Range.SOIL_PRESSURE, Double.NaN);
        Optional<PresumptiveReader.Value> found = PresumptiveReader.read(table, soil);
        boolean byTable = table.given() || soil.given();
        boolean byValue = allowable.given() || source.given();
        boolean byStrength = ground.getStrength() != null;
        if (byTable && byValue || byStrength && (byTable || byValue)) {
            at.report(Messages.GROUND_TWO_WAYS, "");
        } else if (byTable) {
            requireBoth(table, soil);
        } else if (!byStrength) {
            requireBoth(allowable, source);
        }
        Supplier<dev.underprop.engine.plan.Ground.Subgrade> gives = gives(ground, at);
        Supplier<dev.underprop.engine.plan.Ground> strong = GroundStrengthReader.read(
                ground.getStrength(), at.member("strength"), new GroundStrengthReader.Around(depth, condition, gives));
        UnaryOperator<dev.underprop.engine.plan.Ground> below =
                WeakerReader.read(ground.getWeaker(), at.member("weaker"));
        return () -> {
            if (byStrength) {
                return below.apply(strong.get());
            }
            return below.apply(
                    byTable
                            ? presumptive(found.orElseThrow(), condition, depth, gives.get())
                            : new dev.underprop.engine.plan.Ground.Given(
                                    pressure, source.value(), condition, gives.get()));
        };
    }

    private static Supplier<dev.underprop.engine.plan.Ground.Subgrade> gives(Ground ground, Spot at) {
        Supplier<dev.underprop.engine.plan.Ground.Subgrade> modulus =
                subgrade(ground.getSubgrade(), at.member("subgrade"));
        ElasticGround elastic = ground.getElastic();
        if (elastic == null) {
            return modulus;
        }
        if (ground.getSubgrade() != null) {
            at.member("elastic").report(Messages.GROUND_GIVES_TWO_WAYS, "");
        }
        return elastic(elastic, at.member("elastic"));
    }

    private static Supplier<dev.underprop.engine.plan.Ground.Subgrade> elastic(ElasticGround given, Spot at) {
        double soft = at.text("soft", given.getSoft()).quantity(Range.SOIL_MODULUS);
        double stiff = at.text("stiff", given.getStiff()).quantity(Range.SOIL_MODULUS);
        Text source = at.text("source", given.getSource());
        boolean said = source.said();
        if (stiff < soft) {
            at.report(Messages.STIFFNESS_RANGE_TURNED, "");
        }
        return () -> said
                ? new dev.underprop.engine.plan.Ground.Elastic(soft, stiff, given.getPoisson(), source.value())
                : new dev.underprop.engine.plan.Ground.NoSubgrade();
    }

    private static Supplier<dev.underprop.engine.plan.Ground.Subgrade> subgrade(@Nullable Subgrade given, Spot at) {
        if (given == null) {
            return dev.underprop.engine.plan.Ground.NoSubgrade::new;
        }
        double soft = at.text("soft", given.getSoft()).quantity(Range.SUBGRADE);
        double stiff = at.text("stiff", given.getStiff()).quantity(Range.SUBGRADE);
        Text source = at.text("source", given.getSource());
        boolean said = source.said();
        if (stiff < soft) {
            at.report(Messages.STIFFNESS_RANGE_TURNED, "");
        }
        return () -> said
                ? new dev.underprop.engine.plan.Ground.Modulus(soft, stiff, source.value())
                : new dev.underprop.engine.plan.Ground.NoSubgrade();
    }

    private static dev.underprop.engine.plan.Ground presumptive(
            PresumptiveReader.Value value,
            Condition condition,
            double depth,
            dev.underprop.engine.plan.Ground.Subgrade gives) {
        return new dev.underprop.engine.plan.Ground.Presumptive(
                value.soil(), value.pressure(), value.citation(), condition, depth, gives);
    }

    private static void requireBoth(Text one, Text other) {
        for (Text text : List.of(one, other)) {
            if (!text.given() || text.value().isBlank()) {
                text.spot().report(Messages.GROUND_INCOMPLETE, "", text.name());
            }
        }
    }

    private static Condition condition(Text text) {
        if (!text.given()) {
            return Condition.UNSTATED;
        }
        return switch (text.choice(CONDITIONS).orElse("unknown")) {
            case "undisturbed" -> Condition.UNDISTURBED;
            case "fill", "compacted fill", "unprepared fill" -> Condition.FILL;
            case "organic", "peat" -> Condition.ORGANIC;
            default -> Condition.UNKNOWN;
        };
    }
}
