package dev.underprop.app.source;

import dev.underprop.wire.lines.FileKind;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.tree.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file that is named on the command line and holds one document. */
public final class OneFile {
    private OneFile() {}

    /** The text of the file, at most one byte longer than a document may be, or what is wrong with the place. */
    public static Entry read(String path) {
        EntryName name = EntryName.file(path.replace('\\', '/'));
        Path file = Path.of(path);
        FileKind kind = FileKind.of(path);
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            return new Entry.Wrong(name, Faults.notFile());
        }
        if (kind != FileKind.JSON && kind != FileKind.YAML) {
            return new Entry.Wrong(name, Files.exists(file) ? Faults.notNamedAsPlan() : Faults.missing());
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new Entry.Text(name, kind.format(), in.readNBytes(Limits.USUAL.bytes() + 1));
        } catch (IOException e) {
            return new Entry.Wrong(name, Faults.of(e));
        }
    }
}
