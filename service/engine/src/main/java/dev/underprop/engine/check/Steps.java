package dev.underprop.engine.check;

import dev.underprop.engine.standard.Step;
import java.util.List;

/**
 * The calculation record of one check: how its demand and its capacity come about. Demand, capacity and ratio themselves
 * are those of the check; here stand only the symbols of the lines that they are.
 *
 * @param scale which units suit it
 * @param lines in the order in which one computes; empty where no record was asked for or none is written
 * @param demand symbol of the line that is the demand, empty without lines
 * @param capacity symbol of the line that is the capacity, empty without lines or where a rule refuses
 */
public record Steps(Scale scale, List<Step> lines, String demand, String capacity) {

    /** Which units suit a record: all its formulas hold in them as they stand. */
    public enum Scale {
        /** Those of sections and stresses: pounds and inches, newtons and millimetres. */
        SECTION,
        /** Those of floors and ground: pounds and feet, kilonewtons and metres. */
        SITE
    }

    /** No record. */
    public static final Steps NONE = new Steps(Scale.SECTION, List.of(), "", "");

    public Steps {
        lines = List.copyOf(lines);
    }

    /** Whether there is anything to read. */
    public boolean written() {
        return !lines.isEmpty();
    }
}
