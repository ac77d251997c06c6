package dev.underprop.wire.quantity;

/** What a quantity in a job plan measures; it decides which units are read and which SI unit the number is in. */
public enum Dimension {
    /** Length (m). */
    LENGTH("a length", "10 ft"),
    /** Force (N). */
    FORCE("a force", "8 kip"),
    /** Force along a line (N/m). */
    LINE_LOAD("a line load", "310 plf"),
    /** Force on an area, stress or modulus (Pa). */
    PRESSURE("a pressure", "40 psf"),
    /** Weight of a volume (N/m3). */
    UNIT_WEIGHT("a unit weight", "120 pcf"),
    /** Pressure for a settlement (N/m3). */
    SUBGRADE_MODULUS("a subgrade modulus", "100 pci"),
    /** Force for a movement (N/m). */
    STIFFNESS("a stiffness", "50 kip/in"),
    /** Angle (rad). */
    ANGLE("an angle", "1.5 deg"),
    /** Time that passes (s). */
    DURATION("a duration", "24 h");

    private final String phrase;
    private final String example;

    Dimension(String phrase, String example) {
        this.phrase = phrase;
        this.example = example;
    }

    /** The dimension with its article, as in "a length". */
    public String phrase() {
        return phrase;
    }

    /** The dimension without its article, as in "length". */
    public String noun() {
        return phrase.substring(phrase.indexOf(' ') + 1);
    }

    /** A quantity of this dimension in plan syntax. */
    public String example() {
        return example;
    }
}
