/** The two mouths of the service, HTTP and batch, and the main class. */
@NullMarked
package dev.underprop.app;

import org.jspecify.annotations.NullMarked;
