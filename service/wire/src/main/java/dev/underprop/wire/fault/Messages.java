package dev.underprop.wire.fault;

import java.util.Locale;

/**
 * Every fault of reading: its code, what is wrong, and what to do about it. The code is the constant's name in
 * kebab-case and never changes once released; a constant ending in NEAR shares the code of its elder and only knows a
 * better remedy. {@code {0}}, {@code {1}} stand for the arguments given.
 */
public enum Messages {
    TOO_MANY_FAULTS("There are more faults than are listed here.", "Mend these first, then try again."),

    // Bytes and syntax
    DOCUMENT_TOO_LARGE("The document is larger than the limit.", "Send a smaller document."),
    DOCUMENT_EMPTY("There is no document here.", "Send one document; it starts as an object."),
    ENCODING_NOT_UTF8("The bytes are not UTF-8: {0}.", "Save the document as UTF-8."),
    SYNTAX("The text is not {0}: {1}.", "Mend the text at this line and column, or just before it."),
    TRAILING_CONTENT("There is something after the end of the document.", "Send one document and nothing else."),
    DEPTH_EXCEEDED("The document is nested deeper than the limit.", "Take out a level of nesting."),
    TOO_MANY_VALUES("The document holds more values than the limit.", "Send a smaller document."),
    TEXT_TOO_LONG("A text or a name is longer than the limit.", "Shorten it."),
    TEXT_CHARACTER("A text or a name holds the character {0}.", "Take the character out."),
    NUMBER_TOO_LONG("A number is written with more characters than the limit.", "Write it with fewer digits."),
    NUMBER_OUT_OF_RANGE(
            "The number is too large, too close to zero, or an integer beyond 2^53 - 1.",
            "Write a number that a double holds; write an identifier as text, in quotes."),
    NUMBER_NOT_FINITE("The number is not finite.", "Write a finite number, or leave the member out."),
    DUPLICATE_KEY("The name stands more than once in the same object.", "Keep one of them."),
    YAML_SEVERAL_DOCUMENTS("There are several YAML documents here.", "Send one document."),
    YAML_ANCHOR("Anchors are not read.", "Take out the anchor, and write the values out where they are used."),
    YAML_ALIAS("Aliases are not read.", "Write the values out in place of the alias."),
    YAML_TAG("Tags are not read.", "Take out the tag; put text in quotes."),
    YAML_MERGE_KEY("Merge keys are not read.", "Write the members out."),
    YAML_KEY_NOT_TEXT("A name is a list or an object.", "Write the name as text."),
    YAML_AMBIGUOUS_NUMBER(
            "YAML readers disagree about what this is.", "Write a plain decimal number, or put text in quotes."),

    // Shape
    UNKNOWN_MEMBER("The name {0} is not known here.", "Take it out, or use one of: {1}."),
    UNKNOWN_MEMBER_NEAR("The name {0} is not known here.", "Did you mean {1}?"),
    WRONG_KIND("Here stands {0}; {1} is wanted.", "{2}"),
    NOT_AN_INTEGER("The number is not a whole number.", "Write a whole number."),
    INTEGER_OUT_OF_RANGE("The whole number is out of range.", "Write a smaller number."),
    NULL_VALUE("Null is not a value here.", "Write the value, or leave the member out."),
    NULL_ELEMENT("Null is not an element of a list.", "Take the element out, or write its value."),
    DUPLICATE_ITEM("The item stands more than once in the list.", "Keep one of them."),

