package dev.underprop.wire.meaning;

import dev.underprop.engine.clause.distortion.AngularDistortion;
import dev.underprop.engine.lift.LiftLimits;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what no turn may exceed. */
final class LiftLimitsReader {

    private final Spot at;
    private final NameTable<Integer> bearings;

    LiftLimitsReader(Spot at, NameTable<Integer> bearings) {
        this.at = at;
        this.bearings = bearings;
    }

    /** The limits; empty where one of those that are needed is faulty. */
    Optional<LiftLimits> read(dev.underprop.api.model.LiftLimits limits, double hold) {
        double perTurn = at.text("perTurn", limits.getPerTurn()).quantityOr(Range.RAISE, Double.NaN);
        double perStage = at.text("perStage", limits.getPerStage()).quantity(Range.RAISE);
        double perDay = at.text("perDay", limits.getPerDay()).quantityOr(Range.RAISE, Double.NaN);
        double total = at.text("total", limits.getTotal()).quantityOr(Range.RAISE, Double.NaN);
        LiftLimits.Slope slope = slope(limits);
        List<Integer> mayLeave = bearings(limits.getMayLeave(), at.member("mayLeave"));
        if (!(perStage > 0) || !(hold > 0)) {
            return Optional.empty();
        }
        LiftLimits.Ratios ratios = new LiftLimits.Ratios(
                or(limits.getPostRatio()),
                or(limits.getBeamRatio()),
                or(limits.getJoistRatio()),
                or(limits.getPadRatio()));
        return Optional.of(new LiftLimits(perTurn, perStage, perDay, total, hold, slope, ratios, mayLeave));
    }

    private LiftLimits.Slope slope(dev.underprop.api.model.LiftLimits limits) {
        Text damage = at.text("damage", limits.getDamage());
        Text criterion = at.text("slopeCriterion", limits.getSlopeCriterion());
        Double slope = limits.getSlope();
        if (damage.given()) {
            if (slope != null || criterion.given()) {
                damage.spot().report(Messages.SLOPE_TWO_WAYS, damage.value());
            }
            List<String> names = Arrays.stream(AngularDistortion.values())
                    .map(AngularDistortion::id)
                    .toList();
            return damage.choice(names)
                    .flatMap(AngularDistortion::named)
                    .map(LiftLimitsReader::slope)
                    .orElse(LiftLimits.Slope.UNSTATED);
        }
        if (slope == null && criterion.given()) {
            at.member("slope").report(Messages.SLOPE_INCOMPLETE, "", "slope");
        }
        if (slope != null && !criterion.given()) {
            criterion.spot().report(Messages.SLOPE_INCOMPLETE, "", criterion.name());
        }
        boolean said = criterion.said();
        return slope != null && said ? new LiftLimits.Slope(slope, criterion.value()) : LiftLimits.Slope.UNSTATED;
    }

    private static LiftLimits.Slope slope(AngularDistortion named) {
        String words = "1/" + StrictMath.round(named.divisor()) + ", " + named.what() + " ("
                + named.citation().text() + ")";
        return new LiftLimits.Slope(named.slope(), words);
    }

    private static double or(@Nullable Double share) {
        return share == null ? 1 : share;
    }

    List<Integer> bearings(@Nullable List<String> names, Spot spot) {
        List<Integer> read = new ArrayList<>();
        for (int i = 0; names != null && i < names.size(); i++) {
            bearings.find(names.get(i), spot.element(i)).ifPresent(read::add);
        }
        return read;
    }
}
