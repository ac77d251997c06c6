package dev.underprop.wire.tree;

/** One step through a document, the same for both formats. */
enum Token {
    OBJECT_START,
    OBJECT_END,
    LIST_START,
    LIST_END,
    KEY,
    TEXT,
    NUMBER,
    TRUE,
    FALSE,
    NULL,
    END
}
