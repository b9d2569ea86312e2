package comparand.check;

import comparand.diag.Located;
import comparand.model.Library;
import comparand.model.library.DossierRecord;
import comparand.model.library.ScreenedRecord;
import comparand.model.library.ScreeningFate;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import comparand.model.library.ValueRecord;
import java.util.Optional;

/**
 * Holds a log and the sources of a dossier that names it against each other: every source has come in by a record; what is
 * included is a source of the dossier and stands; what is left out gives no value that is compared.
 *
 * <p>Included is a report, not a number. A superseded revision of instructions for use, a preprint and a second report of one
 * study may be included though their values are set aside: the report was found eligible and is described, and its values do
 * not take part because another report speaks for the devices of today, or for the same study (PRISMA 2020 counts reports of
 * included studies, Page et al., BMJ 2021;372:n71, figure 1). A retracted report was not found to stand, and what the dossier
 * leaves out it does not include.
 */
final class FlowAgainstSources {

    private static final String INCLUDED = "what is counted as included is what the report rests on";
    private static final String LEFT_OUT = "a reader takes what the log leaves out for something that plays no part";

    private final Library library;
    private final DossierRecord dossier;
    private final ScreeningRecord log;
    private final Findings findings;

    FlowAgainstSources(Library library, DossierRecord dossier, ScreeningRecord log, Findings findings) {
        this.library = library;
        this.dossier = dossier;
        this.log = log;
        this.findings = findings;
    }

    void check() {
        library.sources().values().stream().filter(this::isUsed).forEach(this::route);
        for (var record : log.records()) {
            if (record.is(ScreeningFate.INCLUDED)) {
                included(record);
            } else if (!record.is(ScreeningFate.DUPLICATE)) {
                leftOut(record);
            }
        }
    }

    private boolean isUsed(SourceRecord source) {
        return dossier.sources().isEmpty() || names(source);
    }

    private boolean names(SourceRecord source) {
        return dossier.sources().stream().anyMatch(s -> s.value().equals(source.id()));
    }

    private void route(SourceRecord source) {
        if (log.records().stream().noneMatch(r -> r.isRouteOf(source.id()))) {
            int left = count(ScreeningFate.EXCLUDED_AFTER_READING);
            int included = count(ScreeningFate.INCLUDED);
            findings.stop(
                    log.screening().span(),
                    "assessed %d - left out %d = %d, and beside these there is `%s`"
                            .formatted(left + included, left, included, source.id()),
                    FlowCounts.ADDED_UP,
                    "give it a route, such as `- {id: NAME, source: %s, from: %s, became: included}`, or leave it out "
                                    .formatted(
                                            source.id(), log.searches().get(0).name())
                            + "with a reason: `became: excluded-after-reading, reason: WHY`");
        }
    }

    private int count(ScreeningFate fate) {
        return (int) log.records().stream().filter(r -> r.is(fate)).count();
    }

    private void included(ScreenedRecord record) {
        var source = record.source().flatMap(s -> library.source(s.value()));
        if (source.isEmpty()) {
            var named = record.source().or(record::reference).orElse(record.id());
            findings.stop(
                    named.span(),
                    "`%s` is included, and there is no source `%s`".formatted(record.name(), named.value()),
                    INCLUDED,
                    "add it as a file in sources/ and name it in `source:`, or write what became of it");
            return;
        }
        notStanding(source.get())
                .ifPresent(why -> findings.stop(
                        record.became().span(),
                        "`%s` is included, and %s".formatted(record.name(), why),
                        INCLUDED,
                        "write `became: excluded-after-reading` with a `reason:`"));
    }

    /** Why a source cannot be included, as the end of a sentence. */
    private Optional<String> notStanding(SourceRecord source) {
        if (source.status().state().value() == SourceState.RETRACTED) {
            return Optional.of("`%s` is retracted".formatted(source.id()));
        }
        if (dossier.leaveOut().stream().anyMatch(l -> l.what().value().equals(source.id()))) {
            return Optional.of("`%s` leaves `%s` out".formatted(dossier.id(), source.id()));
        }
        return isUsed(source)
                ? Optional.empty()
                : Optional.of("`%s` is not among the sources of `%s`".formatted(source.id(), dossier.id()));
    }

    private void leftOut(ScreenedRecord record) {
        record.source()
                .map(Located::value)
                .flatMap(library::source)
                .filter(this::isUsed)
                .flatMap(this::compared)
                .ifPresent(value -> findings.stop(
                        record.became().span(),
                        "`%s` is left out, and value `%s` of `%s` takes part"
                                .formatted(
                                        record.name(),
                                        value.id().value(),
                                        record.source().map(Located::value).orElse("")),
                        LEFT_OUT,
                        "write `became: included`, or leave the source out of `%s` too, with `leave-out:`"
                                .formatted(dossier.id())));
    }

    /** A value that would be set beside others; a claim is words, and a report without any number may be left out for that. */
    private Optional<ValueRecord> compared(SourceRecord source) {
        boolean stands = switch (source.status().state().value()) {
            case CURRENT, CORRECTED, CONCERN -> source.sameStudyAs().isEmpty();
            case RETRACTED, SUPERSEDED, PREPRINT -> false;
        };
        return source.values().stream()
                .filter(v -> stands && v.claim().isEmpty())
                .filter(v -> dossier.devices().stream()
                        .anyMatch(d -> d.value().equals(v.device().value())))
                .filter(v -> dossier.leaveOut().stream()
                        .map(l -> l.what().value())
                        .noneMatch(w -> w.equals(source.id()) || w.equals(v.id().value())))
                .findFirst();
    }
}
