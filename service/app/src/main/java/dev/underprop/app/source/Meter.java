package dev.underprop.app.source;

import dev.underprop.wire.lines.FileKind;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;

/** How many bytes of the files that a command line names were read, and how many there are; used on one thread. */
final class Meter {
    private final Collection<String> paths;
    private long read;
    private long all = -1;

    Meter(Collection<String> paths) {
        this.paths = paths;
    }

    /** A stream whose bytes are counted as they are read. */
    InputStream metered(InputStream in) {
        return new FilterInputStream(in) {
            @Override
            public int read() throws IOException {
                int one = super.read();
                read += one < 0 ? 0 : 1;
                return one;
            }

            @Override
            public int read(byte[] bytes, int from, int length) throws IOException {
                int got = super.read(bytes, from, length);
                read += Math.max(0, got);
                return got;
            }
        };
    }

    /** Share that was read, 0 to 1; negative where the standard input is read. */
    double share() {
        if (paths.contains(Sources.STANDARD_INPUT)) {
            return -1;
        }
        if (all < 0) {
            all = paths.stream().mapToLong(path -> size(Path.of(path))).sum();
        }
        return all == 0 ? 0 : Math.min(1, (double) read / all);
    }

    /** Only a guess for people: what cannot be looked at counts as nothing. */
    private static long size(Path path) {
        long[] sum = {0};
        try {
            Files.walkFileTree(path, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    sum[0] += FileKind.of(file.toString()) == FileKind.OTHER ? 0 : attributes.size();
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException failure) {
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException("walking " + path, e);
        }
        return sum[0];
    }
}
