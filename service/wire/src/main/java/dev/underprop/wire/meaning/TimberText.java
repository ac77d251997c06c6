package dev.underprop.wire.meaning;

/** What a plan says of the timber of a joist or of a beam's plies. */
record TimberText(Text size, Text breadth, Text depth, Text species, Text grade, Text moisture, Text weight) {

    /** Whether anything is said at all. */
    boolean given() {
        return hasSection() || species.given() || grade.given() || moisture.given() || weight.given();
    }

    /** This, completed by what holds for the whole set; a section is taken whole or not at all. */
    TimberText or(TimberText set) {
        boolean own = hasSection();
        return new TimberText(
                own ? size : set.size,
                own ? breadth : set.breadth,
                own ? depth : set.depth,
                species.or(set.species),
                grade.or(set.grade),
                moisture.or(set.moisture),
                weight.or(set.weight));
    }

    private boolean hasSection() {
        return size.given() || breadth.given() || depth.given();
    }
}
