package dev.underprop.wire.meaning;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.catalogue.DressedSize;
import dev.underprop.wire.catalogue.Species;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Nearest;
import java.util.List;
import java.util.Optional;

/** Reads the timber of a member: section, species, grade, moisture and weight. */
final class TimberReader {

    private static final double INCH = 0.0254;

    /** Thickness between which the tables of dimension lumber hold: above a board, below a timber. */
    private static final double THICKER_THAN = 1.0 * INCH;

    private static final double THINNER_THAN = 4.5 * INCH;

    private record Section(RectangularSection one, boolean nominal, String label) {}

    private final Catalogue catalogue;

    TimberReader(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The member, or nothing after every fault of it was reported. */
    Optional<Member> read(TimberText text, int plies) {
        Optional<Section> section = section(text);
        Optional<Species> species = species(text.species());
        Optional<String> grade = species.flatMap(of -> grade(text.grade(), of));
        if (species.isEmpty()) {
            gradeAlone(text.grade());
        }
        Optional<Member.Moisture> moisture = moisture(text.moisture());
        double weight = text.weight().quantityOr(Range.WEIGHT, 0);
        if (section.isEmpty() || grade.isEmpty() || moisture.isEmpty() || Double.isNaN(weight)) {
            return Optional.empty();
        }
        RectangularSection one = section.get().one();
        WoodGrade values = catalogue
                .values(species.get(), grade.get(), one.depth())
                .orElseThrow(() -> new IllegalStateException("a grade without values"));
        double own = text.weight().given()
                ? weight
                : one.area() * plies * species.get().unitWeight();
        String label = (plies > 1 ? plies + "-" : "") + section.get().label() + " "
                + species.get().name() + " " + grade.get();
        return Optional.of(new Member(label, one, plies, values, section.get().nominal(), moisture.get(), own));
    }

    private Optional<Section> section(TimberText text) {
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
        return size.map(one -> new Section(new RectangularSection(one.breadth(), one.depth()), true, one.name()));
    }

    private static Optional<Section> measured(TimberText text) {
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
        return Optional.of(new Section(new RectangularSection(breadth, depth), false, label));
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

    private Optional<Species> species(Text text) {
        if (!text.given()) {
            text.spot().report(Messages.MEMBER_MISSING, "", text.name());
            return Optional.empty();
        }
        Optional<Species> found = catalogue.species(text.value());
        if (found.isEmpty()) {
            String shown = Fault.shown(text.value());
            String near = Nearest.to(text.value(), catalogue.speciesNames());
            if (near.isEmpty()) {
                text.spot()
                        .report(
                                Messages.SPECIES_UNKNOWN,
                                text.value(),
                                shown,
                                String.join(", ", catalogue.speciesNames()));
            } else {
                text.spot().report(Messages.SPECIES_UNKNOWN_NEAR, text.value(), shown, near);
            }
        }
        return found;
    }

    private Optional<String> grade(Text text, Species of) {
        if (!text.given()) {
            text.spot().report(Messages.MEMBER_MISSING, "", text.name());
            return Optional.empty();
        }
        List<String> held = catalogue.gradesOf(of);
        Optional<String> found = catalogue.grade(text.value()).filter(held::contains);
        if (found.isEmpty()) {
            String shown = Fault.shown(text.value());
            String near = Nearest.to(text.value(), held);
            if (near.isEmpty()) {
                text.spot().report(Messages.GRADE_UNKNOWN, text.value(), shown, of.name(), String.join(", ", held));
            } else {
                text.spot().report(Messages.GRADE_UNKNOWN_NEAR, text.value(), shown, of.name(), near);
            }
        }
        return found;
    }

    /** Where the species is not known, a grade can still be missing. */
    private static void gradeAlone(Text text) {
        if (!text.given()) {
            text.spot().report(Messages.MEMBER_MISSING, "", text.name());
        }
    }

    private static Optional<Member.Moisture> moisture(Text text) {
        return text.given()
                ? text.choice(List.of("dry", "wet"))
                        .map(word -> word.equals("dry") ? Member.Moisture.DRY : Member.Moisture.WET)
                : Optional.of(Member.Moisture.UNSTATED);
    }
}
