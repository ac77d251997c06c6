/** International Residential Code, 2021. Lengths in m; inches are converted beside the clause. */
@NullMarked
package dev.underprop.engine.clause.irc2021;

import org.jspecify.annotations.NullMarked;
