package dev.underprop.wire.catalogue;

/**
 * A size as sold.
 *
 * @param name such as {@code 2x10}
 * @param breadth dressed thickness (m)
 * @param depth dressed width (m)
 */
public record DressedSize(String name, double breadth, double depth) {}
