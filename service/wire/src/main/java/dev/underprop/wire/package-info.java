/** Job plan text in, one record out: reading, units, catalogue, every fault at once, results. */
@NullMarked
package dev.underprop.wire;

import org.jspecify.annotations.NullMarked;
