package dev.underprop.wire.answer;

import dev.underprop.engine.lift.LiftPlan;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.engine.lift.Limit;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.List;

/** What is said of a lift in words, as it can be read aloud on site. */
final class LiftWords {

    static final List<String> CAUTIONS = List.of(
            "Nobody under or above the bay while a screw is turned.",
            "Torque and the pull on the wrench are warnings only. They never prove what a post carries.",
            "Between stages the load is held by more than screws: packing or cribbing follows the floor as it rises (29 CFR"
                    + " 1926.305, read in a public copy of the rules of a state).",
            "A calculation aid. The local building code and a licensed engineer decide.",
            "What was not checked stands first in this answer. Not checked is never a pass.");

    /** Fractions in which a crew thinks, finest last. */
    private static final int[] PARTS = {1, 2, 4, 8, 16, 32, 64};

    private LiftWords() {}

    /** Turns in words: {@code 2 1/8 turns up}. */
    static String turns(double turns) {
        String way = turns < 0 ? " down" : " up";
        double size = Math.abs(turns);
        if (size < 1e-9) {
            return "no turn";
        }
        for (int part : PARTS) {
            double parts = size * part;
            if (Math.abs(parts - StrictMath.rint(parts)) < 1e-6 * part) {
                return fraction((long) StrictMath.rint(parts), part) + (size > 1 + 1e-9 ? " turns" : " turn") + way;
            }
        }
        return Figures.ratio(size) + " turns" + way;
    }

    private static String fraction(long parts, int part) {
        long whole = parts / part;
        long rest = parts % part;
        if (rest == 0) {
            return Long.toString(whole);
        }
        return (whole > 0 ? whole + " " : "") + rest + "/" + part;
    }

    static String sentence(String words) {
        String first = words.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
        return first + words.substring(1) + (words.endsWith(".") ? "" : ".");
    }

    static String headline(LiftPlan plan, Figures figures) {
        String largest = figures.words(Kind.DEFLECTION, plan.count().largest());
        return switch (plan.outcome()) {
            case PLANNED ->
                "The lift can be made: " + largest + " at the most, in " + stages(plan)
                        + "; every turn keeps every limit.";
            case INCOMPLETE ->
                !plan.reason().isEmpty()
                        ? "Stop: turn no screw. " + sentence(plan.reason())
                        : "The lift keeps every limit that could be checked: " + largest + " at the most, in "
                                + stages(plan) + "; but it is not fully checked: see what was not.";
            case SHORT ->
                "The lift ends short of its targets, in " + stages(plan) + ": "
                        + reason((LiftPlan.Stopped) plan.obstacle(), figures);
            case IMPOSSIBLE ->
                "Do not begin: this lift cannot be made under its limits. "
                        + reason((LiftPlan.Stopped) plan.obstacle(), figures);
            case UNSTABLE -> "Do not begin: " + plan.reason() + ".";
        };
    }

    private static String stages(LiftPlan plan) {
        int turns = plan.stages().stream().mapToInt(s -> s.turns().size()).sum();
        int count = plan.stages().size();
        return count + (count == 1 ? " stage" : " stages") + " of " + turns + " turns in all";
    }

    static String reason(LiftPlan.Stopped stopped, Figures figures) {
        String where = "In stage " + stopped.stage() + ", at a raise of "
                + figures.words(Kind.DEFLECTION, stopped.raised()) + ", the next turn of " + stopped.post();
        if (!stopped.moves().isEmpty()) {
            return where + " fails: " + stopped.moves() + ".";
        }
        Limit limit = stopped.limit();
        return switch (limit.kind()) {
            case POST -> where + " would load post " + limit.place() + " to " + times(stopped) + " what it may carry.";
            case PAD ->
                where + " would press the ground under the pad of " + limit.place() + " to " + times(stopped)
                        + " what it may take.";
            case BEAM ->
                where + " would bend or shear " + limit.place() + " to " + times(stopped) + " what it may bear.";
            case JOIST ->
                where + " would bend or shear joist " + limit.place() + " to " + times(stopped) + " what it may bear.";
            case CONTACT ->
                where + " would open " + limit.place() + " by " + figures.words(Kind.DEFLECTION, stopped.value())
                        + ", which is to stay closed.";
            case TIE ->
                where + " would pull " + limit.place() + " with " + figures.words(Kind.FORCE, stopped.value())
                        + ", more than its fastening is said to hold.";
            case SLACK ->
                where + " would leave post " + limit.place() + " clear of the beam by "
                        + figures.words(Kind.DEFLECTION, stopped.value()) + ", and it is not fastened.";
            case SLOPE ->
                where + " would change the slope from " + limit.place() + " by 1/"
                        + StrictMath.round(1 / stopped.value()) + ", where 1/" + StrictMath.round(1 / limit.allowed())
                        + " is allowed.";
            case TRAVEL ->
                "The screw of " + limit.place() + " would have to go "
                        + figures.words(Kind.DEFLECTION, stopped.value()) + " and has "
                        + figures.words(Kind.DEFLECTION, limit.allowed()) + ".";
            case TOTAL ->
                limit.place() + " would have to be raised " + figures.words(Kind.DEFLECTION, stopped.value())
                        + " in all, where " + figures.words(Kind.DEFLECTION, limit.allowed()) + " is allowed.";
        };
    }

