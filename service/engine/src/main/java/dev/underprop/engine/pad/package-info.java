/**
 * Pads and what is under them: the strength of a pad, the pressure and the settlement under it, cuts beside it, and how
 * far pad and post give. Pure functions of plan records and of demands already worked out.
 */
@NullMarked
package dev.underprop.engine.pad;

import org.jspecify.annotations.NullMarked;
