/** Cross-sections of members (m). */
@NullMarked
package dev.underprop.engine.section;

import org.jspecify.annotations.NullMarked;
