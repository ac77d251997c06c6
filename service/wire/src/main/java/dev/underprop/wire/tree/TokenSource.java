package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Fault;
import java.util.List;

/** A document as a stream of tokens. */
interface TokenSource {
    /**
     * The next token; {@link Token#END} once the document and nothing else has been read.
     *
     * @throws Stopped when the text cannot be understood from here on
     */
    Token next();

    /** The text of the current key, text or number. */
    String text();

    /** Line of the current token, 1-based. */
    int line();

    /** Column of the current token in characters, 1-based. */
    int column();

    /** What is wrong with the current token although reading can go on; line and column are set. */
    List<Fault> complaints();
}
