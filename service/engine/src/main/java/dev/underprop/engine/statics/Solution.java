package dev.underprop.engine.statics;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The settled contacts of one case. Arrays are shared for speed and must not be changed.
 *
 * <p>{@link #outcome()} says whether the numbers may be used: in a mechanism or an unsettled case they may not.
 */
public final class Solution {

    /** How the search for the contact state ended. */
    public enum Outcome {
        /** Every closed contact presses, every open one is clear, and everything is held. */
        SETTLED,
        /** Contacts agree, but some member can move without resistance, or has moved further than its own length. */
        MECHANISM,
        /** No agreeing contact state was found within the bound on changes. */
        NOT_SETTLED
    }

    private final Outcome outcome;
    private final LoadCase loadCase;
    private final Rules rules;
    private final ContactState state;
    private final CaseAnswer answer;
    private final BitSet loose;
    private final double[] values;
    private final int changes;
    private final boolean agrees;

    Solution(
            Outcome outcome,
            LoadCase loadCase,
            Rules rules,
            CaseAnswer answer,
            BitSet loose,
            int changes,
            boolean agrees) {
        this.agrees = agrees;
        this.rules = rules;
        this.outcome = outcome;
        this.loadCase = loadCase;
        this.answer = answer;
        this.state = answer.state();
        this.loose = loose;
        this.values = answer.values();
        this.changes = changes;
    }

    public Outcome outcome() {
        return outcome;
    }

    public LoadCase loadCase() {
        return loadCase;
    }

    /** Whether a contact is not there by the rules of the case. */
    public boolean absent(int contact) {
        return rules.isAbsent(contact);
    }

    /** The rules by which the case was solved. */
    public Rules rules() {
        return rules;
    }

    /** Force at a contact (N), compression positive; 0 where open. */
    public double force(int contact) {
        return state.pressing(contact) ? values[contact] : 0;
    }

    /**
     * Clear space at a contact (m); 0 where closed. At an absent contact the distance between the place where it would
     * touch and what it would carry, which may be negative.
     */
    public double opening(int contact) {
        return state.pressing(contact) ? 0 : values[contact];
    }

    public boolean closed(int contact) {
        return state.pressing(contact);
    }

    /** Deflection of the carried member at a contact (m), downward positive. */
    public double movement(int contact) {
        return answer.movements()[contact];
    }

    /**
     * Writes the row of this case, for diagrams to view.
     *
     * @param row of {@link ContactSolver#rowSize()} places
     */
    public void writeRow(double[] row) {
        answer.writeRow(row);
    }

    /** Stations at which a member is held, ascending. */
    public int[] supports(int member) {
        return state.supports()[member];
    }

    ContactState state() {
        return state;
    }

    CaseAnswer answer() {
        return answer;
    }

    /**
     * Whether every contact agrees although something is loose: it is in balance, and moves freely only as far as the clear
     * space at its open contacts. The forces are those of equilibrium then.
     */
    public boolean balanced() {
        return outcome == Outcome.MECHANISM && agrees;
    }

    /** Whether another case ended with the same contacts closed on the same props. */
    public boolean sameState(Solution other) {
        return state == other.state;
    }

    /** Row of one unit at full value in this solution's contact state; shared, not to be changed. */
    public double[] unitRow(int unit) {
        return state.row(unit);
    }

    /** Whether a member is held at the same places in another case. */
    public boolean sameSupports(Solution other, int member) {
        return state == other.state || Arrays.equals(supports(member), other.supports(member));
    }

    /** Change of the contact force (N), or of the opening (m) where open, per unit factor of a unit load. */
    public double influence(int contact, int unit) {
        return state.response(unit).values()[contact];
    }

    /** Contact states tried beyond the first. */
    public int changes() {
        return changes;
    }

    /** Members that can move without resistance or have moved further than their length, numbered as in {@link Frame}. */
    public BitSet loose() {
        return (BitSet) loose.clone();
    }
}
