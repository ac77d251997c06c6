package dev.underprop.app.working;

import java.util.Map;

/** Sizes in SI of the units that stand in calculation records, told apart from those of the program. */
final class SizeOf {

    private static final double LB = 4.4482216152605;
    private static final double IN = 0.0254;
    private static final double FT = 0.3048;

    private static final Map<String, Double> UNITS = Map.ofEntries(
            Map.entry("1", 1.0),
            Map.entry("in", IN),
            Map.entry("mm", 1e-3),
            Map.entry("ft", FT),
            Map.entry("m", 1.0),
            Map.entry("in2", IN * IN),
            Map.entry("mm2", 1e-6),
            Map.entry("ft2", FT * FT),
            Map.entry("m2", 1.0),
            Map.entry("in3", IN * IN * IN),
            Map.entry("mm3", 1e-9),
            Map.entry("ft3", FT * FT * FT),
            Map.entry("m3", 1.0),
            Map.entry("in4", IN * IN * IN * IN),
            Map.entry("mm4", 1e-12),
            Map.entry("lb", LB),
            Map.entry("N", 1.0),
            Map.entry("kN", 1e3),
            Map.entry("psi", LB / (IN * IN)),
            Map.entry("MPa", 1e6),
            Map.entry("psf", LB / (FT * FT)),
            Map.entry("kPa", 1e3),
            Map.entry("lb-in", LB * IN),
            Map.entry("N-mm", 1e-3),
            Map.entry("lb-ft", LB * FT),
            Map.entry("kN-m", 1e3),
            Map.entry("lb-in2", LB * IN * IN),
            Map.entry("N-mm2", 1e-6),
            Map.entry("lb/in", LB / IN),
            Map.entry("N/mm", 1e3),
            Map.entry("plf", LB / FT),
            Map.entry("kN/m", 1e3),
            Map.entry("pci", LB / (IN * IN * IN)),
            Map.entry("N/mm3", 1e9),
            Map.entry("pcf", LB / (FT * FT * FT)),
            Map.entry("kN/m3", 1e3),
            Map.entry("deg", Math.PI / 180));

    private SizeOf() {}

    static double unit(String symbol) {
        Double size = UNITS.get(symbol);
        if (size == null) {
            throw new IllegalArgumentException("no unit " + symbol);
        }
        return size;
    }
}
