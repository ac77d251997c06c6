/** International Building Code, 2021. Pressures in Pa; the tables' psf are converted beside them. */
@NullMarked
package dev.underprop.engine.clause.ibc2021;

import org.jspecify.annotations.NullMarked;
