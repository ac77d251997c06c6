/** The log of the service: its levels and the form of its lines. {@link dev.underprop.app.log.LogSettings} is found by logback. */
@org.jspecify.annotations.NullMarked
package dev.underprop.app.log;
