package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Messages;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Bytes to text, UTF-8 and nothing else. The parsers are given text, never bytes, because they would guess at other
 * encodings, and fail on a wrong guess in ways of their own.
 */
final class Utf8 {
    private static final String MARK = "\uFEFF";

    private Utf8() {}

    /**
     * The text without its byte order mark.
     *
     * @throws Stopped when the bytes are not UTF-8, or look like UTF-16 or UTF-32
     */
    static String text(byte[] bytes) {
        refuseWide(bytes);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            throw malformed(text, bytes, in.position());
        }
        return text.startsWith(MARK) ? text.substring(1) : text;
    }

    private static Stopped malformed(String before, byte[] bytes, int offset) {
        Place place = Place.of(before.startsWith(MARK) ? before.substring(1) : before);
        String octet = String.format(Locale.ROOT, "0x%02X", bytes[offset]);
        String why = "byte " + offset + " is " + octet;
        return new Stopped(Messages.ENCODING_NOT_UTF8.fault(octet, why).at(place.line(), place.column()));
    }

    private static void refuseWide(byte[] bytes) {
        int first = at(bytes, 0);
        int second = at(bytes, 1);
        boolean marked = (first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE);
        boolean zeros = bytes.length > 1 && (first == 0 || second == 0 || at(bytes, 2) == 0 || at(bytes, 3) == 0);
        if (marked || zeros) {
            throw new Stopped(Messages.ENCODING_NOT_UTF8
                    .fault("", "they look like UTF-16 or UTF-32")
                    .at(1, 1));
        }
    }

    private static int at(byte[] bytes, int index) {
        return index < bytes.length ? bytes[index] & 0xFF : -1;
    }
}
