/**
 * Where in the text of a plan the things stand that an answer speaks of: {@link dev.underprop.wire.place.Whereabouts} leads from a
 * place such as {@code A2} or {@code beam of A} to line and column.
 */
@NullMarked
package dev.underprop.wire.place;

import org.jspecify.annotations.NullMarked;
