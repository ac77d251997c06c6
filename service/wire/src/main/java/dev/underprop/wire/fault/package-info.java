/**
 * What is wrong with a request, said so that its writer can mend it: one {@link dev.underprop.wire.fault.Fault} per
 * place, worded in one table, {@link dev.underprop.wire.fault.Messages}.
 */
@NullMarked
package dev.underprop.wire.fault;

import org.jspecify.annotations.NullMarked;
