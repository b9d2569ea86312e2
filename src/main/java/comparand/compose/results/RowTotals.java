package comparand.compose.results;

import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.result.RowLogResult.AllRowsResult;
import comparand.document.result.RowLogResult.ReasonResult;
import comparand.document.result.RowLogResult.StudyResult;
import comparand.model.RowLog;
import comparand.model.RowLog.Count;
import comparand.model.RowLog.Fate;
import comparand.model.RowLog.FileLog;
import comparand.model.RowLog.RowNote;
import comparand.model.library.StudyKind;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** From all rows of the raw files to the pairs that are compared, in numbers that add up. */
final class RowTotals {

    private static final String WITH_ITS_CASE = "member-left-out";

    private RowTotals() {}

    static AllRowsResult total(Run run) {
        var log = run.compared().matched().evidence().log();
        var reasons = reasons(log);
        int dropped = sum(log, FileLog::dropped);
        int named = reasons.stream()
                .limit(AllRowsResult.NAMED)
                .mapToInt(ReasonResult::rows)
                .sum();
        int pairs = run.compared().comparisons().size();
        int compared = (int) run.compared().comparisons().stream()
                .filter(c -> c.pairing().standing().isCompared())
                .count();
        return new AllRowsResult(
                log.files().size(),
                sum(log, FileLog::rows),
                sum(log, FileLog::kept),
                dropped,
                sum(log, FileLog::held),
                reasons,
                dropped - named,
                pairs,
                compared,
                pairs - compared);
    }

    private static int sum(RowLog log, ToIntFunction<FileLog> count) {
        return log.files().stream().mapToInt(count).sum();
    }

    private static List<ReasonResult> reasons(RowLog log) {
        var counts = new LinkedHashMap<String, Integer>();
        log.files().stream()
                .flatMap(f -> f.notes().stream())
                .filter(n -> n.fate() == Fate.DROPPED)
                .forEach(n -> counts.merge(reason(n), 1, Integer::sum));
        var reasons = new ArrayList<ReasonResult>();
        counts.forEach((reason, rows) -> reasons.add(new ReasonResult(reason, rows)));
        reasons.sort((a, b) -> Integer.compare(b.rows(), a.rows()));
        return reasons;
    }

    /** Rows that went with their case went for its reason. */
    private static String reason(RowNote note) {
        return note.code().equals(WITH_ITS_CASE) ? note.reason().replaceFirst("^[^:]*: ", "") : note.reason();
    }

    static List<StudyResult> studies(Run run) {
        var byStudy = new LinkedHashMap<String, List<Count>>();
        run.compared().matched().evidence().log().counts().stream()
                .filter(c -> c.step().isEmpty())
                .forEach(c -> byStudy.computeIfAbsent(c.study() + "\n" + c.level(), k -> new ArrayList<>())
                        .add(c));
        return byStudy.values().stream().map(counts -> study(run, counts)).toList();
    }

    private static StudyResult study(Run run, List<Count> counts) {
        var first = counts.get(0);
        int members = counts.stream().mapToInt(Count::members).sum();
        var record = run.library().studies().get(first.study());
        boolean guarded = record != null && record.kind().value() == StudyKind.CLINICAL;
        return new StudyResult(
                first.study(),
                first.level(),
                guarded && members < run.dossier().smallestGroup() ? Optional.empty() : Optional.of(members),
                (int) counts.stream()
                        .map(Count::centre)
                        .filter(c -> !c.isEmpty())
                        .distinct()
                        .count(),
                (int) counts.stream().map(Count::device).distinct().count(),
                Optional.ofNullable(record).flatMap(StudyRecord::period).map(Located::value));
    }
}
