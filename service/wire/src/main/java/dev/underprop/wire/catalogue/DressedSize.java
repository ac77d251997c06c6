package dev.underprop.wire.catalogue;

import dev.underprop.engine.standard.Citation;

/**
 * A size as sold.
 *
 * @param name such as {@code 2x10}
 * @param breadth dressed thickness (m)
 * @param depth dressed width (m)
 * @param citation where the sizes stand
 */
public record DressedSize(String name, double breadth, double depth, Citation citation) {}
