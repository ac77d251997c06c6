package dev.underprop.app.batch;

import dev.underprop.wire.fault.Fault;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;

/** What can be wrong with a path, in words. */
final class PathFaults {
    private PathFaults() {}

    static Fault missing() {
        return Fault.of("path-missing", "There is no such file or folder.", "Check the path.");
    }

    static Fault empty() {
        return Fault.of("folder-empty", "There is no plan in this folder.", "A plan ends in .yaml, .yml or .json.");
    }

    static Fault notNamedAsPlan() {
        return Fault.of(
                "file-name", "The name does not say how the plan is written.", "Let it end in .yaml, .yml or .json.");
    }

    static Fault notFile() {
        return Fault.of("file-kind", "This is neither a file nor a folder.", "Give a file or a folder.");
    }

    static Fault of(IOException failure) {
        if (failure instanceof FileSystemLoopException) {
            return Fault.of("folder-loop", "A link leads back to a folder above it.", "Take the link out.");
        }
        if (failure instanceof NoSuchFileException) {
            return missing();
        }
        if (failure instanceof AccessDeniedException) {
            return Fault.of(
                    "path-denied", "Reading is not permitted.", "Change the permissions, or leave the path out.");
        }
        return Fault.of("path-unreadable", "Reading has failed.", "Try again, or leave the path out.")
                .withGot(String.valueOf(failure.getMessage()));
    }
}
