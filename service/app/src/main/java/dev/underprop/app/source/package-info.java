/**
 * Where plans come from: files, folders, archives, lines and the standard input, one after the other, each as the bytes of one plan
 * or as what is wrong with the place. {@link dev.underprop.app.source.Sources} opens them.
 */
@NullMarked
package dev.underprop.app.source;

import org.jspecify.annotations.NullMarked;
