/**
 * The National Design Specification for Wood Construction, 2018, and its Supplement, allowable stress design: one class
 * a section or table, one method a clause, each returning its value with a citation. Stresses in Pa, lengths in m,
 * forces in N. Where a clause has constants in inches or psi they are converted beside it.
 *
 * <p>A clause that ends at a limit returns an {@link dev.underprop.engine.standard.Outcome}: beyond the limit it
 * refuses, it never clamps. Arguments that are no sensible number are an {@link IllegalArgumentException}.
 */
@NullMarked
package dev.underprop.engine.clause.nds2018;

import org.jspecify.annotations.NullMarked;
