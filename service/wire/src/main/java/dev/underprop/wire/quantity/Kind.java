package dev.underprop.wire.quantity;

/**
 * What a printed number is; each kind has one unit in each system. Kinds that a plan can hold print units that a plan
 * may use.
 */
public enum Kind {
    /** Where something is, how high it stands, how far it spans (m). */
    POSITION(Print.named("ft"), Print.named("m"), true),
    /** Size of a section, plate, pad or gap (m). */
    SIZE(Print.named("in"), Print.named("mm"), true),
    /** A movement or a level (m). */
    DEFLECTION(Print.named("in"), Print.named("mm"), true),
    /** Force (N). */
    FORCE(Print.named("lb"), Print.named("kN"), true),
    /** Force along a line (N/m). */
    LINE_LOAD(Print.named("plf"), Print.named("kN/m"), true),
    /** Moment or torque (N*m). */
    MOMENT(Print.product("lb-ft", "lb", "ft"), new Print("kN-m", 1000), false),
    /** Force on an area, of floor or ground (Pa). */
    PRESSURE(Print.named("psf"), Print.named("kPa"), true),
    /** Stress, strength or modulus in a material (Pa). */
    STRESS(Print.named("psi"), Print.named("MPa"), true),
    /** Area of ground or floor (m2). */
    AREA(Print.power("ft2", "ft", 2), new Print("m2", 1), false),
    /** Area of a section or a plate (m2). */
    SECTION_AREA(Print.power("in2", "in", 2), new Print("mm2", 1e-6), false),
    /** Section modulus (m3). */
    SECTION_MODULUS(Print.power("in3", "in", 3), new Print("mm3", 1e-9), false),
    /** Second moment of area (m4). */
    SECOND_MOMENT(Print.power("in4", "in", 4), new Print("mm4", 1e-12), false),
    /** Force for a movement (N/m). */
    STIFFNESS(Print.named("lb/in"), Print.named("kN/m"), true),
    /** Weight of a volume (N/m3). */
    UNIT_WEIGHT(Print.named("pcf"), Print.named("kN/m3"), true),
    /** Pressure for a settlement (N/m3). */
    SUBGRADE_MODULUS(Print.named("pci"), Print.named("kN/m3"), true),
    /** Angle (rad). */
    ANGLE(Print.named("deg"), Print.named("deg"), true),
    /** Time that passes (s). */
    DURATION(Print.named("h"), Print.named("h"), true);

    private final String usUnit;
    private final double usSize;
    private final String siUnit;
    private final double siSize;
    private final boolean inPlans;

    Kind(Print us, Print si, boolean inPlans) {
        this.usUnit = us.symbol();
        this.usSize = us.size();
        this.siUnit = si.symbol();
        this.siSize = si.size();
        this.inPlans = inPlans;
    }

    /** The unit's symbol as results show it. */
    public String unit(UnitSystem system) {
        return system == UnitSystem.US ? usUnit : siUnit;
    }

    /**
     * A value in the unit of results.
     *
     * @param value in SI
     * @param system the system of the result
     * @return the value in {@link #unit}
     */
    public double value(double value, UnitSystem system) {
        return value / (system == UnitSystem.US ? usSize : siSize);
    }

    /** True when a plan can hold this kind, so that {@link #planText} may be asked for. */
    public boolean inPlans() {
        return inPlans;
    }

    /**
     * A value in plan syntax, as in {@code 3.5 in}, with at most nine significant digits.
     *
     * @param value in SI, finite
     * @param system the system to write it in
     * @throws IllegalStateException when a plan cannot hold this kind
     */
    public String planText(double value, UnitSystem system) {
        if (!inPlans) {
            throw new IllegalStateException("A plan holds no " + this);
        }
        return ValueWriter.nine(value(value, system)) + ' ' + unit(system);
    }
}
