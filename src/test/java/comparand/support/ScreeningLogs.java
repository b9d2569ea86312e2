package comparand.support;

import comparand.diag.Located;
import comparand.diag.Span;
import comparand.model.library.ScreenedRecord;
import comparand.model.library.ScreeningFate;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SearchKind;
import comparand.model.library.SearchRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Logs of screening made in a test. */
public final class ScreeningLogs {

    private final List<SearchRecord> searches = new ArrayList<>();
    private final List<ScreenedRecord> records = new ArrayList<>();

    public ScreeningLogs search(String id, SearchKind kind) {
        searches.add(new SearchRecord(
                located(id),
                located("place " + id),
                located(kind),
                located(LocalDate.of(2026, 11, 2)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    /** So many records of one fate from the search that was named last. */
    public ScreeningLogs records(int n, ScreeningFate fate, String reason) {
        for (int i = 0; i < n; i++) {
            record(fate, reason, Optional.empty());
        }
        return this;
    }

    public ScreeningLogs record(ScreeningFate fate, String reason, Optional<String> sameStudyAs) {
        var duplicateOf =
                fate == ScreeningFate.DUPLICATE ? Optional.of(located("R0")) : Optional.<Located<String>>empty();
        records.add(new ScreenedRecord(
                located("R" + records.size()),
                Optional.empty(),
                Optional.of(located("record " + records.size())),
                located(searches.get(searches.size() - 1).name()),
                located(fate),
                duplicateOf,
                reason.isEmpty() ? Optional.empty() : Optional.of(located(reason)),
                Optional.empty(),
                sameStudyAs.map(ScreeningLogs::located)));
        return this;
    }

    public int size() {
        return records.size();
    }

    public ScreeningRecord log() {
        return new ScreeningRecord(located("test"), searches, records, Optional.empty());
    }

    private static <T> Located<T> located(T value) {
        return new Located<>(value, Span.startOf("screening/test.yaml"));
    }
}
