/**
 * The National Design Specification for Wood Construction, 2018, allowable stress design: one class a section, one
 * method a clause, each returning value and citation. Stresses in Pa, lengths in m; where a clause has constants in
 * inches or psi, they are converted beside it.
 */
package dev.underprop.engine.clause.nds2018;
