package dev.underprop.engine.check;

import java.util.List;

/**
 * The one table of checks. Ids say what is checked; clause numbers belong to citations. A check that is not built yet
 * stands here too, so that leaving it out can never look like passing it.
 */
public enum CheckId {
    BEAM_BENDING("beam-bending", "Shore beam in bending", Scope.ALWAYS, true),
    BEAM_SHEAR("beam-shear", "Shore beam in shear", Scope.ALWAYS, true),
    BEAM_BEARING_AT_POST("beam-bearing-at-post", "Shore beam pressed by a post's head plate", Scope.ALWAYS, true),
    BEAM_BEARING_AT_JOIST("beam-bearing-at-joist", "Joist and shore beam pressed together", Scope.ALWAYS, true),
    BEAM_DEFLECTION_LIVE("beam-deflection-live", "Shore beam deflection from live load", Scope.ALWAYS, true),
    BEAM_DEFLECTION_TOTAL("beam-deflection-total", "Shore beam deflection from all load", Scope.ALWAYS, true),
    BEAM_DEFLECTION_LONG_TERM(
            "beam-deflection-long-term", "Shore beam deflection after it has crept", Scope.ALWAYS, true),
    JOIST_BENDING("joist-bending", "Joist in bending", Scope.ALWAYS, true),
    JOIST_SHEAR("joist-shear", "Joist in shear", Scope.ALWAYS, true),
    JOIST_BEARING("joist-bearing", "Joist pressed on its bearing", Scope.ALWAYS, true),
    JOIST_DEFLECTION_LIVE("joist-deflection-live", "Joist deflection from live load", Scope.ALWAYS, true),
    JOIST_DEFLECTION_TOTAL("joist-deflection-total", "Joist deflection from all load", Scope.ALWAYS, true),
    JOIST_NOTCH("joist-notch", "Joist notched at its end", Scope.ALWAYS, true),
    GIRDER_BENDING("girder-bending", "Girder in bending", Scope.ALWAYS, true),
    GIRDER_SHEAR("girder-shear", "Girder in shear", Scope.ALWAYS, true),
    GIRDER_BEARING_AT_PIER("girder-bearing-at-pier", "Girder pressed on its pier", Scope.ALWAYS, true),
    GIRDER_DEFLECTION_LIVE("girder-deflection-live", "Girder deflection from live load", Scope.ALWAYS, true),
    GIRDER_DEFLECTION_TOTAL("girder-deflection-total", "Girder deflection from all load", Scope.ALWAYS, true),
    BEARING_UPLIFT("bearing-uplift", "Joist or girder lifting off its bearing", Scope.ALWAYS, true),
    POST_RATING("post-rating", "Post against its strength", Scope.ALWAYS, true),
    POST_CONTACT("post-contact", "Post that carries nothing", Scope.ALWAYS, true),
    PAD_SOIL_BEARING("pad-soil-bearing", "Pad pressure on the ground", Scope.ALWAYS, true),
    PAD_OVERLAP("pad-overlap", "Pads that lie over each other", Scope.ALWAYS, true),
    TIMBER_SERVICE("timber-service", "Moisture the timber stands in", Scope.ALWAYS, true),
    TIMBER_TREATMENT("timber-treatment", "Incising of treated timber", Scope.ALWAYS, true),
    BEAM_PLY_FASTENING("beam-ply-fastening", "Plies of the shore beam fastened together", Scope.ALWAYS, true),
    BEAM_ROLL_RESTRAINT("beam-roll-restraint", "Shore beam held against rolling over", Scope.ALWAYS, true),
    POST_SIDEWAYS("post-sideways", "Post head and foot held sideways", Scope.ALWAYS, true),
    POST_PLATES("post-plates", "Head and base plates in bending", Scope.ALWAYS, true),
    PAD_STRENGTH("pad-strength", "Pad in bending and shear", Scope.ALWAYS, true),
    SEAT_STRENGTH("seat-strength", "Sill, wall or girder under a joist", Scope.ALWAYS, true),
    SEAT_LENGTH("seat-length", "Length of the seat under a joist or girder", Scope.ALWAYS, true),
    BASE_PLATE_BEARING("base-plate-bearing", "Base plate pressed on its pad", Scope.ALWAYS, true),
    PAD_ECCENTRICITY("pad-eccentricity", "Load off the centre of a pad", Scope.ALWAYS, true),
    PAD_SETTLEMENT("pad-settlement", "Settlement of the pads", Scope.ALWAYS, true),
    BEARING_TRANSFER("bearing-transfer", "Movement when a bearing is taken away", Scope.ALWAYS, true),
    TIPPING("tipping", "Factor of safety against tipping", Scope.ALWAYS, true),
    SIDEWAYS_RESTRAINT("sideways-restraint", "Floor and shore heads held in both directions", Scope.ALWAYS, true),
    INTAKE("intake", "Questions that catch the classic accidents", Scope.ALWAYS, true),
    LATERAL_LOADS("lateral-loads", "Wind and seismic loads", Scope.BEARING_REMOVED, true),
    EXCAVATION("excavation", "Excavation beside a pad", Scope.BEARING_REMOVED, true);

    /** When a check is required. */
    public enum Scope {
        /** In every situation. */
        ALWAYS,
        /** In a situation with a bearing removed. */
        BEARING_REMOVED
    }

    private static final List<CheckId> ALL = List.of(values());
    private static final List<CheckId> OF_ANY_SITUATION =
            ALL.stream().filter(c -> c.scope == Scope.ALWAYS).toList();

    private final String id;
    private final String title;
    private final Scope scope;
    private final boolean built;

    CheckId(String id, String title, Scope scope, boolean built) {
        this.id = id;
        this.title = title;
        this.scope = scope;
        this.built = built;
    }

    /** The id as plans, reports and pages write it. */
    public String id() {
        return id;
    }

    /** A few words for people. */
    public String title() {
        return title;
    }

    /** When it is required. */
    public Scope scope() {
        return scope;
    }

    /** Whether this version can make the check; otherwise it is reported as not checked by name. */
    public boolean built() {
        return built;
    }

    /** Checks required in a situation. */
    public static List<CheckId> required(boolean bearingRemoved) {
        return bearingRemoved ? ALL : OF_ANY_SITUATION;
    }
}
