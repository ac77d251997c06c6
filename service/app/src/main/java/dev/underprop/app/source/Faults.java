package dev.underprop.app.source;

import dev.underprop.wire.fault.Fault;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;

/** What can be wrong with a place where plans are looked for, in words. */
final class Faults {
    private static final String ENDINGS =
            "A plan ends in .yaml, .yml or .json; many plans in .ndjson, .zip or .tar.gz.";

    private Faults() {}

    static Fault missing() {
        return Fault.of("path-missing", "There is no such file or folder.", "Check the path.");
    }

    static Fault emptyFolder() {
        return Fault.of(
                "folder-empty",
                "There is no plan in this folder, or all of them are left out.",
                ENDINGS + " Use --allow-empty where that is as it should be.");
    }

    static Fault emptyArchive() {
        return Fault.of(
                "archive-empty",
                "There is no plan in this archive, or all of them are left out.",
                ENDINGS + " Use --allow-empty where that is as it should be.");
    }

    static Fault notNamedAsPlan() {
        return Fault.of("file-name", "The name does not say how the plan is written.", ENDINGS);
    }

    static Fault notFile() {
        return Fault.of("file-kind", "This is neither a file nor a folder.", "Give a file or a folder.");
    }

    static Fault ignoreFile() {
        return Fault.of(
                "ignore-file",
                "The list of what is left out cannot be read.",
                "Write one pattern a line in UTF-8, such as old/ or *.draft.yaml.");
    }

    static Fault entryName(String name) {
        return Fault.of(
                        "archive-entry-name",
                        "The name of this entry leads out of the archive, or is none.",
                        "Pack the archive again, with plain relative names.")
                .withGot(name);
    }

    static Fault entryKind(String what) {
        return Fault.of(
                "archive-entry-kind",
                "This entry is " + what + ", not a file; nothing outside of an archive is read.",
                "Pack the file itself.");
    }

    static Fault entryLocked() {
        return Fault.of("archive-encrypted", "This entry is encrypted.", "Pack the archive without a password.");
    }

    static Fault entryMethod() {
        return Fault.of(
                "archive-method",
                "This entry is packed in a way that is not read here.",
                "Pack the archive with the usual method (deflate), or without packing.");
    }

    static Fault nested() {
        return Fault.of(
                "archive-nested",
                "An archive inside an archive is not opened.",
                "Unpack the outer archive, or pack the plans themselves.");
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
