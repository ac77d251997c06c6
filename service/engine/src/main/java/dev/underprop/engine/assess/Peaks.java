package dev.underprop.engine.assess;

import dev.underprop.engine.statics.CaseGroup;
import java.util.Arrays;

/**
 * The greatest value met in each of a set of slots, with the case and place where it was met and the demand and capacity
 * behind it. Arrays, because it is touched thousands of times an assessment.
 */
final class Peaks {

    private static final int NEVER = -1;

    private final double[] value;
    private final double[] demand;
    private final double[] capacity;
    private final double[] at;
    private final int[] caseOf;

    Peaks(int slots) {
        this.value = new double[slots];
        this.demand = new double[slots];
        this.capacity = new double[slots];
        this.at = new double[slots];
        this.caseOf = new int[slots];
        Arrays.fill(value, Double.NEGATIVE_INFINITY);
        Arrays.fill(caseOf, NEVER);
    }

    /** Notes a plain value. */
    void note(int slot, double newValue, double place, int caseIndex) {
        if (newValue > value[slot]) {
            value[slot] = newValue;
            at[slot] = place;
            caseOf[slot] = caseIndex;
        }
    }

    /**
     * Notes the greatest and least of several values.
     *
     * @param values of the cases of the group, in its first places
     * @param index number of a case by its place in its block
     * @param number to be added to it
     */
    static void note(int slot, double[] values, CaseGroup group, int[] index, int number, Peaks most, Peaks least) {
        int highest = 0;
        int lowest = 0;
        for (int r = 1; r < group.size(); r++) {
            highest = values[r] > values[highest] ? r : highest;
            lowest = values[r] < values[lowest] ? r : lowest;
        }
        most.note(slot, values[highest], Double.NaN, number + index[group.place(highest)]);
        least.note(slot, -values[lowest], Double.NaN, number + index[group.place(lowest)]);
    }

    /** Notes a demand against a capacity; their ratio decides. */
    void note(int slot, double newDemand, double newCapacity, double place, int caseIndex) {
        // Zero over zero is no demand at all here; a demand on no capacity is beyond every ratio.
        double ratio = newDemand == 0 ? 0 : newDemand / newCapacity;
        if (ratio > value[slot]) {
            value[slot] = ratio;
            demand[slot] = newDemand;
            capacity[slot] = newCapacity;
            at[slot] = place;
            caseOf[slot] = caseIndex;
        }
    }

    boolean met(int slot) {
        return caseOf[slot] != NEVER;
    }

    double value(int slot) {
        return value[slot];
    }

    double demand(int slot) {
        return demand[slot];
    }

    double capacity(int slot) {
        return capacity[slot];
    }

    double at(int slot) {
        return at[slot];
    }

    int caseOf(int slot) {
        return caseOf[slot];
    }
}
