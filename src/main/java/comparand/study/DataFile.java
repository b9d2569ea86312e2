package comparand.study;

import comparand.diag.Located;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.library.ConditionText;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Entries;
import comparand.model.library.SampleUnit;
import comparand.model.library.StudyRecord;

/**
 * One data file of a study, ready to be computed from.
 *
 * @param path the file's name from the library's folder on, for trails
 * @param rows where its rows come from, for the places of findings
 * @param fixed the conditions that hold for every row
 */
record DataFile(
        Library library,
        StudyRecord study,
        DataFileRecord mapping,
        String path,
        RowSource rows,
        ColumnPlan columns,
        Entries<Located<ConditionText>> fixed) {

    /** The level that counts as independent. */
    SampleUnit level() {
        return study.unitOfAnalysis().value();
    }

    /** The file's name as the study writes it. */
    String name() {
        return mapping.name();
    }

    /** Whom a row belongs to on the level that counts. */
    String member(RowFacts row) {
        return row.members().getOrDefault(level(), "line " + row.line());
    }
}
