package dev.underprop.engine.assess;

import dev.underprop.engine.check.Bound;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.PlanVerdict;
import java.util.List;

/**
 * What became of one situation.
 *
 * @param name as the plan calls it
 * @param removed names of the bearings taken away
 * @param stability whether it stands
 * @param verdict over its checks
 * @param posts loads of the posts
 * @param contacts forces at every contact; empty where it does not stand
 * @param members moments, shears and deflections; empty where it does not stand
 * @param handChecks lever-rule figures, also where it does not stand
 * @param plainCases every combination with live load everywhere, contact by contact
 * @param checks worst result of each check and place
 * @param whatIf what the engineer asks besides strength
 * @param quality how good the numbers are
 */
public record SituationResult(
        String name,
        List<String> removed,
        Stability stability,
        PlanVerdict verdict,
        List<PostResult> posts,
        List<ContactResult> contacts,
        List<MemberResult> members,
        List<HandCheck> handChecks,
        List<PlainCase> plainCases,
        List<CheckResult> checks,
        WhatIf whatIf,
        Quality quality) {

    public SituationResult {
        removed = List.copyOf(removed);
        posts = List.copyOf(posts);
        contacts = List.copyOf(contacts);
        members = List.copyOf(members);
        handChecks = List.copyOf(handChecks);
        plainCases = List.copyOf(plainCases);
        checks = List.copyOf(checks);
    }

    /** Whether a situation stands. */
    public sealed interface Stability {}

    /** Everything is held in every case. */
    public record Stands() implements Stability {}

    /**
     * Something can move without resistance.
     *
     * @param reason in words
     * @param combination the first case in which it happens
     * @param pattern its live load pattern
     * @param bound how things were taken to be
     */
    public record Moves(String reason, String combination, String pattern, Bound bound) implements Stability {}

    /**
     * How good the numbers are and what they cost.
     *
     * @param residual greatest force (N) left over at the end of a member
     * @param penetration greatest overlap (m) at an open contact
     * @param cases cases solved
     * @param changes contact states tried beyond the first, over all cases
     */
    public record Quality(double residual, double penetration, int cases, int changes) {}

    /**
     * A post.
     *
     * @param place its contact
     * @param name as the plan calls it
     * @param greatest greatest load (N)
     * @param least least load (N)
     * @param movement movement of the beam at the post under the greatest load (m), downward positive
     * @param byHand tributary load (N) in the case of the greatest load
     * @param factored greatest load under strength combinations (N)
     * @param asFound greatest load if the floor hung as found when the shores were set (N), NaN where not followed
     * @param wished greatest load if the shores had been there before any load (N)
     */
    public record PostResult(
            ContactPlace.OnPost place,
            String name,
            Extreme greatest,
            Extreme least,
            double movement,
            double byHand,
            Extreme factored,
            double asFound,
            double wished) {}

    /** Whether a contact presses in all cases, in none, or in some. */
    public enum ContactState {
        CLOSED,
        OPEN,
        VARIES
    }

    /**
     * A contact.
     *
     * @param place which one
     * @param name in the plan's names
     * @param state over all cases
     * @param greatest greatest force (N), compression positive
     * @param least least force (N)
     */
    public record ContactResult(ContactPlace place, String name, ContactState state, Extreme greatest, Extreme least) {}

    /** What a member is. */
    public enum MemberKind {
        JOIST,
        BEAM,
        GIRDER
    }

    /**
     * A member.
     *
     * @param name in the plan's names
     * @param kind what it is
     * @param sagging greatest sagging moment (N·m)
     * @param hogging greatest hogging moment (N·m), positive
     * @param shear greatest shear (N), positive
     * @param deflection greatest deflection between supports as part of its span: value is the deflection (m)
     */
    public record MemberResult(
            String name, MemberKind kind, Extreme sagging, Extreme hogging, Extreme shear, Extreme deflection) {}

    /**
     * A figure by lever rule and tributary width.
     *
     * @param place in the plan's names
     * @param load (N); negative means uplift
     * @param combination the combination it is for
     */
    public record HandCheck(String place, double load, String combination) {}

    /**
     * One combination with live load everywhere.
     *
     * @param combination its name
     * @param pattern the pattern's name
     * @param bound how things were taken to be
     * @param forces force at each contact (N), in the order of {@link #contacts()}
     * @param openings clear space at each contact (m)
     * @param movements movement of the carried member at each contact (m), downward positive
     */
    public record PlainCase(
            String combination,
            String pattern,
            Bound bound,
            List<Double> forces,
            List<Double> openings,
            List<Double> movements) {}

    /** Whether the situation stands. */
    public boolean stands() {
        return stability instanceof Stands;
    }

    /**
     * What the engineer asks besides strength. Empty where the situation does not stand.
     *
     * @param bearings load on every bearing and pier, against as found
     * @param transfers what happens when a bearing goes
     * @param tipping factors against tipping, lowest first
     * @param sideways what must be held sideways
     * @param hangsOnTies whether something moves when what holds down is released
     */
    public record WhatIf(
            List<BearingLoad> bearings,
            List<Transfer> transfers,
            List<Tipping> tipping,
            List<Sideways> sideways,
            boolean hangsOnTies) {
        /** Nothing. */
        public static final WhatIf NOTHING = new WhatIf(List.of(), List.of(), List.of(), List.of(), false);

        public WhatIf {
            bearings = List.copyOf(bearings);
            transfers = List.copyOf(transfers);
            tipping = List.copyOf(tipping);
            sideways = List.copyOf(sideways);
        }
    }

    /**
     * Load on one bearing or pier, all seats together.
     *
     * @param name as the plan calls it
     * @param asFound under dead load as found (N), NaN where the floor does not stand as found
     * @param dead under dead load in this situation (N), posts rigid, after the history as found where it is followed
     * @param greatest greatest in any case (N)
     */
    public record BearingLoad(String name, double asFound, double dead, Extreme greatest) {}

    /**
     * What happens when a bearing or pier goes, under dead load, after the history as found; the worst stiffness of posts.
     *
     * @param name as the plan calls it
     * @param load on it just before (N)
     * @param seat greatest load on one seat of it (N)
     * @param movement of the floor where it was (m), downward positive, the greatest against what is allowed
     * @param place where that is, in the plan's names
     * @param allowed movement that the named limit allows there (m)
     * @param lift by which all posts must be raised more for the load on it to become zero (m), NaN where no lift up to
     *     {@code 3 in} does it
     */
    public record Transfer(
            String name, double load, double seat, double movement, String place, double allowed, double lift) {}

    /**
     * Safety against tipping of one member over one support.
     *
     * @param member in the plan's names
     * @param over the support it would turn over
     * @param holding moment that holds (N·m): 0.6 of dead load and fastenings
     * @param tipping moment that tips (N·m), in full
     * @param combination the combination of what tips
     */
    public record Tipping(String member, String over, double holding, double tipping, String combination) {
        /** Factor of safety. */
        public double factor() {
            return holding / tipping;
        }
    }

    /**
     * What must be held sideways.
     *
     * @param place the floor or a shore
     * @param direction along or across
     * @param force (N)
     * @param notional the part that stands for out of plumb and unforeseen (N)
     * @param declared what holds it, in words, empty when nothing is declared
     */
    public record Sideways(String place, String direction, double force, double notional, String declared) {}
}
