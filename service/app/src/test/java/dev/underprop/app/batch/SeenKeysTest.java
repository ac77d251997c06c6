package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.wire.record.EntryName;
import org.junit.jupiter.api.Test;

class SeenKeysTest {
    @Test
    void everyKeyIsKnownWhereItStoodFirst() {
        SeenKeys keys = new SeenKeys();
        for (int i = 0; i < 30_000; i++) {
            assertThat(keys.add("plan " + i, new EntryName("file " + i % 3, i))).isEmpty();
        }
        for (int i = 0; i < 30_000; i++) {
            assertThat(keys.add("plan " + i, new EntryName("elsewhere", 7)))
                    .contains(new EntryName("file " + i % 3, i));
        }
        assertThat(keys.size()).isEqualTo(30_000);
        assertThat(keys.add("", EntryName.file("x"))).isEmpty();
        assertThat(keys.add("", EntryName.file("y"))).contains(EntryName.file("x"));
    }
}
