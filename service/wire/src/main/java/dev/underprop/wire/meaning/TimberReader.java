package dev.underprop.wire.meaning;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Member;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.catalogue.Species;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Nearest;
import java.util.List;
import java.util.Optional;

/** Reads the timber of a member: section, species, grade, moisture and weight. */
final class TimberReader {

    private final Catalogue catalogue;
    private final SectionReader sections;

    TimberReader(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.sections = new SectionReader(catalogue);
    }

    /** The member, or nothing after every fault of it was reported. */
    Optional<Member> read(TimberText text, int plies) {
        Optional<Section> section = sections.read(text.section());
        Optional<Species> species = species(text.species());
        Optional<String> grade = species.flatMap(of -> grade(text.grade(), of));
        if (species.isEmpty()) {
            gradeAlone(text.grade());
        }
        Optional<Member.Moisture> moisture = moisture(text.moisture());
        double weight = text.weight().quantityOr(Range.WEIGHT, Double.NaN);
        Member.Origin origin = DetailsReader.origin(text.assumedBy());
        Member.Treated treated = DetailsReader.treated(text.treatment(), text.incised());
        boolean weighed = !text.weight().given() || !Double.isNaN(weight);
        if (section.isEmpty() || grade.isEmpty() || moisture.isEmpty() || !weighed) {
            return Optional.empty();
        }
        Section one = section.get();
        Species kind = species.get();
        double own = text.weight().given() ? weight : one.gross().area() * plies * kind.unitWeight();
        String label = (plies > 1 ? plies + "-" : "") + one.label() + " " + kind.name() + " " + grade.get();
        return Optional.of(new Member(
                label,
                one.net(),
                plies,
                values(kind, grade.get(), one),
                one.nominal(),
                moisture.get(),
                own,
                new Member.Details(origin, one.remaining(), treated)));
    }

    /** The values of a grade go with the piece it was sawn as, whatever is left of it. */
    private WoodGrade values(Species species, String grade, Section section) {
        return catalogue
                .values(species, grade, section.gross().depth())
                .orElseThrow(() -> new IllegalStateException("a grade without values"));
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
