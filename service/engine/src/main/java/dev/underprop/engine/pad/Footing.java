package dev.underprop.engine.pad;

import dev.underprop.engine.standard.Admissible;

/**
 * Forces in a stiff rectangular pad under a load that a smaller rectangle in its middle brings.
 *
 * @param along x size (m), positive
 * @param across y size (m), positive
 * @param depth that counts (m), positive
 * @param loadedAlong x size between the critical sections for bending (m), positive
 * @param loadedAcross y size between them (m), positive
 * @param pressure on the ground that bends the pad (Pa), not negative
 */
public record Footing(
        double along, double across, double depth, double loadedAlong, double loadedAcross, double pressure) {

    public Footing {
        Admissible.positive(along, "along");
        Admissible.positive(across, "across");
        Admissible.positive(depth, "depth");
        Admissible.positive(loadedAlong, "loaded size");
        Admissible.positive(loadedAcross, "loaded size");
        Admissible.notNegative(pressure, "pressure");
    }

    /** The same pad with the other side first. */
    public Footing turned() {
        return new Footing(across, along, depth, loadedAcross, loadedAlong, pressure);
    }

    /** How far it stands out in x (m); 0 under a plate that covers it. */
    public double cantilever() {
        return Math.max(0, (along - loadedAlong) / 2);
    }

    /** Moment of the part that stands out in x, over the whole width (N·m). */
    public double moment() {
        return pressure * across * cantilever() * cantilever() / 2;
    }

    /** Section modulus of the whole width (m³). */
    public double sectionModulus() {
        return across * depth * depth / 6;
    }

    /** One-way shear of what lies beyond a depth from the critical section in x (N). */
    public double oneWayShear() {
        return pressure * across * Math.max(0, cantilever() - depth);
    }

    /** Two-way shear outside a perimeter half a depth from the loaded area (N); 0 where the pad does not reach so far. */
    public double twoWayShear() {
        double inside = (loadedAlong + depth) * (loadedAcross + depth);
        boolean reaches = along > loadedAlong + depth || across > loadedAcross + depth;
        return reaches ? pressure * Math.max(0, along * across - inside) : 0;
    }

    /** That perimeter (m). */
    public double around() {
        return 2 * (loadedAlong + loadedAcross + 2 * depth);
    }

    /** Long over short side of the loaded area. */
    public double beta() {
        return Math.max(loadedAlong, loadedAcross) / Math.min(loadedAlong, loadedAcross);
    }
}
