/** AISC Design Guide 1, second edition, 2006: base plates. From memory; lengths in m. */
@NullMarked
package dev.underprop.engine.clause.aisc_dg1_2006;

import org.jspecify.annotations.NullMarked;