    // Quantities
    QUANTITY_EMPTY("There is no quantity here; {0} is wanted.", "Write one like {1}."),
    QUANTITY_TOO_LONG("The quantity is longer than the limit.", "Write it shorter."),
    QUANTITY_CHARACTER("The character {0} is not used in quantities.", "{1}"),
    QUANTITY_MALFORMED("This is not a number with a unit.", "Write one like {0}."),
    DECIMAL_COMMA("A comma is not used in numbers.", "Write the decimal point as a point, and thousands unmarked."),
    SIGN_INSIDE(
            "A sign stands inside the quantity, where it is unclear what it belongs to.",
            "Write one sign before the whole, and inches after feet as 6 ft 10 in or 6'-10\"."),
    UNIT_MISSING("The unit is missing; {0} is wanted.", "Write the number with a unit, like {1}."),
    UNIT_UNKNOWN("The unit {0} is not known.", "Use one of: {1}."),
    UNIT_UNKNOWN_NEAR("The unit {0} is not known.", "Write {1}."),
    UNIT_OF_MASS("{0} is a unit of mass, and {1} is wanted.", "Write a force: N, kN, lb or kip."),
    UNIT_AMBIGUOUS("The unit {0} means different things to different people.", "Write {1}."),
    WRONG_DIMENSION("{0} is not a unit of {1}.", "Use one of: {2}."),
    FRACTION_OF_ZERO("The fraction has a zero denominator.", "Write a fraction like 1/2."),
    FRACTION_NOT_BELOW_ONE("The fraction after a whole number is not less than one.", "Write one like 1 1/2."),
    FEET_NOT_WHOLE("Feet that are followed by inches are not a whole number.", "Write whole feet, then inches."),
    INCHES_NOT_BELOW_12("Inches after feet are 12 or more.", "Write {0}."),
    QUANTITY_NOT_FINITE("NaN and infinity are not quantities.", "Write a finite number with a unit."),
    QUANTITY_OUT_OF_RANGE("The number is too large or too close to zero.", "Write a number within reach."),

    // Limits and required members
    MEMBER_MISSING("The member {0} is missing.", "Give {0}."),
    TEXT_EMPTY("The text is empty.", "Write something, or leave the member out where it is not required."),
    LIST_TOO_SHORT("The list has too few items.", "Add what is missing."),
    LIST_TOO_LONG("The list has more items than the limit.", "Take items out, or divide the job."),
    NUMBER_TOO_SMALL("The number is below the limit.", "Write a number within the limit."),
    NUMBER_TOO_LARGE("The number is above the limit.", "Write a number within the limit."),

    // Meaning: values
    NOT_POSITIVE("The quantity is not above zero.", "Write a quantity above zero."),
    NEGATIVE("The quantity is below zero.", "Write zero or more; only positions and wind have a sign."),
    BEYOND_SENSE(
            "The quantity is beyond what this service computes with.",
            "Look at the number and its unit; nothing that is built is like this."),
    CHOICE_UNKNOWN("{0} is not a choice for {1}.", "Use one of: {2}."),
    CHOICE_UNKNOWN_NEAR("{0} is not a choice for {1}.", "Did you mean {2}?"),

    // Meaning: names
    NAME_UNKNOWN("There is no {0} named {1}.", "{2}"),
    NAME_UNKNOWN_NEAR("There is no {0} named {1}.", "Did you mean {2}?"),
    NAME_TWICE("There is another {0} named {1}.", "Give each a name of its own."),
    REMOVED_TWICE("{0} is removed twice in one situation, by itself or with its girder.", "Keep one of them."),
    CLEAR_TWICE("The bearing {0} stands twice in clear.", "Keep one of them."),
    LIFTED_TWICE("The post {0} is raised twice in one situation.", "Keep one of them."),
    GAP_TWICE("The joist {0} has two gaps at one seat.", "Keep one of them."),

    // Meaning: timber
    SPECIES_UNKNOWN("The species {0} is not in the tables.", "Use one of: {1}."),
    SPECIES_UNKNOWN_NEAR("The species {0} is not in the tables.", "Did you mean {1}?"),
    GRADE_UNKNOWN("The tables hold no grade {0} of {1}.", "Use one of: {2}."),
    GRADE_UNKNOWN_NEAR("The tables hold no grade {0} of {1}.", "Did you mean {2}?"),
    SIZE_UNKNOWN("The size {0} is not in the tables.", "Use one of: {1}; or give breadth and depth."),
    SIZE_UNKNOWN_NEAR("The size {0} is not in the tables.", "Did you mean {1}?"),
    SIZE_WITH_MEASURES(
            "A size stands together with breadth or depth.",
            "Give the size as sold, or breadth and depth as measured."),
    SIZE_MISSING("Neither a size nor breadth and depth are given.", "Give the size as sold, such as 2x10."),
    SECTION_OUTSIDE_TABLES(
            "The tables of dimension lumber do not hold this section.",
            "Have an engineer judge this member; values for lumber would not be right for it."),
    NET_INCOMPLETE(
            "What is left of the section is described by half: {0} is missing.",
            "Give netBreadth, netDepth and netBy."),
    NET_NOT_WITHIN("More is left than there was.", "Measure what is left, and look at the whole section."),
    NET_NOT_LESS(
            "What is left is the whole section.",
            "Take netBreadth, netDepth and netBy out, or give what notches, holes or decay have left."),
    INCISED_WITHOUT_PRESERVED("Only preserved wood is incised.", "Take incised out, or give the treatment: preserved."),

