package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Assessment.Advisory;
import dev.underprop.engine.assess.Assessment.Severity;

/** The rules of good practice that hold for shoring as such, whatever the numbers say. Codes are stable. */
enum Practice {
    JACK_ALONE(
            "never-on-a-jack-alone",
            Severity.DANGER,
            "Nobody works under a floor that a jack alone holds: posts or cribbing follow at once, and carry before anyone"
                    + " goes under.",
            "OSHA 29 CFR 1926.305(d)(1)(i), from memory"),
    PERMIT_AND_ENGINEER(
            "permit-and-engineer",
            Severity.WARNING,
            "Ask the building department for a permit before work on what carries the house begins, and have an engineer"
                    + " licensed there look at this plan.",
            "IRC 2021 R105.1 and R301.1.3, and IEBC 2021 105.1, from memory"),
    SERVICES(
            "services",
            Severity.WARNING,
            "Pipes, ducts and wires go with the floor: find them, shut off, free or lengthen them before anything moves,"
                    + " gas and water above all.",
            "OSHA 29 CFR 1926.850(c), written for demolition, from memory"),
    LEAD(
            "lead-in-old-paint",
            Severity.WARNING,
            "The plan does not tell when the house was built. Before 1978 its paint is taken to hold lead until tested:"
                    + " certified renovators and lead-safe work.",
            "EPA 40 CFR 745.80 to 745.92 and OSHA 29 CFR 1926.62, from memory"),
    ASBESTOS(
            "asbestos-in-old-houses",
            Severity.WARNING,
            "The plan does not tell when the house was built. Insulation of pipes and boilers, sprayed or trowelled coats and"
                    + " old flooring may hold asbestos, and up to 1980 are taken to: have them tested before they are"
                    + " disturbed.",
            "OSHA 29 CFR 1926.1101(b) and (k), from memory"),
    TEMPORARY(
            "temporary-posts-stay-temporary",
            Severity.WARNING,
            "These posts are temporary: do not leave them as the columns of the house. What stays wants columns, footings"
                    + " and fastenings of its own.",
            "IRC 2021 R107.1, R403.1 and R407.3, from memory"),
    END_POSTS(
            "end-post-under-end-joist",
            Severity.WARNING,
            "The beam carries a joist out beyond its last post: set the end post under the end joist, so that the beam does"
                    + " not tip or bend there.",
            "common practice, no source"),
    PLUMB(
            "posts-plumb",
            Severity.INFO,
            "Set every post plumb in both directions and look again after every turn of a screw: a post that leans pushes"
                    + " sideways.",
            "OSHA 29 CFR 1926.703(b)(7), written for shores of formwork, from memory"),
    CROWN_UP(
            "crown-up",
            Severity.INFO,
            "Lay every ply of the beam with its crown up, so that load straightens the beam.",
            "common practice, no source"),
    LEVEL_BASE(
            "base-level",
            Severity.INFO,
            "Bed every pad level on firm ground and every base plate flat on its pad, without shims that can work loose.",
            "OSHA 29 CFR 1926.703(b)(5) and (b)(6), written for shores of formwork, from memory"),
    PAD_CENTRE(
            "post-over-pad-centre",
            Severity.INFO,
            "Stand every post over the centre of its pad: off it, one edge of the pad presses harder than is worked out here.",
            "common practice, no source");

    private final String code;
    private final Severity severity;
    private final String message;
    private final String source;

    Practice(String code, Severity severity, String message, String source) {
        this.code = code;
        this.severity = severity;
        this.message = message;
        this.source = source;
    }

    /** The stable name. */
    String code() {
        return code;
    }

    /** The advisory, said of the whole job. */
    Advisory advice() {
        return at("");
    }

    /** The advisory, said of a place. */
    Advisory at(String place) {
        return new Advisory(code, severity, place, message, source);
    }

    /** The advisory with what was noted on site, where something was. */
    Advisory noted(String note) {
        return note.isEmpty() ? advice() : new Advisory(code, severity, "", message + " Noted: " + note + ".", source);
    }
}
