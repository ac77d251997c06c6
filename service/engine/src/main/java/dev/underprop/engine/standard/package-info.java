/**
 * What a rule is quoted by: citations, values that carry one, outcomes that may be a refusal, and the set of editions a
 * plan is judged by. A basis is handed in as an argument; nothing here or above keeps a current one.
 */
@NullMarked
package dev.underprop.engine.standard;

import org.jspecify.annotations.NullMarked;
