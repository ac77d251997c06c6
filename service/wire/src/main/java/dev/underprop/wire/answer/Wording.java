package dev.underprop.wire.answer;

import dev.underprop.engine.check.Bound;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Verdict;
import dev.underprop.wire.quantity.Kind;
import java.util.Locale;

/** The one place of the sentences that say how a check went. */
final class Wording {

    private final Figures figures;

    Wording(Figures figures) {
        this.figures = figures;
    }

    /** The result in one sentence or two, with the remedy where it fails and the reason where it was not made. */
    String message(CheckResult result) {
        String where =
                result.id().title() + (result.place().equals(CheckWriter.WHOLE_PLAN) ? "" : ", " + result.place());
        CheckResult.Finding finding = result.finding();
        if (finding instanceof CheckResult.Judged judged) {
            return judged(result, judged, where);
        }
        if (finding instanceof CheckResult.Refused refused) {
            return where + ": " + figures.words(kind(refused.measure()), refused.demand()) + " against nothing, for "
                    + refused.reason() + bound(result) + "." + remedy(result);
        }
        if (finding instanceof CheckResult.Condition condition) {
            return where + ": " + condition.reason() + condition(condition) + bound(result) + "." + remedy(result);
        }
        return finding instanceof CheckResult.NotChecked open
                ? where + ": not checked; " + open.reason() + "."
                : where + ": does not apply; " + ((CheckResult.NotApplicable) finding).reason() + ".";
    }

    private String judged(CheckResult result, CheckResult.Judged judged, String where) {
        Kind kind = kind(judged.measure());
        String numbers = figures.words(kind, judged.demand()) + " against " + figures.words(kind, judged.capacity());
        double ratio = result.ratio();
        if (Double.isNaN(ratio)) {
            return where + ": not checked; there is neither a demand nor a capacity.";
        }
        String share = Double.isInfinite(ratio) ? "no capacity" : "ratio " + Figures.ratio(ratio);
        String safety =
                result.id() == CheckId.TIPPING ? ", factor of safety " + safety(ratio) + " where 1.5 is wanted" : "";
        return where + ": " + numbers + ", " + share + safety + bound(result) + "." + remedy(result);
    }

    private static String safety(double ratio) {
        return Figures.ratio(ratio > 0 ? 1.5 / ratio : 0);
    }

    /** How things were taken to be in the case that governs, in brackets; nothing where it does not matter. */
    private static String bound(CheckResult result) {
        String words = result.where() instanceof CheckResult.InCase in ? words(in.bound()) : "";
        return words.isEmpty() ? "" : " (" + words + ")";
    }

    /** How things were taken to be; empty where it does not matter. */
    static String words(Bound bound) {
        if (bound.equals(Bound.NONE)) {
            return "";
        }
        String fit = bound.fitUp().isEmpty() ? "" : ", " + bound.fitUp() + " by the fit-up tolerance";
        String ties = bound.fastenings().equals("as described") ? "" : ", fastenings: " + bound.fastenings();
        return bound.history() + ", posts: " + bound.posts() + fit + ties;
    }

    private String condition(CheckResult.Condition condition) {
        return condition.met() && condition.value() > 0
                ? ", at least with " + figures.words(kind(condition.measure()), condition.value())
                : "";
    }

    private static String remedy(CheckResult result) {
        return result.verdict() == Verdict.FAIL ? " " + remedy(result.id()) : "";
    }

    static Kind kind(Measure measure) {
        return switch (measure) {
            case FORCE -> Kind.FORCE;
            case STRESS -> Kind.STRESS;
            case PRESSURE -> Kind.PRESSURE;
            case DEFLECTION -> Kind.DEFLECTION;
            case MOMENT -> Kind.MOMENT;
        };
    }

    /** What a check is called inside a sentence. */
    static String title(CheckId id) {
        String title = id.title();
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    /** What usually helps, in one sentence. */
    static String remedy(CheckId id) {
        return switch (id) {
            case BEAM_BENDING, BEAM_SHEAR -> "Set posts closer together, or take a deeper beam or more plies.";
            case BEAM_BEARING_AT_POST -> "Take a larger head plate, more plies, or set posts closer together.";
            case BEAM_BEARING_AT_JOIST -> "Put a steel plate or a wider beam under the joist.";
            case BEAM_DEFLECTION_LIVE, BEAM_DEFLECTION_TOTAL, BEAM_DEFLECTION_LONG_TERM ->
                "Set posts closer together, or take a deeper beam.";
            case JOIST_BENDING, JOIST_SHEAR -> "Move the shore, add a second one, or set joists beside those there.";
            case JOIST_NOTCH ->
                "Carry the joist on its whole depth: a hanger, a block under the notch, or a joist beside it.";
            case JOIST_BEARING -> "Give the joist a longer seat.";
            case JOIST_DEFLECTION_LIVE, JOIST_DEFLECTION_TOTAL -> "Move the shore, or add a second one.";
            case BEARING_UPLIFT -> "Hold the joists down there by something of known strength, or move the shore.";
            case POST_RATING -> "Set posts closer together, or take a stronger type for this height.";
            case POST_CONTACT -> "Find out why it goes slack; move it, or leave it out and check the plan without it.";
            case PAD_SOIL_BEARING -> "Take a larger pad, or set posts closer together.";
            case PAD_OVERLAP -> "Set the posts further apart, or design one pad for both.";
            case SEAT_STRENGTH -> "Give the joist a longer seat or a stronger hanger, or take load onto a shore.";
            case SEAT_LENGTH -> "Give the joist or girder a longer seat, or a listed hanger.";
            case BASE_PLATE_BEARING ->
                "Take a larger base plate, a larger or stronger pad, or set posts closer together.";
            case PAD_ECCENTRICITY -> "Centre each post on its pad and stand it plumb, or take a larger pad.";
            case TIMBER_SERVICE -> "State whether the timber stays dry.";
            case TIMBER_TREATMENT -> "State whether the timber is treated and incised.";
            case BEAM_PLY_FASTENING ->
                "Nail every ply to the next as the table wants, and take plies that run through.";
            case BEAM_ROLL_RESTRAINT ->
                "Block or bracket the beam upright at every post, by something of known strength.";
            case POST_SIDEWAYS -> "Fasten head and foot by something of known strength, and keep the post plumb.";
            case POST_PLATES -> "Take thicker plates, or set posts closer together.";
            case PAD_STRENGTH ->
                "Take a thicker or stronger pad, a larger base plate, or set posts closer together; never a hollow block.";
            case PAD_SETTLEMENT -> "Take larger pads or firmer ground, or have the settlement judged by an engineer.";
            case GIRDER_BENDING, GIRDER_SHEAR, GIRDER_DEFLECTION_LIVE, GIRDER_DEFLECTION_TOTAL ->
                "Put a post under the girder, or take its load onto a shore.";
            case GIRDER_BEARING_AT_PIER -> "Give the girder a longer seat on its pier.";
            case BEARING_TRANSFER -> "Raise the posts until the bearing carries nothing before it goes.";
            case TIPPING -> "Hold its inner end down by something of known strength, or move the shore.";
            case SIDEWAYS_RESTRAINT -> "Brace the floor and the shore heads in both directions.";
            case INTAKE -> "Look for what the plan does not tell: chimney, tub, partitions, decay.";
            case LATERAL_LOADS -> "Have wind and seismic loads given by an engineer.";
            case EXCAVATION -> "Keep excavations away from the pads, or have them designed.";
        };
    }
}
