package dev.underprop.wire.meaning;

import dev.underprop.engine.section.RectangularSection;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.Optional;

/** Reads what notches, holes or decay have left of a section. */
final class NetReader {

    /** Slack between sizes written in different units (m). */
    private static final double ROUNDING = 1e-9;

    private NetReader() {}

    /** The section with what is left of it, or nothing after every fault of it was reported. */
    static Optional<Section> read(SectionText text, Optional<Section> whole) {
        for (Text part : List.of(text.netBreadth(), text.netDepth(), text.netBy())) {
            if (!part.given()) {
                part.spot().report(Messages.NET_INCOMPLETE, "", part.name());
            }
        }
        double breadth = text.netBreadth().quantityOr(Range.THICKNESS, Double.NaN);
        double depth = text.netDepth().quantityOr(Range.DEPTH, Double.NaN);
        boolean said = text.netBy().said();
        if (Double.isNaN(breadth) || Double.isNaN(depth) || !said || whole.isEmpty()) {
            return Optional.empty();
        }
        RectangularSection gross = whole.get().gross();
        boolean within = within(breadth, gross.breadth(), text.netBreadth(), text.breadth(), text.size())
                & within(depth, gross.depth(), text.netDepth(), text.depth(), text.size());
        if (within && breadth >= gross.breadth() - ROUNDING && depth >= gross.depth() - ROUNDING) {
            text.netBreadth()
                    .spot()
                    .report(Messages.NET_NOT_LESS, text.netBreadth().value());
            return Optional.empty();
        }
        String words = Fault.shown(text.netBreadth().value()) + " x "
                + Fault.shown(text.netDepth().value());
        return within
                ? whole.map(section -> section.reducedTo(
                        new RectangularSection(
                                StrictMath.min(breadth, gross.breadth()), StrictMath.min(depth, gross.depth())),
                        text.netBy().value(),
                        words))
                : Optional.empty();
    }

    private static boolean within(double left, double whole, Text net, Text measured, Text size) {
        if (left <= whole + ROUNDING) {
            return true;
        }
        String limit = measured.given() ? measured.value() : size.value();
        net.spot().report(Messages.NET_NOT_WITHIN.fault(net.value()).withLimit("at most that of " + limit));
        return false;
    }
}
