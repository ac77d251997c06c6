package dev.underprop.spark;

import dev.underprop.wire.lines.FileKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;

/**
 * The files that paths lead to, in the order and by the names of a run on one machine. What such a run would read and this job does
 * not, archives in files and lists of what is left out, is refused rather than passed over.
 */
final class Listing {
    private static final int MOST_DEEP = 64;
    private static final String IGNORE_FILE = ".underpropignore";

    private final Configuration cluster;
    private final Set<Path> named = new HashSet<>();
    private final List<Slice> files = new ArrayList<>();

    private Listing(Configuration cluster) {
        this.cluster = cluster;
    }

    /**
     * Lists files.
     *
     * @throws JobRefused when there is none, or one that is not read here
     */
    static List<Slice> of(List<String> paths, Configuration cluster) {
        Listing listing = new Listing(cluster);
        try {
            listing.add(paths);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (listing.files.isEmpty()) {
            throw new JobRefused("nothing to check was found.");
        }
        return listing.files;
    }

    private void add(List<String> paths) throws IOException {
        Set<String> once = new LinkedHashSet<>();
        for (String path : paths) {
            String name = spelt(path);
            if (named.add(qualified(new Path(name)))) {
                once.add(name);
            }
        }
        for (String name : once) {
            Path path = new Path(name);
            FileSystem system = path.getFileSystem(cluster);
            if (!system.exists(path)) {
                throw new JobRefused("there is no " + name + ".");
            }
            FileStatus status = system.getFileStatus(path);
            if (status.isDirectory()) {
                folder(system, path, name, 0);
            } else {
                file(status, name);
            }
        }
    }

    private Path qualified(Path path) throws IOException {
        return path.getFileSystem(cluster).makeQualified(path);
    }

    private void folder(FileSystem system, Path folder, String name, int depth) throws IOException {
        if (depth > MOST_DEEP) {
            throw new JobRefused("folders lie too deep in each other, or a link leads back: " + name + ".");
        }
        FileStatus[] inside = system.listStatus(folder);
        Arrays.sort(inside, Comparator.comparing(status -> status.getPath().getName()));
        for (FileStatus status : inside) {
            String last = status.getPath().getName();
            String below = name.endsWith("/") ? name + last : name + "/" + last;
            if (last.equals(IGNORE_FILE)) {
                throw new JobRefused(below + " leaves files out, which is not done here; give the folders to be read.");
            }
            if (status.isDirectory()) {
                folder(system, status.getPath(), below, depth + 1);
            } else if (FileKind.of(last) != FileKind.OTHER && !named.contains(qualified(status.getPath()))) {
                file(status, below);
            }
        }
    }

    private void file(FileStatus status, String name) {
        FileKind kind = FileKind.of(name);
        if (kind == FileKind.OTHER) {
            throw new JobRefused(name + " does not end as plans do.");
        }
        if (kind.archive()) {
            throw new JobRefused(name + " is an archive, which is not opened here; unpack it, or write a plan a line.");
        }
        files.add(Slice.whole(name, status.getPath().toString(), kind, status.getLen()));
    }

    /** As a run on one machine spells a path, which does not know of file systems elsewhere. */
    private static String spelt(String path) {
        return path.contains("://")
                ? path.replaceAll("/+$", "")
                : java.nio.file.Path.of(path).toString();
    }
}
