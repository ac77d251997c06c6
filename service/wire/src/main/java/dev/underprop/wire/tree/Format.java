package dev.underprop.wire.tree;

/** The two ways to write a document. */
public enum Format {
    /** JSON (RFC 8259), without extensions. */
    JSON,
    /** YAML, in the part of it that means the same as JSON. */
    YAML
}
