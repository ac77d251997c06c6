/**
 * The door of the engine: one plan in, one assessment out. {@link dev.underprop.engine.assess.Assessor} runs every
 * situation through all combinations and live load patterns and keeps, for each check and place, the worst.
 */
package dev.underprop.engine.assess;
