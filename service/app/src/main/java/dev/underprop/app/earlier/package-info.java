/**
 * What was known before a run: findings that somebody has accepted, and the results of an earlier run. {@link
 * dev.underprop.app.earlier.Earlier} holds outcomes against both.
 */
@NullMarked
package dev.underprop.app.earlier;

import org.jspecify.annotations.NullMarked;
