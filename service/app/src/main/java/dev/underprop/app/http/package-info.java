/** The HTTP mouth: the operations of the contract over the door of wire. {@link dev.underprop.app.http.Service} starts it. */
@NullMarked
package dev.underprop.app.http;

import org.jspecify.annotations.NullMarked;
