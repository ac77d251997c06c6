/**
 * Lumber as sold: species, grades, sizes and reference design values, from tables that people can read, each value with
 * its source beside it. {@link dev.underprop.wire.catalogue.Catalogue} is the door for whoever reads plans, {@link
 * dev.underprop.wire.catalogue.Parts} for whoever wants to read the catalogue itself.
 */
package dev.underprop.wire.catalogue;
