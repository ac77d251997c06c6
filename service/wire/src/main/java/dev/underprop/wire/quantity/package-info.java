/**
 * Quantities as the trade writes them, and back: {@link dev.underprop.wire.quantity.Quantity} reads text with a unit into
 * an SI number, {@link dev.underprop.wire.quantity.Kind} and {@link dev.underprop.wire.quantity.ValueWriter} print results.
 * This is the only place where units are converted.
 */
@NullMarked
package dev.underprop.wire.quantity;

import org.jspecify.annotations.NullMarked;
