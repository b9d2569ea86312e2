package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.ScreenedRecord;
import comparand.model.library.ScreeningFate;
import comparand.model.library.SearchRecord;
import java.util.Collection;

/**
 * What it checks: a record of a log of screening that names a search or another record the log does not hold, itself, a
 * duplicate as what it repeats, or a source the library does not hold.
 *
 * <p>Why it matters: a record that leads nowhere is missing from a count.
 *
 * <p>What to write instead: names of this log, and of files in sources/.
 */
final class ScreeningNames implements Rule {

    private static final String WHY = "a record that leads nowhere is missing from a count";

    @Override
    public String code() {
        return "screening-names-unknown";
    }

    @Override
    public void check(Context context, Findings findings) {
        var sources = context.library().sources().keySet();
        for (var log : context.library().screenings().values()) {
            var searches = log.searches().stream().map(SearchRecord::name).toList();
            var records = log.records().stream().map(ScreenedRecord::name).toList();
            var originals = log.records().stream()
                    .filter(r -> !r.is(ScreeningFate.DUPLICATE))
                    .map(ScreenedRecord::name)
                    .toList();
            for (var record : log.records()) {
                known(record.from(), searches, "search", findings);
                record.duplicateOf().ifPresent(of -> other(record, of, originals, "record", findings));
                record.sameStudyAs().ifPresent(as -> other(record, as, records, "record", findings));
                if (!record.is(ScreeningFate.INCLUDED)) {
                    record.source().ifPresent(s -> known(s, sources, "source", findings));
                }
            }
        }
    }

    private static void other(
            ScreenedRecord record, Located<String> named, Collection<String> known, String what, Findings findings) {
        if (named.value().equals(record.name())) {
            findings.stop(named.span(), "`%s` names itself".formatted(record.name()), WHY, "name the other record");
        } else {
            known(named, known, what, findings);
        }
    }

    private static void known(Located<String> named, Collection<String> known, String what, Findings findings) {
        if (!known.contains(named.value())) {
            findings.stop(
                    named.span(),
                    "there is no %s `%s` that could be meant".formatted(what, named.value()),
                    WHY,
                    Suggest.instruction(named.value(), known));
        }
    }
}
