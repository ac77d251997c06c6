package dev.underprop.engine.standard;

/** What a line of a calculation record measures; its value is in SI. */
public enum Dimension {
    /** A plain number. */
    NUMBER,
    /** Length (m). */
    LENGTH,
    /** Area (m²). */
    AREA,
    /** Section modulus (m³). */
    SECTION_MODULUS,
    /** Second moment of area (m⁴). */
    SECOND_MOMENT,
    /** Force (N). */
    FORCE,
    /** Stress or pressure (Pa). */
    STRESS,
    /** Moment (N·m). */
    MOMENT,
    /** Flexural rigidity (N·m²). */
    RIGIDITY,
    /** Force along a line (N/m). */
    LINE_LOAD,
    /** Weight of a volume, or pressure for a settlement (N/m³). */
    PER_VOLUME,
    /** Angle (rad). */
    ANGLE
}
