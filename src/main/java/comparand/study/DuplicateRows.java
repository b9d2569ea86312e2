package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.digest.Sha;
import comparand.model.RowSource;
import comparand.model.library.ColumnRecord;
import comparand.model.library.ColumnRole;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Duplicates;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Rows that stand in a file more than once. Rows are kept as digests, so that a million of them fit; two rows with one
 * SHA-256 prefix of 128 bits are taken for equal.
 */
final class DuplicateRows {

    private static final Set<ColumnRole> SAYS_NOTHING = Set.of(ColumnRole.IGNORED, ColumnRole.REMARK);

    private record Digest(long high, long low) {}

    private record First(int line, Digest content) {}

    private final RowSource rows;
    private final Duplicates decision;
    private final int[] telling;
    private final int[] key;
    private final Map<Digest, First> seen = new HashMap<>();
    private final List<Diagnostic> findings = new ArrayList<>();
    private final MessageDigest sha = Sha.digest();
    private final Lines equal = new Lines();
    private int firstOfSecond;

    DuplicateRows(DataFileRecord mapping, RowSource rows) {
        this.rows = rows;
        this.decision = mapping.duplicates().map(d -> d.rows().value()).orElse(Duplicates.REFUSE);
        var header = rows.header();
        this.telling = IntStream.range(0, header.size())
                .filter(i -> mapping.columns()
                        .get(header.get(i))
                        .flatMap(ColumnRecord::holds)
                        .filter(r -> SAYS_NOTHING.contains(r.value()))
                        .isEmpty())
                .toArray();
        this.key = mapping.duplicates()
                .flatMap(d -> d.same())
                .map(same -> same.list().stream()
                        .filter(this::isThere)
                        .mapToInt(h -> header.indexOf(h.value()))
                        .toArray())
                .orElse(telling);
    }

    private boolean isThere(Located<String> heading) {
        boolean there = rows.header().contains(heading.value());
        if (!there) {
            findings.add(Diagnostic.stop(
                    "column-missing",
                    heading.span(),
                    "`%s` has no column `%s`".formatted(rows.file(), heading.value()),
                    "rows that stand there twice would not be found",
                    Suggest.instruction(heading.value(), rows.header())));
        }
        return there;
    }

    /** Whether an equal row was met before and this one is left out by decision. */
    boolean isSecond(RowSource.Row row) {
        if (decision == Duplicates.KEEP
                || key.length == 0
                || row.cells().size() != rows.header().size()) {
            return false;
        }
        var content = digest(row, telling);
        var first = seen.putIfAbsent(key == telling ? content : digest(row, key), new First(row.line(), content));
        if (first == null) {
            return false;
        }
        if (!first.content.equals(content)) {
            differs(row.line(), first.line);
        } else {
            if (equal.count() == 0) {
                firstOfSecond = first.line;
            }
            equal.add(row.line());
        }
        return first.content.equals(content) && decision == Duplicates.DROP_SECOND;
    }

    private void differs(int line, int first) {
        findings.add(Diagnostic.stop(
                "row-twice-differs",
                rows.row(line),
                "this row and the one in line %d speak of one thing and differ".formatted(first),
                "which of the two is right cannot be told from the file",
                "list the wrong one under `dropped:` with a reason"));
    }

    private Digest digest(RowSource.Row row, int[] columns) {
        for (int i : columns) {
            sha.update(row.cells().get(i).text().getBytes(StandardCharsets.UTF_8));
            sha.update((byte) 0);
        }
        var bytes = ByteBuffer.wrap(sha.digest());
        return new Digest(bytes.getLong(), bytes.getLong());
    }

    /** After the last row. */
    List<Diagnostic> findings() {
        var all = new ArrayList<>(findings);
        if (equal.count() > 0 && decision == Duplicates.REFUSE) {
            all.add(Diagnostic.stop(
                    "row-twice",
                    rows.row(equal.first()),
                    "this row says the same as the one in line %d%s"
                            .formatted(
                                    firstOfSecond,
                                    equal.count() > 1 ? "; %d rows are such, %s".formatted(equal.count(), equal) : ""),
                    "a row entered twice counts twice",
                    "write `duplicates: {rows: drop-second, reason: ...}` for this file, or `rows: keep` if equal rows are"
                            + " meant"));
        }
        return all;
    }
}
