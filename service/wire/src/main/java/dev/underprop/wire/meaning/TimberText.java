package dev.underprop.wire.meaning;

import dev.underprop.api.model.Beam;
import dev.underprop.api.model.Joist;
import dev.underprop.api.model.JoistSet;
import dev.underprop.api.model.Mat;
import dev.underprop.api.model.TimberPost;

/** What a plan says of the timber of a joist, of a beam's plies or of a post. */
record TimberText(
        SectionText section,
        Text species,
        Text grade,
        Text assumedBy,
        Text moisture,
        Text weight,
        Text treatment,
        Text incised) {

    static TimberText of(JoistSet set, Spot at) {
        return new TimberText(
                new SectionText(
                        at.text("size", set.getSize()),
                        at.text("breadth", set.getBreadth()),
                        at.text("depth", set.getDepth()),
                        at.text("netBreadth", set.getNetBreadth()),
                        at.text("netDepth", set.getNetDepth()),
                        at.text("netBy", set.getNetBy())),
                at.text("species", set.getSpecies()),
                at.text("grade", set.getGrade()),
                at.text("gradeAssumedBy", set.getGradeAssumedBy()),
                at.text("moisture", set.getMoisture()),
                at.text("weight", set.getWeight()),
                at.text("treatment", set.getTreatment()),
                at.truth("incised", set.getIncised()));
    }

    static TimberText of(Joist joist, Spot at) {
        return new TimberText(
                new SectionText(
                        at.text("size", joist.getSize()),
                        at.text("breadth", joist.getBreadth()),
                        at.text("depth", joist.getDepth()),
                        at.text("netBreadth", joist.getNetBreadth()),
                        at.text("netDepth", joist.getNetDepth()),
                        at.text("netBy", joist.getNetBy())),
                at.text("species", joist.getSpecies()),
                at.text("grade", joist.getGrade()),
                at.text("gradeAssumedBy", joist.getGradeAssumedBy()),
                at.text("moisture", joist.getMoisture()),
                at.text("weight", joist.getWeight()),
                at.text("treatment", joist.getTreatment()),
                at.truth("incised", joist.getIncised()));
    }

    static TimberText of(Beam beam, Spot at) {
        return new TimberText(
                new SectionText(
                        at.text("size", beam.getSize()),
                        at.text("breadth", beam.getBreadth()),
                        at.text("depth", beam.getDepth()),
                        at.text("netBreadth", beam.getNetBreadth()),
                        at.text("netDepth", beam.getNetDepth()),
                        at.text("netBy", beam.getNetBy())),
                at.text("species", beam.getSpecies()),
                at.text("grade", beam.getGrade()),
                at.text("gradeAssumedBy", beam.getGradeAssumedBy()),
                at.text("moisture", beam.getMoisture()),
                at.text("weight", beam.getWeight()),
                at.text("treatment", beam.getTreatment()),
                at.truth("incised", beam.getIncised()));
    }

    static TimberText of(TimberPost post, Spot at) {
        return new TimberText(
                new SectionText(
                        at.text("size", post.getSize()),
                        at.text("breadth", post.getBreadth()),
                        at.text("depth", post.getDepth()),
                        at.text("netBreadth", post.getNetBreadth()),
                        at.text("netDepth", post.getNetDepth()),
                        at.text("netBy", post.getNetBy())),
                at.text("species", post.getSpecies()),
                at.text("grade", post.getGrade()),
                at.text("gradeAssumedBy", post.getGradeAssumedBy()),
                at.text("moisture", post.getMoisture()),
                at.text("weight", null),
                at.text("treatment", post.getTreatment()),
                at.truth("incised", post.getIncised()));
    }

    /** Of a mat, which is whole and wet, and whose weight is that of the pad. */
    static TimberText of(Mat mat, Spot at) {
        return new TimberText(
                new SectionText(
                        at.text("size", mat.getSize()),
                        at.text("breadth", mat.getBreadth()),
                        at.text("depth", mat.getDepth()),
                        at.text("netBreadth", null),
                        at.text("netDepth", null),
                        at.text("netBy", null)),
                at.text("species", mat.getSpecies()),
                at.text("grade", mat.getGrade()),
                at.text("gradeAssumedBy", mat.getGradeAssumedBy()),
                at.text("moisture", null),
                at.text("weight", null),
                at.text("treatment", mat.getTreatment()),
                at.truth("incised", mat.getIncised()));
    }

    /** Whether anything is said at all. */
    boolean given() {
        return section.given()
                || species.given()
                || grade.given()
                || assumedBy.given()
                || moisture.given()
                || weight.given()
                || treatment.given()
                || incised.given();
    }

    /**
     * This, completed by what holds for the whole set. A section is taken whole or not at all; who assumed a grade is said
     * of that grade alone, and whether wood is incised of that treatment.
     */
    TimberText or(TimberText set) {
        return new TimberText(
                section.or(set.section),
                species.or(set.species),
                grade.or(set.grade),
                grade.given() ? assumedBy : assumedBy.or(set.assumedBy),
                moisture.or(set.moisture),
                weight.or(set.weight),
                treatment.or(set.treatment),
                treatment.given() ? incised : incised.or(set.incised));
    }
}
