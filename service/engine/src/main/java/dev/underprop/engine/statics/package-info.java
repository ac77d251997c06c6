/**
 * The contact solve: joists on bearings and carriers, carriers on props, every contact pushing only.
 *
 * <p>{@link dev.underprop.engine.statics.ContactSolver} is the door. It takes a {@link
 * dev.underprop.engine.statics.Frame} and unit loads, and answers for any combination of them the force at each
 * contact, which contacts are closed, and how good the answer is. {@link
 * dev.underprop.engine.statics.Diagram} and {@link dev.underprop.engine.statics.Deflections} turn contact forces into
 * moment, shear and deflection.
 *
 * <p>Signs: forces and displacements downward are positive, a contact force is positive in compression, a sagging
 * moment is positive. Units: N, m, N·m.
 */
package dev.underprop.engine.statics;
