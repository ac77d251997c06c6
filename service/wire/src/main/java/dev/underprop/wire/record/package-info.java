/**
 * What became of plans, as records of the contract: where a plan stands, its outcome, and the record that every mouth and every
 * machine writes of it, the same bytes. {@link dev.underprop.wire.record.Outcomes} judges, {@link
 * dev.underprop.wire.record.PlanRecords} words.
 */
@NullMarked
package dev.underprop.wire.record;

import org.jspecify.annotations.NullMarked;
