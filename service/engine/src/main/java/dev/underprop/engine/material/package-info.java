/** Timber: reference values by species and grade (Pa), and the conditions that adjust them. */
@NullMarked
package dev.underprop.engine.material;

import org.jspecify.annotations.NullMarked;
