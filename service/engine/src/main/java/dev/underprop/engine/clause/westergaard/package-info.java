/** H. M. Westergaard: stress in a slab on ground under a round load, as later books give it. SI throughout. */
@NullMarked
package dev.underprop.engine.clause.westergaard;

import org.jspecify.annotations.NullMarked;
