package dev.underprop.app.source;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.tree.Limits;
import java.io.ByteArrayInputStream;
import java.util.List;

/**
 * Archives and lines that are led by what they reach in the code; the inputs that are kept are tried on every build. Whatever the
 * bytes, entries come, each named and none larger than one byte more than a plan may be, and an end.
 */
class SourcesFuzzTest {
    /** Bytes that one byte of deflate can stand for at most (zlib.net, "Technical details", from memory); a line is one at least. */
    private static final int DEFLATED = 1032;

    @FuzzTest
    void zip(byte[] bytes) {
        read("zip", bytes);
    }

    @FuzzTest
    void tar(byte[] bytes) {
        read("tar", bytes);
    }

    @FuzzTest
    void packed(byte[] bytes) {
        read("tar.gz", bytes);
    }

    @FuzzTest
    void lines(byte[] bytes) {
        read("ndjson", bytes);
    }

    @FuzzTest
    void told(byte[] bytes) {
        read("auto", bytes);
    }

    private static void read(String kind, byte[] bytes) {
        StandardInput input = new StandardInput(new ByteArrayInputStream(bytes), kind);
        int count = 0;
        try (Sources sources = new Sources(List.of("-"), Selection.ALL, false, input, List.of())) {
            while (sources.hasNext()) {
                Entry entry = sources.next();
                assertThat(entry.name().key()).isNotEmpty();
                if (entry instanceof Entry.Text text) {
                    assertThat(text.bytes().length).isLessThanOrEqualTo(Limits.USUAL.bytes() + 1);
                }
                count++;
            }
        }
        int longest = kind.equals("tar") || kind.equals("ndjson") ? bytes.length : DEFLATED * bytes.length;
        assertThat(count).isBetween(1, longest + 1);
    }
}
