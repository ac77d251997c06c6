package dev.underprop.app.source;

import dev.underprop.wire.lines.FileKind;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The plans of a folder and all that is below it, each folder in the order of its names whatever the file system's order. Only the
 * names of the folders on the way are held.
 */
final class FolderEntries extends Entries {
    /** A folder on the way: what is left of it, and what its file says is left out. */
    private record Level(Path real, String below, Iterator<Path> left, Selection.Ignored ignored) {}

    private final Path root;
    private final Selection selection;
    private final Opener opener;
    private final Set<Path> passedOver;
    private final Deque<Level> levels = new ArrayDeque<>();
    private final Deque<Entry> waiting = new ArrayDeque<>();
    private Optional<Entries> file = Optional.empty();
    private boolean begun;
    private boolean found;

    /**
     * The entries of a folder.
     *
     * @param root the folder
     * @param selection what is taken
     * @param opener opens files
     * @param passedOver files that are not given, since the command line names them itself
     */
    FolderEntries(Path root, Selection selection, Opener opener, Set<Path> passedOver) {
        this.root = root;
        this.selection = selection;
        this.opener = opener;
        this.passedOver = passedOver;
    }

    @Override
    protected Optional<Entry> advance() {
        if (!begun) {
            begun = true;
            enter(root, "");
        }
        Optional<Entry> next = step();
        if (next.isPresent()) {
            found = true;
            return next;
        }
        boolean tell = !found && !opener.allowEmpty();
        found = true;
        return tell
                ? Optional.of(new Entry.Wrong(EntryName.file(Sources.name(root)), Faults.emptyFolder()))
                : Optional.empty();
    }

    private Optional<Entry> step() {
        while (true) {
            if (!waiting.isEmpty()) {
                return Optional.of(waiting.remove());
            }
            if (file.isPresent()) {
                if (file.get().hasNext()) {
                    return Optional.of(file.get().next());
                }
                file.get().close();
                file = Optional.empty();
            }
            if (levels.isEmpty()) {
                return Optional.empty();
            }
            visit(levels.peek());
        }
    }

    private void visit(Level level) {
        if (!level.left().hasNext()) {
            levels.pop();
            return;
        }
        Path path = level.left().next();
        String below = level.below() + last(path);
        if (leftOut(below)) {
            return;
        }
        if (Files.isDirectory(path)) {
            if (opener.rules().enter(below)) {
                enter(path, below + "/");
            }
        } else if (FileKind.of(last(path)) != FileKind.OTHER && opener.rules().take(below)) {
            if (!passedOver.contains(Sources.whole(path))) {
                file = Optional.of(opener.open(path, Sources.name(path)));
            }
        }
    }

    /** A file that lists what is left out speaks of what is below its own folder. */
    private boolean leftOut(String below) {
        for (Level level : levels) {
            if (level.ignored().leavesOut(below.substring(level.below().length()))) {
                return true;
            }
        }
        return false;
    }

    private void enter(Path folder, String below) {
        try {
            Path real = folder.toRealPath();
            for (Level level : levels) {
                if (level.real().equals(real)) {
                    throw new FileSystemLoopException(folder.toString());
                }
            }
            levels.push(new Level(real, below, sorted(folder), ignored(folder)));
        } catch (IOException e) {
            wrong(folder, e);
        } catch (DirectoryIteratorException e) {
            wrong(folder, new IOException(e));
        }
    }

    private void wrong(Path path, IOException failure) {
        waiting.add(new Entry.Wrong(EntryName.file(Sources.name(path)), Faults.of(failure)));
    }

    private static Iterator<Path> sorted(Path folder) throws IOException {
        List<Path> paths = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            stream.forEach(paths::add);
        }
        Collections.sort(paths, Comparator.comparing(FolderEntries::last));
        return paths.iterator();
    }

    private Selection.Ignored ignored(Path folder) {
        Path list = folder.resolve(selection.ignoreFile());
        if (!Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)) {
            return Selection.Ignored.NOTHING;
        }
        try {
            return Selection.Ignored.read(Files.readAllLines(list, StandardCharsets.UTF_8));
        } catch (MalformedInputException | IllegalArgumentException e) {
            waiting.add(new Entry.Wrong(EntryName.file(Sources.name(list)), Faults.ignoreFile()));
        } catch (IOException e) {
            wrong(list, e);
        }
        return Selection.Ignored.NOTHING;
    }

    private static String last(Path path) {
        Path name = path.getFileName();
        return name == null ? "" : name.toString();
    }

    @Override
    public void close() {
        file.ifPresent(Entries::close);
    }
}
