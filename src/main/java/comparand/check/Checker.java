package comparand.check;

import comparand.flow.Outcome;
import comparand.model.Checked;
import comparand.model.Library;
import comparand.model.library.DossierRecord;
import java.time.LocalDate;
import java.util.List;

/** The stage that checks a library as written, all rules over all files at once. */
public final class Checker {

    private Checker() {}

    /** Every finding on a library and all its dossiers, with the values held. */
    public static Outcome<Library> check(Library library, LocalDate today) {
        return Outcome.of(
                library,
                run(library, List.copyOf(library.dossiers().values()), today).all());
    }

    /** What of a library a dossier rests on, if it may be worked with; with the findings on that. */
    public static Outcome<Checked> check(Library library, DossierRecord dossier) {
        var findings = run(library, List.of(dossier), dossier.asOf().value());
        var rested = new RestedOn(library, dossier);
        return Outcome.of(new Checked(rested.library(), dossier, findings.held()), rested.findings(findings.all()));
    }

    private static Findings.Found run(Library library, List<DossierRecord> dossiers, LocalDate today) {
        var context = new Context(library, dossiers, today);
        // each rule by itself and two and more at a time; put together in the order of the rules
        return Findings.together(Rules.ALL.parallelStream()
                .map(rule -> {
                    var findings = new Findings(rule);
                    rule.check(context, findings);
                    return findings;
                })
                .toList());
    }
}
