package dev.underprop.wire.meaning;

/** What a plan says of a section: as sold or as measured, and what is left of it. */
record SectionText(Text size, Text breadth, Text depth, Text netBreadth, Text netDepth, Text netBy) {

    /** Whether anything is said at all. */
    boolean given() {
        return whole() || reduced();
    }

    /** Whether it is said that something is missing of it. */
    boolean reduced() {
        return netBreadth.given() || netDepth.given() || netBy.given();
    }

    /** This, completed by the section of the whole set; what is left of that is not left of another. */
    SectionText or(SectionText set) {
        boolean own = whole();
        boolean left = own || reduced();
        return new SectionText(
                own ? size : set.size,
                own ? breadth : set.breadth,
                own ? depth : set.depth,
                left ? netBreadth : set.netBreadth,
                left ? netDepth : set.netDepth,
                left ? netBy : set.netBy);
    }

    private boolean whole() {
        return size.given() || breadth.given() || depth.given();
    }
}
