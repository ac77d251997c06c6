/** The batch mouth: plans from files and folders, one outcome each. {@link dev.underprop.app.batch.Batch} runs it. */
@NullMarked
package dev.underprop.app.batch;

import org.jspecify.annotations.NullMarked;