    // Meaning: floor
    ROW_INCOMPLETE(
            "A regular row of joists needs both count and spacing.", "Give count and spacing, or neither and no at."),
    NO_JOISTS("There are no joists.", "Give count and spacing, or list the joists in each."),
    JOISTS_OVERLAP("The joists {0} and {1} lie in the same place.", "Set them apart, or take one out."),
    BEARING_UNDER_NO_JOIST(
            "No joist passes over the bearing {0}.", "Look at its at, at where it begins and ends, and at the joists."),
    STIFFNESS_MISSING("A spring needs a stiffness.", "Give its stiffness, or state that it is rigid."),
    STIFFNESS_TWO_WAYS(
            "It is said in two ways how stiff it is.",
            "Give rigid, or stiffness, or soft and stiff, one of the three."),
    STIFFNESS_RANGE_INCOMPLETE(
            "The range of stiffness is given by half: {0} is missing.", "Give soft and stiff, or one stiffness."),
    STIFFNESS_RANGE_TURNED("The stiff bound is softer than the soft one.", "Look at soft and stiff."),
    STIFFNESS_WITH_RIGID("What is rigid has no stiffness.", "Take the stiffness out, or do not state rigid."),
    BEARING_MEMBER_FOREIGN(
            "The member {0} does not belong to {1}.", "Take it out, or look at the kind of the bearing."),
    PIER_OFF_GIRDER(
            "The pier {0} does not stand under its girder.", "Look at its at, and at start and length of the beam."),
    PIERS_TOO_CLOSE("The piers {0} and {1} stand in the same place.", "Set them apart, or take one out."),
    EXTENT_EMPTY("It ends where it begins, or before.", "Give an end beyond the beginning."),
    SEAT_UNSTATED(
            "It is not said what carries the seat.", "Give load of a hanger or ledger, or the surface of a flat seat."),
    SEAT_TWO_WAYS("The seat is said to hang, and to be flat.", "Give load, or surface with pressure, not both."),
    GAP_WITH_FASTENING(
            "The bearing is fastened, and joist {0} has a gap on it.",
            "Take the gap or the fastening out: what hangs clear holds nothing down."),
    GAP_WITHOUT_SEAT("The joist {0} does not pass over this seat.", "Take the gap out, or look at the joist's place."),
    CONTACTS_TOO_CLOSE(
            "Two seats lie under one joist closer together than is computed: {0} and {1}, joist {2}.",
            "Set them farther apart, or take one out."),

    // Meaning: loads
    LOAD_EMPTY("The load has no part.", "Give at least one of dead, live, roofLive, snow, wind and seismic."),
    LOAD_MEMBER_FOREIGN("The member {0} does not belong to {1}.", "Take it out."),
    LOAD_PLACE_MISSING("It is not said where the load is: {0} is missing.", "Give {0}."),
    LOAD_PLACE_TWICE("It is said twice where the load is: {0} and {1}.", "Keep one of them."),
    LOAD_UNCARRIED(
            "The load lies, wholly or in part, where nothing carries it.",
            "Look at its place and extent, and at the floor."),
    SNOW_LEVEL_MISSING("The level of the snow load is missing.", "Give snowLevel: allowable or strength."),
    SNOW_LEVEL_WITHOUT_SNOW("A level of the snow load stands without a snow load.", "Take it out, or give snow."),

