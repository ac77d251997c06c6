/**
 * One plan as text in, one answer out: the door that every mouth of the service frames. {@link
 * dev.underprop.wire.door.PlanDoor} reads, judges and words; {@link dev.underprop.wire.door.Documents} writes answers as
 * text, the same bytes on every run.
 */
package dev.underprop.wire.door;
