/**
 * Pages for people: one for each check, one for each kind of problem. {@link dev.underprop.wire.pages.CheckPages} and
 * {@link dev.underprop.wire.pages.ProblemPages} are the doors.
 */
package dev.underprop.wire.pages;
