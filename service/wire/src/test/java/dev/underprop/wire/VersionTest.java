package dev.underprop.wire;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VersionTest {
    @Test
    void versionIsWrittenByTheBuild() {
        assertThat(Version.text()).matches("underprop \\d+\\.\\d+\\.\\d+");
    }
}
