package comparand.app;

import comparand.check.Checker;
import comparand.compare.Comparer;
import comparand.compare.FewerSources;
import comparand.compare.Scenarios;
import comparand.compare.Unknowns;
import comparand.compose.Commission;
import comparand.compose.Composer;
import comparand.compose.text.RunFacts;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.digest.Sha;
import comparand.document.publication.Publication;
import comparand.flow.Outcome;
import comparand.match.Matcher;
import comparand.model.Audience;
import comparand.model.Checked;
import comparand.model.Compared;
import comparand.model.Evidence;
import comparand.model.Library;
import comparand.model.LocalResults;
import comparand.model.ScenarioOutcome;
import comparand.model.template.Templates;
import comparand.normalise.Normaliser;
import comparand.read.LibraryReader;
import comparand.read.TemplateReader;
import comparand.study.LocalStudies;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The whole tool on one page: what is handed on, and in what order. */
final class Pipeline {

    private Pipeline() {}

    static Outcome<Checked> checked(DossierFile dossier) {
        return LibraryReader.read(dossier.folder()).then(library -> dossier(library, dossier));
    }

    static Outcome<Evidence> evidence(DossierFile dossier) {
        return checked(dossier)
                .then(checked -> LocalStudies.compute(checked).then(local -> Normaliser.normalise(checked, local)));
    }

    /** The answers alone, for who asks about one value. */
    static Outcome<Compared> answers(DossierFile dossier) {
        return checked(dossier).then(checked -> LocalStudies.compute(checked).then(local -> answered(checked, local)));
    }

    /** The answers with what stays open, for who asks what to measure next. */
    static Outcome<Compared> open(DossierFile dossier) {
        return answers(dossier).map(Unknowns::in);
    }

    /** The answers of the run, what becomes of them under each scenario, what stays open. Raw data are read once for all. */
    static Outcome<Compared> compared(DossierFile dossier) {
        return checked(dossier)
                .then(checked -> LocalStudies.compute(checked)
                        .then(local -> answered(checked, local).then(run -> underScenarios(checked, local, run))))
                .map(Unknowns::in);
    }

    private static Outcome<Compared> answered(Checked checked, LocalResults local) {
        return Normaliser.normalise(checked, local).then(Matcher::match).then(Comparer::compare);
    }

    private static Outcome<Compared> underScenarios(Checked checked, LocalResults local, Compared run) {
        var outcomes = Outcome.of(List.<ScenarioOutcome>of());
        for (var scenario : checked.dossier().scenarios()) {
            outcomes = outcomes.then(before -> answered(checked.under(scenario), local)
                    .map(supposed -> joined(before, Scenarios.outcome(scenario, run, supposed))));
        }
        return outcomes.map(run::with);
    }

    private static List<ScenarioOutcome> joined(List<ScenarioOutcome> before, ScenarioOutcome next) {
        return Stream.concat(before.stream(), Stream.of(next)).toList();
    }

    /** All that the readers of a commission are given, set as the templates in a folder say. */
    static Outcome<Publication> published(DossierFile dossier, Path templates, Commission commission) {
        var compared = compared(dossier);
        return compared.then(c -> TemplateReader.read(templates)
                .then(t -> Composer.compose(
                        commission.readers().contains(Audience.PAGE) ? FewerSources.in(c) : c,
                        facts(c, t),
                        compared.findings(),
                        t,
                        commission)));
    }

    private static Outcome<Checked> dossier(Library library, DossierFile file) {
        var dossier = library.dossiers().get(file.id());
        return dossier == null
                ? Outcome.stopped(List.of(Diagnostic.stop(
                        "dossier-missing",
                        Span.startOf("dossiers/" + file.id() + ".yaml"),
                        "the library holds no dossier `%s`".formatted(file.id()),
                        "there is nothing to build",
                        "check the name under `dossier:` in that file")))
                : Checker.check(library, dossier);
    }

    private static RunFacts facts(Compared compared, Templates templates) {
        var inputs =
                new TreeMap<>(compared.matched().evidence().checked().library().fingerprints());
        inputs.putAll(templates.fingerprints());
        return new RunFacts(Version.tool(), fingerprint(inputs));
    }

    /** SHA-256 over the names and fingerprints of all files, in the order of their names. */
    private static String fingerprint(SortedMap<String, String> inputs) {
        var sha = Sha.digest();
        inputs.forEach((file, print) -> sha.update((file + "\n" + print + "\n").getBytes(StandardCharsets.UTF_8)));
        return Sha.of(sha);
    }
}
