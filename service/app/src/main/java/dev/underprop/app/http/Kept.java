package dev.underprop.app.http;

import io.javalin.http.Context;

/** An answer that a client may keep for as long as it is good. */
final class Kept {
    private final String type;
    private final byte[] bytes;
    private final EntityTag tag;

    /**
     * @param type media type
     * @param bytes the answer, not to be changed
     */
    Kept(String type, byte[] bytes) {
        this.type = type;
        this.bytes = bytes;
        this.tag = EntityTag.of(bytes);
    }

    String type() {
        return type;
    }

    /** The same bytes have the same tag, so that an answer may be kept and asked after. Packed they are others that mean the same. */
    void reply(Context context) {
        boolean packed = Gzip.wanted(context, bytes.length);
        context.header("ETag", packed ? tag.weak() : tag.text());
        context.header("Cache-Control", "no-cache");
        if (tag.isHeld(context.req().getHeaders("If-None-Match"))) {
            context.status(304);
        } else {
            Replies.bytes(context, Replies.withCharset(type), bytes);
        }
    }
}
