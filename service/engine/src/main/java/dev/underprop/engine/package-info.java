/** Pure computation in SI units (N, m, Pa, rad): no input or output, no clock, no mutable statics. */
@NullMarked
package dev.underprop.engine;

import org.jspecify.annotations.NullMarked;
