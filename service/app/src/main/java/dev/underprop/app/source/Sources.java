package dev.underprop.app.source;

import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;

/** All plans that a command line asks for, in its order, one after the other, each place once. */
public final class Sources implements Iterator<Entry>, Closeable {
    /** What stands for the standard input among paths. */
    public static final String STANDARD_INPUT = "-";

    private final Deque<String> left;
    private final Set<Path> passedOver = new HashSet<>();
    private final Selection selection;
    private final Opener opener;
    private final StandardInput input;
    private final Meter meter;
    private Optional<Entries> open = Optional.empty();

    /**
     * Sources of plans.
     *
     * @param paths files, folders and {@code -}
     * @param selection what is taken of folders and archives
     * @param allowEmpty whether a place without plans is as it should be; otherwise it is told as a fault
     * @param input the standard input, and how it is read
     * @param own files of this run, such as its reports, which are no plans wherever they lie
     */
    public Sources(
            Collection<String> paths,
            Selection selection,
            boolean allowEmpty,
            StandardInput input,
            Collection<String> own) {
        Set<String> once = new LinkedHashSet<>();
        for (String path : paths) {
            if (passOver(path)) {
                once.add(spelt(path));
            }
        }
        own.forEach(this::passOver);
        this.left = new ArrayDeque<>(once);
        this.selection = selection;
        this.meter = new Meter(once);
        this.opener = new Opener(selection.rules(), allowEmpty, meter);
        this.input = input;
    }

    /**
     * How much was read of what the command line names, 0 to 1, as far as it can be told: files by their bytes, folders only when
     * they are done. Negative where the standard input is read.
     */
    public double share() {
        return meter.share();
    }

    @Override
    public boolean hasNext() {
        while (true) {
            if (open.isPresent() && open.get().hasNext()) {
                return true;
            }
            close();
            if (left.isEmpty()) {
                return false;
            }
            open = Optional.of(entries(left.remove()));
        }
    }

    @Override
    public Entry next() {
        if (!hasNext()) {
            throw new NoSuchElementException("no further plan");
        }
        return open.orElseThrow().next();
    }

    private Entries entries(String path) {
        if (path.equals(STANDARD_INPUT)) {
            return input.entries(opener);
        }
        try {
            return entries(Path.of(path), path);
        } catch (InvalidPathException e) {
            return Entries.of(new Entry.Wrong(EntryName.file(path), Faults.missing()));
        }
    }

    private Entries entries(Path path, String name) {
        if (Files.isDirectory(path)) {
            return new FolderEntries(path, selection, opener, passedOver);
        }
        if (!Files.exists(path)) {
            return Entries.of(new Entry.Wrong(EntryName.file(name), Faults.missing()));
        }
        return opener.open(path, name);
    }

    /**
     * What the command line names itself is not given a second time, by another spelling or by a folder around it.
     *
     * @return true when it was not named before
     */
    private boolean passOver(String path) {
        try {
            return passedOver.add(whole(Path.of(path)));
        } catch (InvalidPathException e) {
            // No file has such a name, which is told when it is looked for.
            return true;
        }
    }

    static Path whole(Path path) {
        return path.toAbsolutePath().normalize();
    }

    /** The path as a report writes it. */
    static String name(Path path) {
        return path.toString().replace(path.getFileSystem().getSeparator(), "/");
    }

    private static String spelt(String path) {
        try {
            return path.isEmpty() ? path : name(Path.of(path));
        } catch (InvalidPathException e) {
            return path;
        }
    }

    @Override
    public void close() {
        open.ifPresent(Entries::close);
        open = Optional.empty();
    }

    /** The standard input of the process, buffered. */
    public static InputStream standardInput() {
        return new BufferedInputStream(System.in);
    }
}
