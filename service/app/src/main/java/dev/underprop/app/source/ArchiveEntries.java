package dev.underprop.app.source;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.lines.Counted;
import dev.underprop.wire.lines.FileKind;
import dev.underprop.wire.lines.Inflation;
import dev.underprop.wire.lines.PackedFaults;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.apache.commons.compress.archivers.ArchiveEntry;
import org.apache.commons.compress.archivers.ArchiveInputStream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveInputStream;

/**
 * The plans of an archive in the order of the archive, read as they stream by, so that the size of the archive costs no memory.
 * Nothing is ever written to disk. Entries that lead out, links, encrypted entries and archives inside are told; files that are not
 * named as plans are passed over, as in a folder.
 */
final class ArchiveEntries extends Entries {
    private final String name;
    private final Opener opener;
    private final Counted packed;
    private final ArchiveInputStream<? extends ArchiveEntry> archive;
    private final InputStream text;
    private final Optional<Entry> broken;
    private Optional<Entries> inside = Optional.empty();
    private boolean found;
    private boolean over;

    ArchiveEntries(InputStream in, FileKind kind, String name, Opener opener) {
        this.name = name;
        this.opener = opener;
        this.packed = new Counted(in);
        Optional<Entry> failed = Optional.empty();
        InputStream unpacked = packed;
        if (kind == FileKind.TAR_GZ) {
            try {
                unpacked = new GZIPInputStream(packed, 1 << 16);
            } catch (IOException e) {
                failed = Optional.of(new Entry.Wrong(EntryName.file(name), PackedFaults.broken(e)));
            }
        }
        this.broken = failed;
        this.archive = kind == FileKind.ZIP
                ? new ZipArchiveInputStream(new BufferedInputStream(unpacked), "UTF-8", true, true)
                : new TarArchiveInputStream(
                        new BufferedInputStream(kind == FileKind.TAR_GZ ? new Inflation(unpacked, packed) : unpacked),
                        "UTF-8");
        this.text = kind == FileKind.ZIP ? new Inflation(archive, packed) : archive;
    }

    @Override
    protected Optional<Entry> advance() {
        while (true) {
            if (inside.isPresent()) {
                Entries lines = inside.get();
                if (lines.hasNext()) {
                    found = true;
                    return Optional.of(lines.next());
                }
                inside = Optional.empty();
            }
            if (over) {
                return Optional.empty();
            }
            Optional<Entry> next = step();
            if (next.isPresent()) {
                found = true;
                return next;
            }
        }
    }

    /** Goes to the next entry; nothing when there is none to be given for it. */
    private Optional<Entry> step() {
        if (broken.isPresent()) {
            over = true;
            return broken;
        }
        String at = name;
        try {
            ArchiveEntry entry = nextEntry();
            if (entry == null) {
                over = true;
                return found || opener.allowEmpty()
                        ? Optional.empty()
                        : Optional.of(wrong(name, Faults.emptyArchive()));
            }
            at = name + "!" + entry.getName();
            return entry(entry, at);
        } catch (Inflation.Bomb e) {
            over = true;
            return Optional.of(wrong(at, PackedFaults.bomb(e)));
        } catch (IOException | IllegalArgumentException e) {
            over = true;
            return Optional.of(wrong(at, PackedFaults.broken(e instanceof IOException io ? io : new IOException(e))));
        } catch (NoClassDefFoundError e) {
            // Some methods of packing are read by libraries that are not here; the reader asks for them only then.
            over = true;
            return Optional.of(wrong(at, Faults.entryMethod()));
        }
    }

    /** The reader of archives trips over some broken ones: it cannot skip an entry that is packed by a method it does not know. */
    private ArchiveEntry nextEntry() throws IOException {
        try {
            return archive.getNextEntry();
        } catch (RuntimeException e) {
            throw new IOException("an entry that cannot be skipped", e);
        }
    }

    private Optional<Entry> entry(ArchiveEntry entry, String at) throws IOException {
        String path = entry.getName();
        FileKind kind = FileKind.of(path);
        if (leadsOut(path)) {
            return Optional.of(wrong(at, Faults.entryName(path)));
        }
        if (entry.isDirectory() || kind == FileKind.OTHER || !opener.rules().take(path)) {
            return Optional.empty();
        }
        Optional<Entry> unfit = unfit(entry, kind, at);
        if (unfit.isPresent()) {
            return unfit;
        }
        if (kind.lines()) {
            inside = Optional.of(new LineEntries(new Kept(text), at, kind == FileKind.LINES_GZ, opener.allowEmpty()));
            return Optional.empty();
        }
        byte[] bytes = Opener.text(text);
        // What is left of a huge entry is read here, where it is counted, and not passed over uncounted.
        text.transferTo(OutputStream.nullOutputStream());
        return Optional.of(new Entry.Text(EntryName.file(at), kind.format(), bytes));
    }

    private Optional<Entry> unfit(ArchiveEntry entry, FileKind kind, String at) {
        if (kind.archive()) {
            return Optional.of(wrong(at, Faults.nested()));
        }
        if (entry instanceof TarArchiveEntry tar && (tar.isLink() || tar.isSymbolicLink())) {
            return Optional.of(wrong(at, Faults.entryKind("a link")));
        }
        if (entry instanceof TarArchiveEntry tar && (tar.isFIFO() || tar.isBlockDevice() || tar.isCharacterDevice())) {
            return Optional.of(wrong(at, Faults.entryKind("a pipe or a device")));
        }
        if (entry instanceof ZipArchiveEntry zip && zip.getGeneralPurposeBit().usesEncryption()) {
            return Optional.of(wrong(at, Faults.entryLocked()));
        }
        return archive.canReadEntryData(entry) ? Optional.empty() : Optional.of(wrong(at, Faults.entryMethod()));
    }

    /** Absolute names, drives, steps upwards and names with what no file system allows. */
    private static boolean leadsOut(String path) {
        String slashes = path.replace('\\', '/');
        boolean up = slashes.equals("..")
                || slashes.startsWith("../")
                || slashes.contains("/../")
                || slashes.endsWith("/..");
        boolean drive = slashes.length() > 1 && slashes.charAt(1) == ':';
        return up || drive || slashes.startsWith("/") || slashes.isBlank() || slashes.indexOf('\0') >= 0;
    }

    private static Entry wrong(String at, Fault fault) {
        return new Entry.Wrong(EntryName.file(at), fault);
    }

    /** An entry that is read line by line leaves the archive open. */
    private static final class Kept extends FilterInputStream {
        Kept(InputStream in) {
            super(in);
        }

        @Override
        public void close() {}
    }

    @Override
    public void close() {
        try {
            archive.close();
        } catch (ZipException e) {
            // What is left of a broken archive is of no use.
            closeBelow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void closeBelow() {
        try {
            packed.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
