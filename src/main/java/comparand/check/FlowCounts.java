package comparand.check;

import comparand.model.library.ScreenedRecord;
import comparand.model.library.ScreeningFate;
import comparand.model.library.ScreeningRecord;
import java.util.HashMap;
import java.util.Map;

/**
 * What it checks: a log of screening whose counts do not add up. A search holds another number of records than it found; a
 * duplicate repeats nothing, or what repeats something is none; a source comes in by two records; a report was left out
 * after reading and nobody said why; and, for a log that a dossier names, what {@link FlowAgainstSources} finds.
 *
 * <p>Why it matters: the counts of the flow are the first thing a reviewer adds up, and the PRISMA 2020 statement asks for
 * each (Page et al., BMJ 2021;372:n71, items 16a and 16b).
 *
 * <p>What to write instead: one record for everything that was found, with what became of it.
 */
final class FlowCounts implements Rule {

    static final String ADDED_UP = "the counts of a flow are the first thing a reviewer adds up";
    private static final String ONE_BOX = "each record ends in one box of the flow, and a duplicate leaves it first";
    private static final String REASONS = "a report that was read and left out is printed with its reason";

    @Override
    public String code() {
        return "flow-counts";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var log : context.library().screenings().values()) {
            found(log, findings);
            var routes = new HashMap<String, String>();
            for (var record : log.records()) {
                duplicate(record, findings);
                reason(record, findings);
                route(record, routes, findings);
            }
        }
        for (var dossier : context.dossiers()) {
            context.library()
                    .screening(dossier)
                    .ifPresent(log -> new FlowAgainstSources(context.library(), dossier, log, findings).check());
        }
    }

    private static void found(ScreeningRecord log, Findings findings) {
        for (var search : log.searches()) {
            int held = log.heldFrom(search.name());
            search.found()
                    .filter(f -> f.value().value().doubleValue() != held)
                    .ifPresent(f -> findings.stop(
                            f.span(),
                            "`%s` found %s, and %s of this log came from it"
                                    .formatted(search.name(), f.value().text(), records(held)),
                            ADDED_UP,
                            "give each its record, such as `- {id: NAME, reference: TITLE, from: %s, became: "
                                            .formatted(search.name())
                                    + "excluded-at-screening, reason: WHY}`, or write `found: %d`".formatted(held)));
        }
    }

    private static String records(int n) {
        return n == 1 ? "1 record" : n + " records";
    }

    private static void duplicate(ScreenedRecord record, Findings findings) {
        boolean repeats = record.duplicateOf().isPresent();
        if (record.is(ScreeningFate.DUPLICATE) && !repeats) {
            findings.stop(
                    record.became().span(),
                    "`%s` is a duplicate, and not said of which record".formatted(record.name()),
                    ONE_BOX,
                    "add `duplicate-of:` with the name of the record it repeats");
        } else if (!record.is(ScreeningFate.DUPLICATE)) {
            record.duplicateOf()
                    .ifPresent(of -> findings.stop(
                            of.span(),
                            "`%s` repeats `%s`, and is not counted as a duplicate".formatted(record.name(), of.value()),
                            ONE_BOX,
                            "write `became: duplicate`, or take `duplicate-of:` out; two reports of one study are "
                                    + "`same-study-as:`"));
        }
    }

    private static void reason(ScreenedRecord record, Findings findings) {
        if (record.is(ScreeningFate.EXCLUDED_AFTER_READING) && record.reason().isEmpty()) {
            findings.stop(
                    record.became().span(),
                    "`%s` was left out after reading, and not said why".formatted(record.name()),
                    REASONS,
                    "add `reason:` in words, the same for all that were left out for one reason");
        }
    }

    private static void route(ScreenedRecord record, Map<String, String> routes, Findings findings) {
        record.source().filter(s -> record.isRouteOf(s.value())).ifPresent(s -> {
            var first = routes.putIfAbsent(s.value(), record.name());
            if (first != null) {
                findings.stop(
                        s.span(),
                        "`%s` has come in as `%s` already".formatted(s.value(), first),
                        ADDED_UP,
                        "write `became: duplicate, duplicate-of: %s` here, or take one of the two out"
                                .formatted(first));
            }
        });
    }
}
