/**
 * Screws that move a load: torque to raise and to lower it, what the screw keeps of the work, and whether it stays where it is
 * left. The rule is that of every textbook of machine design; the editions read are named beside the published figures. SI.
 */
@NullMarked
package dev.underprop.engine.clause.powerscrew;

import org.jspecify.annotations.NullMarked;
