/**
 * Staged lifts: from surveyed levels to targets, screw by screw. Every single turn is a contact solve on the true state under
 * every bound of stiffness and every share of the sag that has crept, and keeps every limit. Door: {@link
 * dev.underprop.engine.lift.Lifter}.
 */
@NullMarked
package dev.underprop.engine.lift;

import org.jspecify.annotations.NullMarked;