    // Meaning: shores
    SHORE_UNDER_NO_JOIST(
            "No joist passes over the shore {0}.", "Look at its at, and at start and length of the joists."),
    BEAM_OFF_FLOOR("The beam of shore {0} lies beside the floor.", "Look at start and length of the beam."),
    JOIST_BESIDE_BEAM(
            "The joist {0} passes beside the beam of shore {1}.",
            "Make the beam long enough, or state partial: true if it is meant so."),
    POST_OFF_BEAM("The post {0} does not stand under the beam of its shore.", "Look at its at, or lengthen the beam."),
    POSTS_TOO_CLOSE("The posts {0} and {1} stand in the same place.", "Set them apart, or take one out."),
    LIFT_WITH_GAP(
            "The post {0} is raised and stands clear of the beam.",
            "Give the gap, or the lift beyond touching, not both."),
    WALL_TOO_THICK("The wall of the tube is more than half of its diameter.", "Look at wall and diameter."),
    PROP_CLASS_UNKNOWN(
            "This is no class of EN 1065 with its size.",
            "Give it as marked, such as B35; sizes go from 25 to 55, of A to 40."),
    INNER_TUBE_TOO_WIDE(
            "The inner tube does not fit into the outer one.", "Look at the diameters, and at the outer wall."),
    OVERLAP_TOO_LONG("The tubes overlap by more than the outer tube is long.", "Look at overlap and outerLength."),
    HOLE_TOO_NARROW("The hole is narrower than its pin.", "Look at hole and diameter."),
    STRENGTH_BELOW_YIELD("The tensile strength is below the yield stress.", "Look at both, and at their units."),
    SCREW_TWO_WAYS("A screw is described, and it is said that there is none.", "Keep one of screw and noScrew."),
    JOINT_OF_ONE_PLY("A post of one ply has nothing to join.", "Give plies, or take the joint out."),
    POST_MADE_TWO_WAYS("A post is said to be of timber, and of steel.", "Keep the timber, or what is of steel."),
    TUBE_NOT_PLAIN(
            "A tube is said to be plain, and the post to be telescopic or of a class of props.",
            "Leave out plain, or leave out telescope and propClass."),
    SHANK_TWO_WAYS("What meets the plate is said to be round, and to be square.", "Give round or square, not both."),
    RATING_NOT_RISING("The rows of the rating do not rise in height.", "Sort the rows by height, one row a height."),
    FACTOR_MISSING("A characteristic rating needs a factor.", "Give the factor that its loads are divided by."),
    FACTOR_REFUSED("An allowable rating has no factor.", "Take the factor out, or state that it is characteristic."),
    RESTRAINT_UNSTATED("It is not said what holds it.", "Give by, or free: true where nothing does."),
    RESTRAINT_TWO_WAYS("It is said to be held, and to be free.", "Give by, or free: true, not both."),
    PLIES_TWO_WAYS("Every ply is said to run through, and there are joints.", "Give whole: true, or joints, not both."),
    PLY_UNKNOWN("The beam has no ply {0}.", "Count the plies from 1 to {1}."),
    JOINT_OFF_BEAM("The joint is not within the beam.", "Look at its at, and at start and length of the beam."),
    POST_END_UNSTATED(
            "It is not said what fastens this end of the post.", "Give by, or loose: true where nothing does."),
    POST_END_TWO_WAYS(
            "This end of the post is said to be fastened, and to be loose.", "Give by, or loose: true, not both."),

    // Meaning: situations
    GIRDER_PART(
            "A part of the girder {0} is taken out, and parts are taken out of sills and walls only.",
            "Remove piers of the girder instead, or the whole girder."),
    PART_OF_REMOVED("The bearing {0} is out as a whole, and in part.", "Keep one of them."),
    PART_UNDER_NO_JOIST(
            "No joist rests on this part of the bearing {0}.",
            "Look at from and to, and at the joists on the bearing."),
    CLEAR_OF_REMOVED(
            "The bearing {0} is out, and the floor is to be raised clear of it.",
            "Take it out of clear, or out of removed."),

    // Meaning: circumstances
    LATERAL_UNSTATED(
            "It is not said what sideways loads there are.", "Give forces, or none: true where there are none."),
    LATERAL_TWO_WAYS("There are sideways loads, and it is said that there are none.", "Give forces, or none: true."),
    LATERAL_FORCE_EMPTY("The sideways force {0} has no value.", "Give along, across, or both."),
    LATERAL_ZERO("Every sideways force is zero.", "Give a force above zero, or state none: true."),
    EXCAVATION_UNSTATED(
            "It is not said whether the ground is cut.", "Give cuts, or none: true where the ground is not cut."),
    EXCAVATION_TWO_WAYS("There are cuts, and it is said that there are none.", "Give cuts, or none: true."),
    INTAKE_TWICE("The question {0} is answered twice.", "Keep one answer."),
    INTAKE_LOAD_FOREIGN("The question {0} asks for no load.", "Take the load out."),
    INTAKE_LOAD_WITHOUT_YES("A load is named, and the answer is not yes.", "Take the load out, or answer yes."),
    TRANSFER_INCOMPLETE(
            "The damage limit is described by half: {0} is missing.",
            "Give transferSlope and transferCriterion, or neither."),

