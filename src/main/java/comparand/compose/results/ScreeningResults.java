package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.result.ScreeningResult;
import comparand.document.result.ScreeningResult.ExclusionResult;
import comparand.document.result.ScreeningResult.FlowResult;
import comparand.document.result.ScreeningResult.ScreenedResult;
import comparand.document.result.ScreeningResult.SearchResult;
import comparand.model.ScreeningFlow;
import comparand.model.library.ScreenedRecord;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SearchRecord;
import java.util.Optional;

/** The log of screening that a dossier names, as data. */
public final class ScreeningResults {

    private ScreeningResults() {}

    public static Optional<ScreeningResult> of(Run run) {
        return run.library().screening(run.dossier()).map(log -> of(run, log));
    }

    private static ScreeningResult of(Run run, ScreeningRecord log) {
        return new ScreeningResult(
                log.id(),
                run.words().say("figure.note.terms"),
                log.searches().stream().map(s -> search(s, log)).toList(),
                flow(ScreeningFlow.of(log, run.library().sources())),
                log.records().stream().map(r -> record(run, r)).toList());
    }

    private static SearchResult search(SearchRecord s, ScreeningRecord log) {
        return new SearchResult(
                s.name(),
                s.where().value(),
                Kebab.of(s.kind().value()),
                s.on().value().toString(),
                s.by().map(Located::value),
                s.words().map(Located::value),
                log.heldFrom(s.name()));
    }

    private static FlowResult flow(ScreeningFlow flow) {
        return new FlowResult(
                flow.found(),
                flow.duplicates(),
                flow.screened(),
                flow.excluded(),
                flow.sought(),
                flow.notRetrieved(),
                flow.assessed(),
                flow.excludedAfterReading(),
                flow.reasons().stream()
                        .map(r -> new ExclusionResult(r.words(), r.reports()))
                        .toList(),
                flow.reports(),
                flow.studies());
    }

    private static ScreenedResult record(Run run, ScreenedRecord r) {
        return new ScreenedResult(
                r.name(),
                r.source().map(Located::value),
                r.source()
                        .flatMap(s -> run.library().source(s.value()))
                        .map(s -> s.reference().text())
                        .or(() -> r.reference().map(Located::value))
                        .orElse(""),
                r.from().value(),
                Kebab.of(r.became().value()),
                r.duplicateOf().map(Located::value),
                r.reason().map(Located::value),
                r.by().map(Located::value),
                r.sameStudyAs().map(Located::value));
    }
}
