/** ACI 318-19, concrete. Stresses in Pa; the document's psi and inches are converted beside the formulas. */
@NullMarked
package dev.underprop.engine.clause.aci318_19;

import org.jspecify.annotations.NullMarked;
