package dev.underprop.wire.meaning;

import dev.underprop.engine.section.RectangularSection;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.catalogue.DressedSize;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Nearest;
import java.util.Optional;

/** Reads the section of one ply. */
final class SectionReader {

    private static final double INCH = 0.0254;

    /** Thickness between which the tables of dimension lumber hold: above a board, below a timber. */
    private static final double THICKER_THAN = 1.0 * INCH;

    private static final double THINNER_THAN = 4.5 * INCH;

    private final Catalogue catalogue;

    SectionReader(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The section, or nothing after every fault of it was reported. */
    Optional<Section> read(SectionText text) {
        Optional<Section> whole = whole(text);
        return text.reduced() ? NetReader.read(text, whole) : whole;
    }

    private Optional<Section> whole(SectionText text) {
        boolean measured = text.breadth().given() || text.depth().given();
        if (text.size().given() && measured) {
            text.size().spot().report(Messages.SIZE_WITH_MEASURES, text.size().value());
            return Optional.empty();
        }
        if (measured) {
            return measured(text);
        }
        if (!text.size().given()) {
            text.size().spot().report(Messages.SIZE_MISSING, "");
            return Optional.empty();
        }
        Optional<DressedSize> size = catalogue.size(text.size().value());
        if (size.isEmpty()) {
            reportSize(text.size());
        }
        return size.map(one -> Section.whole(new RectangularSection(one.breadth(), one.depth()), true, one.name()));
    }

    private static Optional<Section> measured(SectionText text) {
        double breadth = text.breadth().quantity(Range.THICKNESS);
        double depth = text.depth().quantity(Range.DEPTH);
        if (!Double.isNaN(breadth) && (breadth <= THICKER_THAN || breadth >= THINNER_THAN)) {
            text.breadth()
                    .spot()
                    .report(Messages.SECTION_OUTSIDE_TABLES
                            .fault(text.breadth().value())
                            .withLimit("above 1 in, below 4 1/2 in thick"));
            return Optional.empty();
        }
        if (Double.isNaN(breadth) || Double.isNaN(depth)) {
            return Optional.empty();
        }
        String label = Fault.shown(text.breadth().value()) + " x "
                + Fault.shown(text.depth().value());
        return Optional.of(Section.whole(new RectangularSection(breadth, depth), false, label));
    }

    private void reportSize(Text text) {
        String shown = Fault.shown(text.value());
        String near = Nearest.to(text.value(), catalogue.sizeNames());
        if (near.isEmpty()) {
            text.spot().report(Messages.SIZE_UNKNOWN, text.value(), shown, String.join(", ", catalogue.sizeNames()));
        } else {
            text.spot().report(Messages.SIZE_UNKNOWN_NEAR, text.value(), shown, near);
        }
    }
}
