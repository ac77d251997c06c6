/**
 * The way of the loads: from areas, lines and points of a plan down to joists and shore beams, the combinations they act
 * in and the patterns in which live load may lie. {@link dev.underprop.engine.load.LoadModel} is the door.
 */
package dev.underprop.engine.load;
