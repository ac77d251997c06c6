/** What a building may suffer when its supports move against each other: published limits, each with its author and year. */
@NullMarked
package dev.underprop.engine.clause.distortion;

import org.jspecify.annotations.NullMarked;
