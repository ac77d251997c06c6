package dev.underprop.wire.door;

import java.util.Random;

/** Draws that are read off bytes, four a draw; after the last byte they are those of a fixed seed. */
final class ByteDraws extends Random {
    private static final long serialVersionUID = 1L;
    private static final int BYTES = 4;

    private final byte[] bytes;
    private int at;

    ByteDraws(byte[] bytes) {
        super(1);
        this.bytes = bytes.clone();
    }

    @Override
    protected int next(int bits) {
        if (at + BYTES > bytes.length) {
            return super.next(bits);
        }
        int draw = 0;
        for (int i = 0; i < BYTES; i++) {
            draw = draw << Byte.SIZE | bytes[at + i] & 0xff;
        }
        at += BYTES;
        return draw >>> (Integer.SIZE - bits);
    }
}
