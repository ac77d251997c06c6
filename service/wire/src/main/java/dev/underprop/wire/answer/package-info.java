/**
 * What the engine found, in the contract's words and units: numbers with their units, messages for people, what was not
 * checked first. {@link dev.underprop.wire.answer.AnswerWriter} is the door.
 */
package dev.underprop.wire.answer;
