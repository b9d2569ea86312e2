package comparand.compose;

import comparand.compose.results.ResultSets;
import comparand.compose.table.EvidenceTable;
import comparand.compose.table.Workbook;
import comparand.compose.text.Run;
import comparand.compose.text.RunFacts;
import comparand.compose.text.Words;
import comparand.diag.Diagnostic;
import comparand.document.Edition;
import comparand.document.Publication;
import comparand.flow.Outcome;
import comparand.model.Compared;
import comparand.model.library.DossierState;
import java.util.List;

/** The stage that turns comparisons into finished documents. */
public final class Composer {

    private static final String LANGUAGE = "en";

    private Composer() {}

    /**
     * The results as data, and the documents drawn from them.
     *
     * @param findings what the run found and did not stop for; printed among the limitations
     */
    public static Outcome<Publication> compose(Compared compared, RunFacts facts, List<Diagnostic> findings) {
        var words = Words.of(LANGUAGE);
        var run = new Run(compared, words);

        var results = new ResultSets(run, facts, findings).results();
        var edition = edition(run, facts);
        return Outcome.of(new Publication(
                results,
                List.of(
                        new Workbook(run, edition, results).document(),
                        new EvidenceTable(run, edition, results).document())));
    }

    private static Edition edition(Run run, RunFacts facts) {
        var dossier = run.dossier();
        var words = run.words();
        return new Edition(
                dossier.title().value(),
                dossier.question().value(),
                dossier.asOf().value(),
                dossier.preparedBy().value(),
                facts.tool(),
                facts.fingerprint().substring(0, 8),
                words.say(dossier.state().value() == DossierState.DRAFT ? "draft" : "released"),
                dossier.inventedData().value().isYes() ? List.of(words.say("invented")) : List.of(),
                words.cautions(),
                words.language());
    }
}
