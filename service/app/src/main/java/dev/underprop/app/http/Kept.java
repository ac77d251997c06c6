package dev.underprop.app.http;

import io.javalin.http.Context;

/** An answer that a client may keep for as long as it is good. */
final class Kept {
    private static final EntityTag NOT_YET = new EntityTag("");

    private final String type;
    private final byte[] bytes;
    private EntityTag tag = NOT_YET;

    /**
     * @param type media type
     * @param bytes the answer, not to be changed
     */
    Kept(String type, byte[] bytes) {
        this.type = type;
        this.bytes = bytes;
    }

    String type() {
        return type;
    }

    /** Made when it is first asked for: the pages have more than two million bytes, and most services show none of them. */
    private synchronized EntityTag tag() {
        if (tag == NOT_YET) {
            tag = EntityTag.of(bytes);
        }
        return tag;
    }

    /** The same bytes have the same tag, so that an answer may be kept and asked after. Packed they are others that mean the same. */
    void reply(Context context) {
        boolean packed = Gzip.wanted(context, bytes.length);
        EntityTag known = tag();
        context.header("ETag", packed ? known.weak() : known.text());
        context.header("Cache-Control", "no-cache");
        if (known.isHeld(context.req().getHeaders("If-None-Match"))) {
            context.status(304);
        } else {
            Replies.bytes(context, Replies.withCharset(type), bytes);
        }
    }
}
