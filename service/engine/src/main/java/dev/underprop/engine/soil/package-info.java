/**
 * What ground bears and how far it gives, by published theories: bearing capacity by one author at a time, stress below a
 * loaded area, settlement of elastic ground, and layers. Pure functions in SI; nothing here knows of a plan.
 */
@NullMarked
package dev.underprop.engine.soil;

import org.jspecify.annotations.NullMarked;
