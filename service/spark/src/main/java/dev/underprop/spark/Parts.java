package dev.underprop.spark;

import dev.underprop.wire.record.Sum;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;

/**
 * The files of records, which are one file cut in pieces: read in the order of their names they are what one machine would write. A
 * task writes beside the place and moves there what is whole; should two do the same, both write the same.
 */
final class Parts {
    /** Says that all parts are there. */
    private static final String DONE = "_SUCCESS";

    private static final int BUFFER = 1 << 16;

    private Parts() {}

    /** What writes records. */
    interface Writer {
        /** Writes all of a part. */
        Sum to(OutputStream out) throws IOException;
    }

    /**
     * Makes room.
     *
     * @throws JobRefused when something is there
     */
    static void begin(String folder, Configuration cluster) throws IOException {
        Path path = new Path(folder);
        FileSystem system = path.getFileSystem(cluster);
        if (system.exists(path)) {
            throw new JobRefused(folder + " is there already; records of two runs are not mixed.");
        }
        system.mkdirs(path);
    }

    /** Writes a part. */
    static Sum write(String folder, int part, long attempt, Configuration cluster, Writer writer) throws IOException {
        Path place = new Path(folder, String.format(Locale.ROOT, "part-%06d.ndjson", part));
        Path beside = new Path(folder, String.format(Locale.ROOT, "_part-%06d.%d", part, attempt));
        FileSystem system = place.getFileSystem(cluster);
        Sum sum;
        try (OutputStream out = new BufferedOutputStream(system.create(beside, true), BUFFER)) {
            sum = writer.to(out);
        }
        if (!system.rename(beside, place)) {
            system.delete(beside, false);
            if (!system.exists(place)) {
                throw new IOException(place + " was not written");
            }
        }
        return sum;
    }

    /** Says that all is there. */
    static void end(String folder, Configuration cluster) throws IOException {
        Path path = new Path(folder, DONE);
        path.getFileSystem(cluster).create(path, true).close();
    }
}
