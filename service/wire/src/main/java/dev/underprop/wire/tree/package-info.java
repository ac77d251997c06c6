/**
 * The first step of reading: the bytes of one JSON or YAML document become a tree, or the list of everything that is
 * wrong with them as text: {@link dev.underprop.wire.tree.TreeReader}. A second pass over the same bytes,
 * {@link dev.underprop.wire.tree.Locator}, finds lines and columns when later steps have something to point at.
 */
@NullMarked
package dev.underprop.wire.tree;

import org.jspecify.annotations.NullMarked;
