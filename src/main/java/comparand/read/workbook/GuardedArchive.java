package comparand.read.workbook;

import comparand.diag.Span;
import comparand.model.UnreadableRows;
import java.io.File;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.poi.openxml4j.util.ZipEntrySource;
import org.apache.poi.openxml4j.util.ZipFileZipEntrySource;
import org.apache.poi.openxml4j.util.ZipSecureFile;

/**
 * The archive a workbook is, opened so that no part of it can cost more memory than an honest one does. The office library
 * itself refuses more than a thousand parts, two of one name, and parts that unpack into a hundred times their size.
 */
final class GuardedArchive implements ZipEntrySource {

    /** What is kept in memory as a tree, some fifteen times as large: lists of parts, styles, properties. */
    static final long LARGEST_TREE = 16L << 20;

    /** What the texts that sheets share may be: a million rows with three texts each that no other row has. */
    static final long LARGEST_TEXTS = 100L << 20;

    /** What is read from one end to the other may be as large as it likes. */
    static final long ANY = Long.MAX_VALUE;

    /** The longest cell has 32 767 signs, each at most ten bytes as a numbered reference; a tag is shorter by far. */
    private static final int LONGEST_STRETCH = 1_000_000;

    /** Nothing is ever unpacked into files; but a name like these was made to do harm. */
    private static final Pattern ELSEWHERE = Pattern.compile("[/\\\\]|[A-Za-z]:|.*\\\\|(?:.*/)?\\.\\.(?:/|$)");

    private final String file;
    private final ZipEntrySource entries;
    private long most = LARGEST_TREE;
    private Optional<UnreadableRows> refusal = Optional.empty();

    private GuardedArchive(String file, ZipEntrySource entries) {
        this.file = file;
        this.entries = entries;
    }

    /**
     * Opens an archive and looks at its list of contents.
     *
     * @throws UnreadableRows if the list says what no honest archive says
     */
    static GuardedArchive open(File archive, String file) throws IOException {
        var guarded = new GuardedArchive(file, new ZipFileZipEntrySource(new ZipSecureFile(archive)));
        try {
            guarded.look(archive.length());
            return guarded;
        } catch (UnreadableRows e) {
            guarded.close();
            throw e;
        }
    }

    private void look(long length) {
        long packed = 0;
        for (var entry : Collections.list(getEntries())) {
            var name = entry.getName();
            if (ELSEWHERE.matcher(name).lookingAt() || name.chars().anyMatch(Character::isISOControl)) {
                throw refused(
                        "a part of this workbook is named `%s`, a place outside of it".formatted(name),
                        "do not use this file: no spreadsheet program names a part like that");
            }
            packed += Math.max(0, entry.getCompressedSize());
        }
        if (packed > length) {
            throw refused(
                    "the parts of this workbook lie one over another",
                    "do not use this file: it was made to unpack into far more than its size");
        }
    }

    /** From here on, parts may be so large. */
    void allow(long bytes) {
        most = bytes;
    }

    /** Why a part could not be read to its end, if it was refused here. */
    Optional<UnreadableRows> refusal() {
        return refusal;
    }

    private UnreadableRows refused(String problem, String fix) {
        return new UnreadableRows(Span.startOf(file), problem, fix);
    }

    @Override
    public Enumeration<? extends ZipArchiveEntry> getEntries() {
        return entries.getEntries();
    }

    @Override
    public ZipArchiveEntry getEntry(String path) {
        return entries.getEntry(path);
    }

    @Override
    public InputStream getInputStream(ZipArchiveEntry entry) throws IOException {
        return new Guarded(entries.getInputStream(entry), entry.getName(), most);
    }

    @Override
    public void close() throws IOException {
        entries.close();
    }

    @Override
    public boolean isClosed() {
        return entries.isClosed();
    }

    /** Counts what is read: in all, and since the last end of a tag, which is what an XML parser keeps at once. */
    private final class Guarded extends FilterInputStream {
        private final String part;
        private final long allowed;
        private long read;
        private long stretch;

        Guarded(InputStream in, String part, long allowed) {
            super(in);
            this.part = part;
            this.allowed = allowed;
        }

        @Override
        public int read() throws IOException {
            var one = new byte[1];
            int n = read(one, 0, 1);
            return n < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int n = super.read(bytes, from, length);
            if (n > 0) {
                read += n;
                int end = from + n - 1;
                while (end >= from && bytes[end] != '>') {
                    end--;
                }
                stretch = end < from ? stretch + n : from + n - 1 - end;
                check();
            }
            return n;
        }

        private void check() throws IOException {
            if (read > allowed) {
                throw stop("`%s` in this workbook is larger than %d MB, the most such a part may have"
                        .formatted(part, allowed >> 20));
            }
            if (stretch > LONGEST_STRETCH && isXml()) {
                throw stop(
                        "`%s` in this workbook goes on for a million signs without the end of a tag".formatted(part));
            }
        }

        private boolean isXml() {
            return part.endsWith(".xml") || part.endsWith(".rels") || allowed == ANY;
        }

        private IOException stop(String problem) {
            refusal = Optional.of(refused(
                    problem, "open it in a spreadsheet program, copy the cells into a new workbook, and save that"));
            return new IOException(problem);
        }
    }
}
