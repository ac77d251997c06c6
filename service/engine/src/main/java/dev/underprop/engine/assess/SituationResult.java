package dev.underprop.engine.assess;

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
     */
    public record Moves(String reason, String combination, String pattern) implements Stability {}

    /**
     * How good the numbers are and what they cost.
     *
     * @param residual greatest force (N) left over at the end of a member
     * @param penetration greatest overlap (m) at an open contact
     * @param cases cases solved
     * @param factorised contact states factorised
     * @param changes contact states tried beyond the first, over all cases
     */
    public record Quality(double residual, double penetration, int cases, int factorised, int changes) {}

    /**
     * A post.
     *
     * @param place its contact
     * @param name as the plan calls it
     * @param greatest greatest load (N)
     * @param least least load (N)
     * @param movement movement of the beam at the post under the greatest load (m), downward positive
     * @param byHand tributary load (N) in the case of the greatest load
     */
    public record PostResult(
            ContactPlace.OnPost place, String name, Extreme greatest, Extreme least, double movement, double byHand) {}

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

    /**
     * A member.
     *
     * @param name in the plan's names
     * @param beam whether it is a shore beam (else a joist)
     * @param sagging greatest sagging moment (N·m)
     * @param hogging greatest hogging moment (N·m), positive
     * @param shear greatest shear (N), positive
     * @param deflection greatest deflection between supports as part of its span: value is the deflection (m)
     */
    public record MemberResult(
            String name, boolean beam, Extreme sagging, Extreme hogging, Extreme shear, Extreme deflection) {}

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
     * @param forces force at each contact (N), in the order of {@link #contacts()}
     * @param openings clear space at each contact (m)
     * @param movements movement of the carried member at each contact (m), downward positive
     */
    public record PlainCase(
            String combination, String pattern, List<Double> forces, List<Double> openings, List<Double> movements) {}

    /** Whether the situation stands. */
    public boolean stands() {
        return stability instanceof Stands;
    }
}