    SETTLEMENT_INCOMPLETE(
            "The limit of settlement is described in part: {0} is missing.",
            "Give settlement, settlementSlope and settlementCriterion, or none of them."),

    // Meaning: lift
    LIFT_BY_JACK(
            "Posts are lifted by jacks beside them, and no jack is described.",
            "Give jacks: each with its place on the beam, its height, its stroke and a pad of its own; or turn screws under load."),
    JACKS_FOREIGN("Jacks are described, and screws are turned under load.", "Take the jacks out, or look at method."),
    JACK_TWICE("Two jacks are described for post {0}.", "Give each post one jack."),
    JACK_MISSING(
            "The post {0} is to be raised or let down, and no jack stands beside it.",
            "Describe a jack for it, or take its target out."),
    JACK_OFF_BEAM("The jack {0} does not stand under the beam of its post.", "Look at its at."),
    JACK_IN_THE_WAY(
            "The jack {0} stands where {1} stands, or its pad lies over the pad of {1}.",
            "Set it further away, on a pad of its own that lies clear of the pads of posts."),
    POINT_UNPLACED("It is not said where the point {0} lies.", "Give post, or along and across."),
    POINT_TWO_WAYS("It is said twice where the point {0} lies.", "Give post, or along and across, not both."),
    POINT_OFF_FLOOR("The point {0} does not lie on the floor.", "Look at its along and across."),
    LIFT_LEVEL_MISSING(
            "The post {0} is to move, and there is no level over it, or on either side of it on the line of its shore.",
            "Add a point over it, or take the target out."),
    LIFT_READING_MISSING(
            "The post {0} is to move, and nothing was read over it, or on either side of it on the line of its shore.",
            "Read the points on the line of its shore."),
    LIFT_WITHOUT_TARGET(
            "No post is asked to move.", "Give a target level, or targets of points on the line of a shore."),
    TARGET_WITHOUT_LEVEL("The target has a slope and no level.", "Give level, or take along and across out."),
    TURN_TOO_COARSE(
            "The smallest turn of the screw of post {0} moves it by {1}, more than one turn or one stage may: {2}.",
            "Set the screw more finely and state the smaller turn, or allow as much by one turn and one stage."),
    SCREW_UNSTATED("No screw is described for post {0}.", "Name the post in a screw, or give one without posts."),
    SCREW_TWICE(
            "Two screws are described for post {0}.", "Name each post once, and give one screw without posts at most."),
    FRICTION_INCOMPLETE("The friction of the thread is given by half: {0} is missing.", "Give both, or neither."),
    FRICTION_TURNED("The greatest friction is below the least.", "Look at frictionLeast and frictionMost."),
    COLLAR_INCOMPLETE("The collar has friction and no diameter.", "Give collarDiameter."),
    SLOPE_TWO_WAYS("The change of slope is limited in two ways.", "Give damage, or slope and slopeCriterion."),
    SLOPE_INCOMPLETE(
            "The limit of the change of slope is given by half: {0} is missing.",
            "Give slope and slopeCriterion, or a named damage, or neither."),
    CREPT_TURNED("The greatest crept share is below the least.", "Look at creptLeast and creptMost."),
    TURNED_WITHOUT_READINGS(
            "Screws were turned, and nothing was read.", "Give readings: without them no plan goes on."),
    TURNED_MISSING(
            "It is not said how far post {0} was raised.",
            "Name every post in turned; `0 in` for one that was not turned."),
    TURNED_TWICE("The post {0} stands twice in turned.", "Keep one of them."),
    READING_TWICE("The point {0} was read twice.", "Keep one of them."),

