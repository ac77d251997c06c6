package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Limits;
import dev.underprop.wire.fault.Messages;
import org.jspecify.annotations.Nullable;

/** Reads tolerances and limits. What is not stated keeps its named default. */
final class LimitsReader {

    private LimitsReader() {}

    static Limits read(dev.underprop.api.model.@Nullable Limits limits, Spot at) {
        if (limits == null) {
            return Limits.DEFAULT;
        }
        double fitUp = at.text("fitUp", limits.getFitUp()).quantityOr(Range.FIT_UP, Double.NaN);
        return new Limits(
                Double.isNaN(fitUp) ? Limits.DEFAULT.fitUp() : new Limits.FitUp(fitUp, true),
                transfer(limits, at),
                plumb(limits, at),
                settlement(limits, at));
    }

    private static Limits.Settlement settlement(dev.underprop.api.model.Limits limits, Spot at) {
        Text total = at.text("settlement", limits.getSettlement());
        Text criterion = at.text("settlementCriterion", limits.getSettlementCriterion());
        Double slope = limits.getSettlementSlope();
        double most = total.quantityOr(Range.SETTLEMENT, Double.NaN);
        boolean said = criterion.said();
        if (!total.given() && !criterion.given() && slope == null) {
            return new Limits.NoSettlement();
        }
        require(total.given(), total.spot(), total.name());
        require(slope != null, at.member("settlementSlope"), "settlementSlope");
        require(criterion.given(), criterion.spot(), criterion.name());
        return slope != null && said && most > 0
                ? new Limits.Settles(most, slope, criterion.value())
                : new Limits.NoSettlement();
    }

    private static void require(boolean given, Spot spot, String name) {
        if (!given) {
            spot.report(Messages.SETTLEMENT_INCOMPLETE, "", name);
        }
    }

    private static Limits.Plumb plumb(dev.underprop.api.model.Limits limits, Spot at) {
        double lean = at.text("plumb", limits.getPlumb()).quantityOr(Range.LEAN, Double.NaN);
        return Double.isNaN(lean) ? Limits.DEFAULT.plumb() : new Limits.Plumb(lean, true);
    }

    private static Limits.Transfer transfer(dev.underprop.api.model.Limits limits, Spot at) {
        Text criterion = at.text("transferCriterion", limits.getTransferCriterion());
        Double slope = limits.getTransferSlope();
        if (slope == null && criterion.given()) {
            at.member("transferSlope").report(Messages.TRANSFER_INCOMPLETE, "", "transferSlope");
        }
        if (slope != null && !criterion.given()) {
            criterion.spot().report(Messages.TRANSFER_INCOMPLETE, "", criterion.name());
        }
        boolean said = criterion.said();
        return slope != null && said ? new Limits.Transfer(slope, criterion.value(), true) : Limits.DEFAULT.transfer();
    }
}
