/** What the mouths say: problem documents, and the words that a person reads on a terminal. */
@NullMarked
package dev.underprop.app.report;

import org.jspecify.annotations.NullMarked;
