package comparand.model.library;

import comparand.diag.Located;
import java.util.List;
import java.util.Optional;

/** A local study: its raw data files and what they mean. */
@Meaning("A local study, kept in studies/<name>/study.yaml beside its raw data")
public record StudyRecord(
        @Meaning("Name of the study: the name of its folder")
        Located<String> study,

        @Meaning("As it is printed in reports") Located<String> title,
        @Meaning("bench or clinical") Located<StudyKind> kind,

        @Meaning("What counts as one independent result: units, runs or cases") @Key("unit-of-analysis")
        Located<SampleUnit> unitOfAnalysis,

        @Meaning("Where it was done, if in one place") Optional<Located<String>> centre,
        @Meaning("When it was done, in words") Optional<Located<String>> period,

        @Meaning("Conditions that hold for every file, unless the file says otherwise")
        Entries<Located<ConditionText>> conditions,

        @Meaning("The raw data files") @AtLeast(1) List<DataFileRecord> files,

        @Meaning("Questions left open; each stops the run until it is settled and its line deleted")
        List<Located<String>> undecided,

        @Meaning("A remark for the reader of the library") Optional<Located<String>> remark) {

    public String id() {
        return study.value();
    }
}
