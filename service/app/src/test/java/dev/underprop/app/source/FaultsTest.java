package dev.underprop.app.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

/** What the file system refuses, in words; some of it cannot be brought about by who may read everything. */
class FaultsTest {
    @Test
    void refusalsOfTheFileSystemAreToldApart() {
        assertThat(Faults.of(new AccessDeniedException("a")).code()).isEqualTo("path-denied");
        assertThat(Faults.of(new NoSuchFileException("a")).code()).isEqualTo("path-missing");
        assertThat(Faults.of(new FileSystemLoopException("a")).code()).isEqualTo("folder-loop");
        assertThat(Faults.of(new IOException("Input/output error")).code()).isEqualTo("path-unreadable");
        assertThat(Faults.of(new IOException("Input/output error")).got()).isEqualTo("Input/output error");
    }
}
