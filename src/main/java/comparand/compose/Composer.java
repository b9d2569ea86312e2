package comparand.compose;

import comparand.compose.figure.FigureSet;
import comparand.compose.manuscript.Manuscript;
import comparand.compose.results.ResultSets;
import comparand.compose.table.EvidenceTable;
import comparand.compose.table.Workbook;
import comparand.compose.text.Layout;
import comparand.compose.text.Run;
import comparand.compose.text.RunFacts;
import comparand.compose.text.Words;
import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.chart.Chart;
import comparand.document.publication.Publication;
import comparand.document.result.ResultSet;
import comparand.document.talk.Deck;
import comparand.flow.Outcome;
import comparand.model.Audience;
import comparand.model.Compared;
import comparand.model.library.DossierRecord;
import comparand.model.library.DossierState;
import comparand.model.template.Templates;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The stage that turns comparisons into finished documents. */
public final class Composer {

    private final Compared compared;
    private final RunFacts facts;
    private final Words words;

    private Composer(Compared compared, RunFacts facts, Words words) {
        this.compared = compared;
        this.facts = facts;
        this.words = words;
    }

    /**
     * The results as data, and the documents drawn from them.
     *
     * @param findings what the run found and did not stop for; printed among the limitations
     */
    public static Outcome<Publication> compose(
            Compared compared, RunFacts facts, List<Diagnostic> findings, Templates templates, Commission commission) {
        return words(compared.matched().evidence().checked().dossier(), commission)
                .then(words -> new Composer(compared, facts, words).publication(findings, templates, commission));
    }

    private static Outcome<Words> words(DossierRecord dossier, Commission commission) {
        var language = commission.language().orElseGet(dossier::languageOrEnglish);
        return Words.find(language)
                .map(Outcome::of)
                .orElseGet(() -> Outcome.stopped(List.of(Diagnostic.stop(
                        "language-unknown",
                        dossier.language().map(Located::span).orElse(Span.startOf(language)),
                        "there are no words for the language `%s`".formatted(language),
                        "every sentence of the documents comes from one file of words",
                        "write `language: en` or `language: de`"))));
    }

    private Outcome<Publication> publication(List<Diagnostic> findings, Templates templates, Commission commission) {
        var run = new Run(compared, words);
        var results = new ResultSets(run, facts, findings).results();
        var documents = new ArrayList<Document>();
        var decks = new ArrayList<Deck>();
        var figures = new ArrayList<Chart>();
        if (commission.readers().contains(Audience.EVIDENCE)) {
            documents.add(new Workbook(run, edition(run), results).document());
            documents.add(new EvidenceTable(run, edition(run), results).document());
        }
        if (commission.readers().contains(Audience.MANUSCRIPT)) {
            figures.addAll(new FigureSet(run).alone(edition(run)));
        }
        return (commission.readers().contains(Audience.MANUSCRIPT)
                        ? manuscript(results, templates).map(List::of)
                        : Outcome.of(List.<Document>of()))
                .map(texts -> {
                    documents.addAll(texts);
                    return new Publication(results, documents, decks, figures);
                });
    }

    private Outcome<Document> manuscript(ResultSet results, Templates templates) {
        var template = templates.manuscript();
        boolean numbered = template.lineNumbers().map(l -> l.value().isYes()).orElse(false);
        var look = Layout.of(template.look(), Optional.empty(), templates).withLineNumbers(numbered);
        return words.with(template.wording()).map(own -> {
            var run = new Run(compared, own);
            return new Manuscript(run, edition(run), facts, results, template, look).document();
        });
    }

    private Edition edition(Run run) {
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
