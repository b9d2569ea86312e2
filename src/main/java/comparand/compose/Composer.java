package comparand.compose;

import comparand.compose.brief.Brief;
import comparand.compose.brief.Letters;
import comparand.compose.figure.FigureSet;
import comparand.compose.manuscript.Manuscript;
import comparand.compose.page.Explorable;
import comparand.compose.results.ResultSets;
import comparand.compose.table.EvidenceTable;
import comparand.compose.table.Workbook;
import comparand.compose.talk.TalkDeck;
import comparand.compose.text.Layout;
import comparand.compose.text.Run;
import comparand.compose.text.RunFacts;
import comparand.compose.text.Words;
import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.publication.Publication;
import comparand.document.result.ResultSet;
import comparand.flow.Outcome;
import comparand.model.Audience;
import comparand.model.Compared;
import comparand.model.library.DossierRecord;
import comparand.model.library.DossierState;
import comparand.model.library.Entries;
import comparand.model.template.Templates;
import java.util.List;
import java.util.Optional;

/** The stage that turns comparisons into finished documents. */
public final class Composer {

    private final Compared compared;
    private final RunFacts facts;
    private final List<Diagnostic> findings;
    private final Templates templates;
    private final Words words;

    private Composer(Compared compared, RunFacts facts, List<Diagnostic> findings, Templates templates, Words words) {
        this.compared = compared;
        this.facts = facts;
        this.findings = findings;
        this.templates = templates;
        this.words = words;
    }

    /**
     * The results as data, and what each reader is given.
     *
     * @param findings what the run found and did not stop for; printed among the limitations
     */
    public static Outcome<Publication> compose(
            Compared compared, RunFacts facts, List<Diagnostic> findings, Templates templates, Commission commission) {
        return words(compared.matched().evidence().checked().dossier(), commission)
                .then(words -> new Composer(compared, facts, findings, templates, words).publication(commission));
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

    private Outcome<Publication> publication(Commission commission) {
        var setting = setting(words);
        var parts = commission.readers().stream()
                .sorted()
                .map(reader -> part(reader, setting))
                .toList();
        return Outcome.all(parts).map(all -> {
            var published = Publication.none(setting.results());
            for (var part : all) {
                published = published.with(part);
            }
            return published;
        });
    }

    private Outcome<Publication> part(Audience reader, Setting setting) {
        return switch (reader) {
            case EVIDENCE -> Outcome.of(evidence(setting));
            case COMMITTEE -> house(templates.committee().wording(), setting).map(this::committee);
            case TALK -> house(templates.talk().wording(), setting).then(this::talk);
            case SUPPLIER -> house(templates.committee().wording(), setting).map(this::letters);
            case PAGE -> house(templates.page().wording(), setting).map(this::page);
            case MANUSCRIPT -> house(templates.manuscript().wording(), setting).map(this::manuscript);
        };
    }

    private Publication evidence(Setting s) {
        return Publication.of(
                s.results(),
                new Workbook(s.run(), s.edition(), s.results()).document(),
                new EvidenceTable(s.run(), s.edition(), s.results()).document());
    }

    private Publication committee(Setting s) {
        return Publication.of(
                s.results(),
                new Brief(s.run(), s.edition(), s.results(), templates.committee(), lookOfCommittee()).document());
    }

    /** Letters come from the committee's desk, and look like its brief. */
    private Publication letters(Setting s) {
        var letters = new Letters(s.run(), s.edition(), s.results(), lookOfCommittee()).documents();
        return Publication.of(s.results(), letters.toArray(Document[]::new));
    }

    private Look lookOfCommittee() {
        return Layout.of(templates.committee().look(), Optional.empty(), templates);
    }

    private Outcome<Publication> talk(Setting s) {
        return new TalkDeck(s.run(), s.edition(), s.results(), templates)
                .deck()
                .map(deck -> new Publication(s.results(), List.of(), List.of(deck), List.of(), List.of()));
    }

    private Publication page(Setting s) {
        var page = new Explorable(s.run(), s.edition(), s.results(), templates.page()).page();
        return new Publication(s.results(), List.of(), List.of(), List.of(page), List.of());
    }

    private Publication manuscript(Setting s) {
        var template = templates.manuscript();
        boolean numbered = template.lineNumbers().map(l -> l.value().isYes()).orElse(false);
        var look = Layout.of(template.look(), Optional.empty(), templates).withLineNumbers(numbered);
        var draft = new Manuscript(s.run(), s.edition(), facts, s.results(), template, look).document();
        return new Publication(
                s.results(), List.of(draft), List.of(), List.of(), new FigureSet(s.run()).alone(s.edition()));
    }

    /** What a document is composed from: the run and its results in one wording, and what every document says of itself. */
    private record Setting(Run run, ResultSet results, Edition edition) {}

    private Setting setting(Words words) {
        var run = new Run(compared, words);
        return new Setting(run, new ResultSets(run, facts, findings).results(), edition(run));
    }

    /** The same in the wording of a house. */
    private Outcome<Setting> house(Entries<Located<String>> wording, Setting plain) {
        return wording.list().isEmpty()
                ? Outcome.of(plain)
                : words.with(wording).map(this::setting);
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
