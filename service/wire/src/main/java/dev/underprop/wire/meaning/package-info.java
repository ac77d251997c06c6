/**
 * What a plan means: from its tree by way of the contract's model to the engine's records. {@link
 * dev.underprop.wire.meaning.ModelReader} binds and holds limits and required members; {@link
 * dev.underprop.wire.meaning.PlanReader} reads quantities, names, geometry and tables. Both tell every fault at once.
 */
package dev.underprop.wire.meaning;
