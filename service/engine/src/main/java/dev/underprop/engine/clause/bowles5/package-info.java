/** J. E. Bowles, Foundation Analysis and Design, 5th edition: how far ground gives under a footing. SI throughout. */
@NullMarked
package dev.underprop.engine.clause.bowles5;

import org.jspecify.annotations.NullMarked;
