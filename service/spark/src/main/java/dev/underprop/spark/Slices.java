package dev.underprop.spark;

import dev.underprop.wire.lines.FileKind;
import dev.underprop.wire.lines.PlanLines;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.tree.Limits;
import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FSDataInputStream;
import org.apache.hadoop.fs.Path;

/** Cuts files into slices of lines and reads what begins in one. */
final class Slices {
    private static final int BUFFER = 1 << 16;
    private static final int MOST = Limits.USUAL.bytes() + 1;

    private Slices() {}

    /** The parts of a file, itself alone when it cannot be cut or is not worth it. */
    static List<Slice> cut(Slice file, long length, Configuration cluster) throws IOException {
        if (file.kind() != FileKind.LINES || file.to() <= length || noPlanIn(file, cluster)) {
            return List.of(file);
        }
        List<Slice> parts = new ArrayList<>();
        for (long from = 0; from < file.to(); from += length) {
            parts.add(file.part(from, Math.min(file.to(), from + length)));
        }
        return parts;
    }

    /** Such as a file in another encoding, or of blank lines: there is one thing to be told of it as a whole. */
    private static boolean noPlanIn(Slice file, Configuration cluster) throws IOException {
        try (PlanLines lines = new PlanLines(open(file, cluster), file.name(), false, true)) {
            return lines.next().filter(Entry.Text.class::isInstance).isEmpty();
        }
    }

    /** Counts the ends of lines in a slice. */
    static int count(Slice slice, Configuration cluster) throws IOException {
        byte[] chunk = new byte[BUFFER];
        int lines = 0;
        try (FSDataInputStream in = open(slice, cluster)) {
            in.seek(slice.from());
            long left = slice.to() - slice.from();
            while (left > 0) {
                int got = in.read(chunk, 0, (int) Math.min(BUFFER, left));
                if (got < 0) {
                    throw new IOException(slice.name() + " has become shorter");
                }
                for (int i = 0; i < got; i++) {
                    lines += chunk[i] == '\n' ? 1 : 0;
                }
                left -= got;
            }
        }
        return lines;
    }

    /** Plans one at a time. */
    interface Plans extends Closeable {
        /** The next plan, what is wrong in its place, or nothing at the end. */
        Optional<Entry> next() throws IOException;
    }

    /** The plans that begin in a slice, in their order. */
    static Plans plans(Slice slice, Configuration cluster) throws IOException {
        FSDataInputStream in = open(slice, cluster);
        if (!slice.kind().lines()) {
            return one(slice, in);
        }
        PlanLines lines = slice.whole()
                ? new PlanLines(in, slice.name(), slice.kind() == FileKind.LINES_GZ, false)
                : part(slice, in);
        return new Plans() {
            @Override
            public Optional<Entry> next() throws IOException {
                return lines.next();
            }

            @Override
            public void close() throws IOException {
                lines.close();
            }
        };
    }

    private static Plans one(Slice slice, InputStream in) {
        return new Plans() {
            private boolean given;

            @Override
            public Optional<Entry> next() throws IOException {
                if (given) {
                    return Optional.empty();
                }
                given = true;
                return Optional.of(new Entry.Text(
                        EntryName.file(slice.name()), slice.kind().format(), in.readNBytes(MOST)));
            }

            @Override
            public void close() throws IOException {
                in.close();
            }
        };
    }

    /** A line belongs to the slice in which it begins. */
    private static PlanLines part(Slice slice, FSDataInputStream file) throws IOException {
        if (slice.from() == 0) {
            return PlanLines.part(file, slice.name(), 0, slice.to());
        }
        file.seek(slice.from() - 1);
        InputStream in = new BufferedInputStream(file, BUFFER);
        long begin = slice.from() - 1;
        int one;
        do {
            one = in.read();
            begin++;
        } while (one >= 0 && one != '\n');
        int ended = begin > slice.from() ? 1 : 0;
        return PlanLines.part(in, slice.name(), slice.before() + ended, slice.to() - begin);
    }

    private static FSDataInputStream open(Slice slice, Configuration cluster) throws IOException {
        Path path = new Path(slice.at());
        return path.getFileSystem(cluster).open(path);
    }
}
