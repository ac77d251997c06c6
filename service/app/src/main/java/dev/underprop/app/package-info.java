/** The program: its main class and its commands. The mouths are {@code http} and {@code batch}. */
@NullMarked
package dev.underprop.app;

import org.jspecify.annotations.NullMarked;
