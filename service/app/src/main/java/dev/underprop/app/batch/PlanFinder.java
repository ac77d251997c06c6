package dev.underprop.app.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.TreeMap;

/** Finds the plans in files and folders, each once, in the order of their names whatever the file system's order. */
final class PlanFinder {
    private final TreeMap<String, PlanFile> found = new TreeMap<>();

    private PlanFinder() {}

    static Collection<PlanFile> find(List<String> arguments) {
        PlanFinder finder = new PlanFinder();
        arguments.forEach(finder::look);
        return finder.found.values();
    }

    private void look(String argument) {
        try {
            look(Path.of(argument));
        } catch (InvalidPathException e) {
            add(new PlanFile(argument, Path.of(""), List.of(PathFaults.missing())));
        }
    }

    private void look(Path path) {
        if (Files.isDirectory(path)) {
            int before = found.size();
            walk(path);
            if (found.size() == before) {
                add(PlanFile.wrong(path, PathFaults.empty()));
            }
        } else if (!Files.exists(path)) {
            add(PlanFile.wrong(path, PathFaults.missing()));
        } else {
            add(PlanFile.named(path) ? PlanFile.at(path) : PlanFile.wrong(path, PathFaults.notNamedAsPlan()));
        }
    }

    private void walk(Path folder) {
        try {
            Files.walkFileTree(folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), Integer.MAX_VALUE, new Walker());
        } catch (IOException e) {
            throw new UncheckedIOException("walking " + folder, e);
        }
    }

    private void add(PlanFile file) {
        found.putIfAbsent(file.name(), file);
    }

    private final class Walker extends SimpleFileVisitor<Path> {
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (PlanFile.named(file)) {
                add(PlanFile.at(file));
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException failure) {
            add(PlanFile.wrong(file, PathFaults.of(failure)));
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, @org.jspecify.annotations.Nullable IOException failure) {
            if (failure != null) {
                add(PlanFile.wrong(folder, PathFaults.of(failure)));
            }
            return FileVisitResult.CONTINUE;
        }
    }
}
