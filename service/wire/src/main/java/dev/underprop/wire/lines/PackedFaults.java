package dev.underprop.wire.lines;

import dev.underprop.wire.fault.Fault;
import java.io.IOException;

/** What can be wrong with files that hold many plans, in words. */
public final class PackedFaults {
    private PackedFaults() {}

    /** No line holds a plan. */
    static Fault emptyLines() {
        return Fault.of(
                "lines-empty",
                "There is no line with a plan.",
                "Write one plan a line as JSON, or use --allow-empty where that is as it should be.");
    }

    /** The lines are in another encoding. */
    static Fault utf16Lines() {
        return Fault.of(
                "encoding-not-utf8", "The lines are not written in UTF-8 but in UTF-16.", "Save the file as UTF-8.");
    }

    /** What is packed grows too much. */
    public static Fault bomb(Inflation.Bomb bomb) {
        return Fault.of(
                        "archive-bomb",
                        "The archive grows far beyond anything plans do; what follows in it was not read.",
                        "Give the plans unpacked if they are really that large.")
                .withGot(bomb.inflated() + " bytes out of " + bomb.packed())
                .withLimit(Inflation.RATIO + " times, above " + Inflation.FREE + " bytes");
    }

    /** What is packed cannot be unpacked. */
    public static Fault broken(IOException failure) {
        return Fault.of(
                        "archive-broken",
                        "The archive cannot be read on from here; what follows in it was not read.",
                        "Pack it again, or fetch it again.")
                .withGot(String.valueOf(failure.getMessage()));
    }
}
