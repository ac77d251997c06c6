/** Benchmarks of the engine and the service; never shipped. */
@NullMarked
package dev.underprop.bench;

import org.jspecify.annotations.NullMarked;
