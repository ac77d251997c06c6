package dev.underprop.engine.clause.powerscrew;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** What goes with the thread: collar, wrench, stress in the screw's root, and a screw known by its efficiency alone. */
public final class Screw {

    private static final String BOOK = "Shigley, Mechanical Engineering Design";
    private static final String EDITION = "10th edition";
    private static final Citation COLLAR = Citation.remembered(BOOK, EDITION, "equation 8-6, even wear");
    private static final Citation WORK = Citation.remembered(BOOK, EDITION, "equation 8-4");
    private static final Citation AXIAL = Citation.remembered(BOOK, EDITION, "equation 8-8");
    private static final Citation TWIST = Citation.remembered(BOOK, EDITION, "equation 8-7");
    private static final Citation GREATEST_SHEAR =
            Citation.remembered(BOOK, EDITION, "3-14, greatest shear of plane stress");
    private static final Citation PULL = Citation.remembered("statics", "", "torque over the length of the wrench");

    private Screw() {}

    /**
     * Torque lost in the collar (N·m).
     *
     * @param load (N), not negative
     * @param friction coefficient of the collar, positive
     * @param radius mean radius of the ring on which it turns (m), positive
     */
    public static Cited collar(double load, double friction, double radius) {
        Admissible.notNegative(load, "load");
        Admissible.positive(friction, "collar friction");
        Admissible.positive(radius, "collar radius");
        return new Cited(load * friction * radius, "Tc", COLLAR);
    }

    /** Torque (N·m) of a screw of which lead and efficiency are known. */
    public static Cited byEfficiency(double load, double lead, double efficiency) {
        Admissible.notNegative(load, "load");
        Admissible.positive(lead, "lead");
        Admissible.positive(efficiency, "efficiency");
        return new Cited(load * lead / (2 * Math.PI * efficiency), "T", WORK);
    }

    /** Pull at the end of a wrench (N); the sign is that of the torque. */
    public static Cited pull(double torque, double wrench) {
        return new Cited(torque / Admissible.positive(wrench, "wrench"), "P", PULL);
    }

    /** Axial stress in the root (Pa), compression. */
    public static Cited axial(double load, double root) {
        Admissible.positive(root, "root diameter");
        return new Cited(Admissible.notNegative(load, "load") / (Math.PI / 4 * root * root), "sigma", AXIAL);
    }

    /** Shear stress in the root from twisting (Pa). */
    public static Cited twist(double torque, double root) {
        Admissible.positive(root, "root diameter");
        return new Cited(16 * Math.abs(torque) / (Math.PI * root * root * root), "tau", TWIST);
    }

    /** Greatest shear stress (Pa) where both act. */
    public static Cited greatestShear(double axial, double twist) {
        return new Cited(Math.sqrt(axial * axial / 4 + twist * twist), "tau max", GREATEST_SHEAR);
    }
}
