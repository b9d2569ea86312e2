package comparand.reference.format;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.util.AbstractList;
import java.util.List;

/** The first findings on a file, added to others; those after them are only counted, for nobody reads them. */
final class FirstFindings extends AbstractList<Diagnostic> {

    /** One for each reference of a large export. */
    private static final int MOST = 10_000;

    private final List<Diagnostic> all;
    private final int before;
    private long left;

    FirstFindings(List<Diagnostic> all) {
        this.all = all;
        this.before = all.size();
    }

    @Override
    public boolean add(Diagnostic finding) {
        if (size() < MOST) {
            return all.add(finding);
        }
        left++;
        return true;
    }

    @Override
    public Diagnostic get(int index) {
        return all.get(before + index);
    }

    @Override
    public int size() {
        return all.size() - before;
    }

    /** Says how many were left out. */
    void end(String file) {
        if (left > 0) {
            all.add(Diagnostic.note(
                    "findings-too-many",
                    Span.startOf(file),
                    "%d more findings on this file are not listed".formatted(left),
                    "so many come from one fault of the export that is in every reference",
                    "mend the first of them, then import the file again"));
        }
    }
}
