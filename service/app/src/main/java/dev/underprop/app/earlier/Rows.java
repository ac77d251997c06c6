package dev.underprop.app.earlier;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** Numbered rows of so many bytes each, in pages. Any number of threads may read while none writes. */
final class Rows {
    private static final int PAGE = 1024;

    private final int width;
    private final List<ByteBuffer> pages = new ArrayList<>();
    private int size;

    Rows(int width) {
        this.width = width;
    }

    int size() {
        return size;
    }

    /** The number of a new row. */
    int add() {
        if (size % PAGE == 0) {
            pages.add(ByteBuffer.allocate(PAGE * width));
        }
        return size++;
    }

    /** A row, from its beginning. */
    ByteBuffer row(int number) {
        return pages.get(number / PAGE).slice(number % PAGE * width, width);
    }
}
