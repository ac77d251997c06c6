package dev.underprop.engine.check;

import dev.underprop.engine.clause.nds2018.DesignValue;

/**
 * What a calculation record calls a design value and its factors. Factors of bending, shear and bearing bear their plain
 * symbols; those of values that stand beside them in one record bear the value's letter.
 *
 * @param reference symbol of the reference value
 * @param meaning of it
 * @param mark that its factors bear
 * @param adjusted symbol of the value times its factors, but those of stability and, for shear, of duration
 * @param adjustedMeaning of it
 */
record TimberWords(String reference, String meaning, String mark, String adjusted, String adjustedMeaning) {

    private static final TimberWords BENDING =
            new TimberWords("Fb", "reference bending value", "", "Fb*", "all factors but CL");
    private static final TimberWords SHEAR =
            new TimberWords("Fv", "reference shear value", "", "Fv*", "all factors but CD");
    private static final TimberWords BEARING =
            new TimberWords("Fc⊥", "reference value across the grain", "", "F'c⊥", "adjusted value across the grain");
    private static final TimberWords COMPRESSION =
            new TimberWords("Fc", "reference value along the grain", "c", "Fc*", "all factors but CP");
    private static final TimberWords MODULUS = new TimberWords("E", "reference modulus", "E", "E'", "adjusted modulus");
    private static final TimberWords MODULUS_MIN =
            new TimberWords("Emin", "reference modulus for stability", "E", "E'min", "adjusted modulus for stability");

    static TimberWords of(DesignValue value) {
        return switch (value) {
            case BENDING, BENDING_STAR -> BENDING;
            case SHEAR -> SHEAR;
            case BEARING -> BEARING;
            case COMPRESSION, COMPRESSION_STAR -> COMPRESSION;
            case MODULUS -> MODULUS;
            case MODULUS_MIN -> MODULUS_MIN;
            case TENSION -> throw new IllegalArgumentException("no record tells of tension");
        };
    }

    String size() {
        return "CF" + mark;
    }

    String wet() {
        return "CM" + mark;
    }

    String incised() {
        return "Ci" + mark;
    }

    /** The product that the adjusted value is. */
    String product() {
        return switch (reference) {
            case "Fb" -> "Fb × CF × CM × Ci × Cr × CD";
            case "Fc" -> "Fc × CFc × CMc × Cic × CD";
            default -> mark.isEmpty() ? reference + " × CM × Ci" : reference + " × CME × CiE";
        };
    }
}
