package comparand.reference;

import comparand.diag.Diagnostic;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Sources of a library that may be one work, and those that may report one study. */
public final class LibraryDuplicates {

    private LibraryDuplicates() {}

    /** One finding a pair, in the record that comes second by name. */
    public static List<Diagnostic> findings(Collection<SourceRecord> sources) {
        var known = sources.stream().map(Known::of).toList();
        var findings = new ArrayList<Diagnostic>();
        for (int i = 0; i < known.size(); i++) {
            for (int j = i + 1; j < known.size(); j++) {
                pair(known.get(i), known.get(j), findings);
            }
        }
        SameStudy.within(known).forEach(s -> s.finding().ifPresent(findings::add));
        return findings;
    }

    private static void pair(Known a, Known b, List<Diagnostic> findings) {
        // revisions of instructions for use are works of their own
        boolean areRevisions =
                a.source().document().isPresent() && b.source().document().isPresent();
        Likeness.of(a.reference(), b.reference())
                .filter(l -> !areRevisions && a.stage() == b.stage() && !a.isTiedTo(b.id()) && !b.isTiedTo(a.id()))
                .ifPresent(l -> findings.add(Diagnostic.note(
                        "source-twice-proposed",
                        b.source().source().span(),
                        "`%s` seems to be the same work as `%s`: %s".formatted(b.id(), a.id(), l.reason()),
                        "one work in two records would count twice",
                        "keep one of the records and move the values of the other to it; if they are two works, mend what is the"
                                + " same in both")));
    }
}
