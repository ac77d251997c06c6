/**
 * What is judged and how a judgement is said. {@link dev.underprop.engine.check.CheckId} is the one table of checks,
 * {@link dev.underprop.engine.check.CheckResult} the one shape of a judgement; ratio and verdict are derived there and
 * nowhere else. {@link dev.underprop.engine.check.TimberCapacity} composes clauses for one member.
 */
package dev.underprop.engine.check;
