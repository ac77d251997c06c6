/**
 * Archives of plans checked by many machines, with the records of one: {@link dev.underprop.spark.ArchiveJob} is started by the
 * cluster, {@link dev.underprop.spark.Archive} is the job.
 */
@NullMarked
package dev.underprop.spark;

import org.jspecify.annotations.NullMarked;
