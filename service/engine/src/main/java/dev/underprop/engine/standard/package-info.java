/** What a rule is quoted by: citations, and values that carry one. */
package dev.underprop.engine.standard;
