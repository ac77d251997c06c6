/**
 * The second step of reading: does the tree have the shape of the model, member by member, before anything is bound:
 * {@link dev.underprop.wire.shape.ShapeCheck}.
 */
@NullMarked
package dev.underprop.wire.shape;

import org.jspecify.annotations.NullMarked;
