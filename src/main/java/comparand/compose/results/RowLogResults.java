package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.document.result.RowLogResult;
import comparand.document.result.RowLogResult.CountResult;
import comparand.document.result.RowLogResult.FileResult;
import comparand.document.result.RowLogResult.LabelUseResult;
import comparand.document.result.RowLogResult.NoteResult;
import comparand.model.RowLog;
import comparand.model.library.StudyKind;
import java.util.Optional;

/** The row log as data. Of patients, counts below the dossier's limit are left out. */
public final class RowLogResults {

    private RowLogResults() {}

    public static RowLogResult of(Run run) {
        var log = run.compared().matched().evidence().log();
        return new RowLogResult(
                log.files().stream().map(f -> file(run, f)).toList(),
                log.counts().stream().map(c -> count(run, c)).toList(),
                log.label().stream()
                        .map(l -> new LabelUseResult(
                                l.study(), l.device(), l.condition(), l.limit(), l.outside(), l.of(), l.level()))
                        .toList(),
                RowTotals.total(run),
                RowTotals.studies(run));
    }

    private static FileResult file(Run run, RowLog.FileLog f) {
        var patients = new PatientRows(run);
        return new FileResult(
                f.study(),
                f.file(),
                f.rows(),
                f.kept(),
                f.dropped(),
                f.held(),
                f.notes().stream()
                        .map(n -> new NoteResult(
                                n.line(),
                                Kebab.of(n.fate()),
                                n.code(),
                                patients.inDocuments(f.file(), n.code(), n.reason())))
                        .toList(),
                f.unlisted());
    }

    private static CountResult count(Run run, RowLog.Count c) {
        var study = run.library().studies().get(c.study());
        boolean guarded = study != null && study.kind().value() == StudyKind.CLINICAL;
        boolean shown = !guarded || c.members() >= run.dossier().smallestGroup();
        return new CountResult(
                c.study(),
                c.centre(),
                c.device(),
                c.step(),
                c.level(),
                shown ? Optional.of(c.members()) : Optional.empty(),
                shown ? Optional.of(c.rows()) : Optional.empty());
    }
}