    // Meaning: pads
    PAD_FOREIGN("A pad of this kind and make has no {0}.", "Take {0} out, or look at kind and make."),
    PAD_RATING_INCOMPLETE(
            "The rating of the pad is described by half: {0} is missing.", "Give rating and ratingSource, or neither."),
    PAD_TWO_WAYS(
            "The strength of the pad is described in two ways.",
            "Give yieldStress or mat, or rating and ratingSource."),

    // Meaning: ground
    GROUND_TWO_WAYS(
            "The ground is described in two ways.",
            "Give table and class, or allowable and source, or strength: one of the three."),
    GROUND_INCOMPLETE("The ground is described by half: {0} is missing.", "Give {0}; or leave the section out."),
    GROUND_CLASS_UNKNOWN("The table has no class {0}.", "Use one of: {1}."),
    GROUND_CLASS_UNKNOWN_NEAR("The table has no class {0}.", "Did you mean {1}?"),
    GROUND_WITHOUT_VALUE(
            "The table gives no value for {0}: it carries no pad by a table.",
            "Have the ground investigated and give allowable with its source, or dig down to ground that has a class."),
    GROUND_GIVES_TWO_WAYS("It is said in two ways how far the ground gives.", "Give subgrade or elastic, not both."),
    SHEAR_UNSTATED(
            "The strength of the ground is described by half: {0} is missing.",
            "Give friction with cohesion, or undrained, or penetrometer."),
    SHEAR_TWO_WAYS(
            "The strength of the ground is described in two ways.",
            "Give friction with cohesion, or undrained, or penetrometer: one of the three."),
    SATURATED_TOO_LIGHT(
            "Ground below water is said to be no heavier than water.",
            "Give what it weighs with its water, above 62.4 pcf."),

    // Meaning: pads wanted
    POSTS_UNSTATED("It is not said which posts want pads.", "Give a plan, or loads."),
    POSTS_TWO_WAYS("There are a plan and loads.", "Give a plan, or loads, not both."),
    SIZING_TWICE(
            "The plan asks for pads itself.", "Take sizing out of the plan here, or have the plan checked as it is."),
    SITE_TWICE("The plan says it already: {0}.", "Take it out here, or out of the plan."),
    SITE_FOREIGN("With a plan, {0} belongs into the plan.", "Put it into the plan."),
    LOADS_EMPTY("The post {0} has no load.", "Give dead and what else it carries, or service."),
    LOADS_TWO_WAYS(
            "The load of post {0} is given in parts and as a sum.",
            "Give dead, live, roofLive and snow, or service and factored."),
    FACTORED_BELOW_SERVICE("The factored load is less than the other.", "Look at both; factored loads are greater."),
    STOCK_UNSTATED("There are no pads to try.", "Give stock, or pads in the plan."),
    PRICE_MISSING(
            "Pads are to be chosen by cost, and the pad {0} has no price.", "Give its price, or another objective."),
    GROWTH_INCOMPLETE("The sizes are described by half: {0} is missing.", "Give {0}."),
    GROWTH_FOREIGN("A pad of this kind does not grow in {0}.", "Take {0} out."),
    GROWTH_TURNED("The greatest size is less than that of the pad.", "Give one that is at least that of the pad."),
    STOCK_TOO_LARGE("There are more sizes to try than the limit.", "Take larger steps, or fewer sizes.");

    private static final String NEAR = "_NEAR";

    private final String detail;
    private final String remedy;

    Messages(String detail, String remedy) {
        this.detail = detail;
        this.remedy = remedy;
    }

    /** The stable code, kebab-case. */
    public String code() {
        String elder = name().endsWith(NEAR) ? name().substring(0, name().length() - NEAR.length()) : name();
        return elder.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * A fault of this kind, its place still to be said.
     *
     * @param got what was found, empty when there is nothing to show
     * @param arguments values for the places {0}, {1}, ... of the templates; those taken from a request are shortened
     *     with {@link Fault#shown}
     */
    public Fault fault(String got, String... arguments) {
        return Fault.of(code(), filled(detail, arguments), filled(remedy, arguments))
                .withGot(got);
    }

    private static String filled(String template, String... arguments) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < template.length(); i++) {
            if (template.charAt(i) == '{') {
                out.append(arguments[template.charAt(i + 1) - '0']);
                i += 2;
            } else {
                out.append(template.charAt(i));
            }
        }
        return out.toString();
    }
}