    private static String times(LiftPlan.Stopped stopped) {
        double used = stopped.value() / stopped.limit().allowed();
        return Double.isInfinite(used) ? "more than" : Figures.ratio(used) + " times";
    }

    static List<String> stopRules(LiftRequest request, Figures figures) {
        List<String> rules = new ArrayList<>();
        rules.add("Read every point after every stage, before anyone goes in. Stop when a reading lies outside what is"
                + " expected by more than "
                + figures.words(Kind.DEFLECTION, request.survey().tolerance())
                + ": look for a pad that settles, a post that is slack or leans, a joist that does not follow the beam; then"
                + " plan again from the readings.");
        rules.addAll(request.byJacks() ? byJacks() : underLoad());
        rules.add("Stop when a post leans, a plate bends, a beam rolls or a pad tilts or cracks.");
        rules.add("Stop at any loud crack, at a door that jams, at a pipe, duct or chimney that does not follow.");
        rules.add(
                "Stop when a crack opens or grows wider than 1/32 in: very slight damage ends at about 1 mm (Burland 1977,"
                        + " read in a public copy).");
        rules.add(
                "Hold at least " + figures.words(Kind.DURATION, request.limits().hold())
                        + " after every stage, then read again before the next.");
        if (!request.progress().readings().isEmpty()) {
            rules.add(
                    "This plan goes on from readings: begin no sooner than that hold after the last turn that was made"
                            + (Double.isNaN(request.limits().perDay()) ? "." : ", and no sooner than 24 h after it."));
        }
        return rules;
    }

    private static List<String> underLoad() {
        return List.of(
                "Stop when a screw turns harder than its greatest torque, or suddenly easier, or cannot be turned by one"
                        + " person: the load is not where it is thought to be.");
    }

    private static List<String> byJacks() {
        return List.of(
                "One jack at a time. Set it upright on its own pad under the middle of the beam, packed tight, and see that neither"
                        + " beam nor jack can roll or lean (common practice, no source).",
                "Raise the jack only until the post's screw turns by hand, and follow with the screw as the floor rises: never more"
                        + " than its smallest turn of clear space over the post.",
                "Stop when the jack's gauge tells more than the greatest load stated here, when the jack sinks back, leans or bleeds,"
                        + " or when the post is not free within the lift stated here. A gauge is a warning, never a proof of load.",
                "Let the jack off slowly onto the post, see that the post carries, and only then go to the next. Nobody goes under"
                        + " while a jack holds: what was raised is cribbed, blocked or secured at once (29 CFR 1926.305, read in a"
                        + " public copy of the rules of a state).");
    }

    static List<String> assumptions(LiftRequest request, LiftPlan plan) {
        List<String> all = new ArrayList<>(plan.basis().said());
        all.add("Every turn was looked at under "
                + String.join(", ", plan.basis().combinations())
                + ", live load everywhere; for posts, pads, contacts and fastenings also with live load only where it"
                + " relieves a bearing, post or pier; and for standing at all with 0.6 of dead load against the same. Each with"
                + " posts and ground " + String.join("; ", plan.basis().bounds()) + ".");
        all.add(
                "The floor as each stage leaves it was looked at under every limit with every pattern of live load too: until"
                        + " then nobody is on it.");
        all.add(
                "Loads of posts, levels and torque are those under dead load; the floor is measured from as it was found.");
        if (!Double.isNaN(request.limits().slope().value())) {
            all.add("Change of slope between neighbours from as found: "
                    + request.limits().slope().name() + ".");
        }
        all.add(
                "A raised post that is not fastened may stand clear by no more than its own smallest turn closes (common"
                        + " practice, no source).");
        if (request.byJacks()) {
            all.add(
                    "While a jack holds, every limit was looked at with the post beside it carrying nothing: where it just comes free with"
                            + " its screw at the lower end of the turn, with the beam over it raised by the turn and one smallest turn"
                            + " more, and between them wherever a contact opens or closes; and, for posts, pads, contacts, fastenings"
                            + " and standing, in the first two places with the post ready at either end of the turn while live load"
                            + " comes and goes.");
            all.add(
                    "Not looked at while a jack holds: live load that comes and goes between those two places, and whether the jack"
                            + " itself comes to carry nothing. Keep people and their loads off the floor for as long as one holds (common"
                            + " practice, no source).");
        }
        all.add("Raising a floor that has crept straightens timber that has grown crooked: it may spring back or crack"
                + " finishes however slowly it goes.");
        return all;
    }
}
