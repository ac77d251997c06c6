/**
 * Lumber as sold: species, grades, sizes and reference design values, from tables that people can read, each value with
 * its source beside it. {@link dev.underprop.wire.catalogue.Catalogue} is the door.
 */
package dev.underprop.wire.catalogue;
