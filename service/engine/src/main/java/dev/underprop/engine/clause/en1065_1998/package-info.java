/** EN 1065:1998, adjustable telescopic steel props. */
@NullMarked
package dev.underprop.engine.clause.en1065_1998;

import org.jspecify.annotations.NullMarked;
