/**
 * The batch mouth: plans from many places, judged by several threads, told in the order of the input. {@link
 * dev.underprop.app.batch.Batch} runs it.
 */
@NullMarked
package dev.underprop.app.batch;

import org.jspecify.annotations.NullMarked;
