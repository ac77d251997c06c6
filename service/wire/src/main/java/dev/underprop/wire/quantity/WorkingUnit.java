package dev.underprop.wire.quantity;

/**
 * Units of the lines of a calculation record, by what they measure. Each system of units has two sets that go together, so
 * that every formula holds in them as it stands: one for sections and stresses, one for floors and ground.
 */
public enum WorkingUnit {
    /** A plain number. */
    NUMBER(plain("1"), plain("1"), plain("1"), plain("1")),
    /** Length (m). */
    LENGTH(Print.named("in"), Print.named("mm"), Print.named("ft"), Print.named("m")),
    /** Area (m2). */
    AREA(power("in", 2), power("mm", 2), power("ft", 2), power("m", 2)),
    /** Section modulus (m3). */
    SECTION_MODULUS(power("in", 3), power("mm", 3), power("ft", 3), power("m", 3)),
    /** Second moment of area (m4). */
    SECOND_MOMENT(power("in", 4), power("mm", 4), power("ft", 4), power("m", 4)),
    /** Force (N). */
    FORCE(Print.named("lb"), new Print("N", 1), Print.named("lb"), Print.named("kN")),
    /** Stress or pressure (Pa). */
    STRESS(Print.named("psi"), Print.named("MPa"), Print.named("psf"), Print.named("kPa")),
    /** Moment (N*m). */
    MOMENT(product("lb-in", "in", 1), new Print("N-mm", 1e-3), product("lb-ft", "ft", 1), new Print("kN-m", 1e3)),
    /** Flexural rigidity (N*m2). */
    RIGIDITY(product("lb-in2", "in", 2), new Print("N-mm2", 1e-6), product("lb-ft2", "ft", 2), new Print("kN-m2", 1e3)),
    /** Force along a line (N/m). */
    LINE_LOAD(Print.named("lb/in"), new Print("N/mm", 1e3), Print.named("plf"), Print.named("kN/m")),
    /** Weight of a volume, or pressure for a settlement (N/m3). */
    PER_VOLUME(Print.named("pci"), new Print("N/mm3", 1e9), Print.named("pcf"), Print.named("kN/m3")),
    /** Angle (rad). */
    ANGLE(Print.named("deg"), Print.named("deg"), Print.named("deg"), Print.named("deg"));

    private final String[] symbols;
    private final double[] sizes;

    WorkingUnit(Print sectionUs, Print sectionSi, Print siteUs, Print siteSi) {
        this.symbols = new String[] {sectionUs.symbol(), sectionSi.symbol(), siteUs.symbol(), siteSi.symbol()};
        this.sizes = new double[] {sectionUs.size(), sectionSi.size(), siteUs.size(), siteSi.size()};
    }

    private static Print plain(String symbol) {
        return new Print(symbol, 1);
    }

    private static Print power(String base, int exponent) {
        return Print.power(base + exponent, base, exponent);
    }

    private static Print product(String symbol, String base, int exponent) {
        return new Print(
                symbol, Print.named("lb").size() * power(base, exponent).size());
    }

    private static int place(UnitSystem system, boolean site) {
        return (system == UnitSystem.US ? 0 : 1) + (site ? 2 : 0);
    }

    /** The unit's symbol. @param site whether the units of floors and ground are wanted */
    public String symbol(UnitSystem system, boolean site) {
        return symbols[place(system, site)];
    }

    /** A value in SI in that unit. */
    public double value(double value, UnitSystem system, boolean site) {
        return value / sizes[place(system, site)];
    }
}
