package comparand.study;

import comparand.diag.Located;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.library.ConditionText;
import comparand.model.library.DataFileRecord;
import comparand.model.library.Entries;
import comparand.model.library.SampleUnit;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One data file of a study, ready to be computed from.
 *
 * @param path the file's name from the library's folder on, for trails
 * @param rows where its rows come from, for the places of findings
 * @param fixed the conditions that hold for every row
 * @param given where the inputs of formulas come from
 * @param headings the heading of the column that gives a quantity, by its id
 */
record DataFile(
        Library library,
        StudyRecord study,
        DataFileRecord mapping,
        String path,
        RowSource rows,
        ColumnPlan columns,
        Entries<Located<ConditionText>> fixed,
        GivenInputs given,
        Map<String, String> headings) {

    DataFile {
        headings = Map.copyOf(headings);
    }

    /** The column that gives a quantity, with its file where it is another one. */
    String heading(String quantity) {
        return headings.getOrDefault(quantity, quantity);
    }

    /** The level that counts as independent. */
    SampleUnit level() {
        return study.unitOfAnalysis().value();
    }

    /** The file's name as the study writes it. */
    String name() {
        return mapping.name();
    }

    /** Where all its rows come from; empty if from several places, or if nobody says. */
    String centre() {
        return mapping.centre().or(study::centre).map(Located::value).orElse("");
    }

    /** Whom a row belongs to on the level that counts. */
    Member member(RowFacts row) {
        var id = row.members().get(level());
        return new Member(row.centre(), id == null ? "line " + row.line() : id);
    }

    /** What tells the step of a row from those of others: the number or word of each condition that sets groups apart. */
    List<Object> step(RowFacts row) {
        var step = new ArrayList<Object>(mapping.groupedBy().size());
        for (var by : mapping.groupedBy()) {
            step.add(row.stated(by.value()));
        }
        return step;
    }

    /** A file is itself and no other: every row asks for it, and to look through all it holds would take longer than the row. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return path.hashCode();
    }
}
