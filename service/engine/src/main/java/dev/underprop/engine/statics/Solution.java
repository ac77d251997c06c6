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
    private final Question question;
    private final ContactSolver solver;
    private final CaseAnswer answer;
    private final BitSet loose;
    private final double[] values;
    private final boolean[] pressing;
    private final int changes;
    private final boolean agrees;
    private double[] movements = {};

    Solution(
            ContactSolver solver,
            Outcome outcome,
            Question question,
            CaseAnswer answer,
            BitSet loose,
            int changes,
            boolean agrees) {
        this.agrees = agrees;
        this.outcome = outcome;
        this.question = question;
        this.pressing = answer.pressing();
        this.answer = answer;
        this.solver = solver;
        this.loose = loose;
        this.values = answer.values();
        this.changes = changes;
    }

    public Outcome outcome() {
        return outcome;
    }

    public LoadCase loadCase() {
        return question.loadCase();
    }

    /** Whether a contact is not there by the rules of the case. */
    public boolean absent(int contact) {
        return question.absent()[contact];
    }

    /** The rules by which the case was solved. */
    public Rules rules() {
        return question.rules();
    }

    /** Force at a contact (N), compression positive; 0 where open. */
    public double force(int contact) {
        return pressing[contact] ? values[contact] : 0;
    }

    /**
     * Clear space at a contact (m); 0 where closed. At an absent contact the distance between the place where it would
     * touch and what it would carry, which may be negative.
     */
    public double opening(int contact) {
        return pressing[contact] ? 0 : values[contact];
    }

    public boolean closed(int contact) {
        return pressing[contact];
    }

    /** Deflection of the carried member at a contact (m), downward positive. */
    public double movement(int contact) {
        if (movements.length == 0) {
            movements = answer.movements();
        }
        return movements[contact];
    }

    /**
     * Writes the row of this case, for diagrams to view.
     *
     * @param row of {@link ContactSolver#rowSize()} places
     */
    public void writeRow(double[] row) {
        answer.writeRow(row);
    }

    /** Writes shear, moment and load of one member into such a row, and not its deflection. */
    public void writeForces(int member, double[] row) {
        solver.writeForces(answer, question.loadCase(), member, row);
    }

    /** Stations at which a member is held, ascending. */
    public int[] supports(int member) {
        return answer.supports(member);
    }

    BitSet closed() {
        return answer.closure().closed();
    }

    Question question() {
        return question;
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

    /** Adds the forces at all contacts, times a factor, to an array by contact. */
    void addForces(double factor, double[] into) {
        for (int c = 0; c < into.length; c++) {
            into[c] += pressing[c] ? factor * values[c] : 0;
        }
    }

    /** The contact state in which it ended, equal to that of another case with the same contacts closed on the same props. */
    public Object state() {
        return new State(solver, answer.closure());
    }

    private record State(ContactSolver solver, Closure closure) {}

    /** Whether another case ended with the same contacts closed on the same props. */
    public boolean sameState(Solution other) {
        return solver == other.solver && answer.closure().equals(other.answer.closure());
    }

    /** Whether a member is held at the same places in another case. */
    public boolean sameSupports(Solution other, int member) {
        return sameState(other) || Arrays.equals(supports(member), other.supports(member));
    }

    /** Change of the contact force (N), or of the opening (m) where open, per unit factor of a unit load. */
    public double influence(int contact, int unit) {
        return solver.state(answer.closure()).response(unit).values()[contact];
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
