package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** What became of the rows of the raw files; no row of a patient is repeated here. */
public record RowLogResult(
        @Says("Each file: rows = kept + dropped + held") List<FileResult> files,

        @Says("Kept units or cases by centre and device, of all steps together and of each")
        List<CountResult> counts,

        @Says("Use outside of what a label allows") List<LabelUseResult> outsideLabel,

        @Says("From all rows to the pairs that are compared")
        AllRowsResult total,

        @Says("Kept units or cases by study, of all centres and devices together")
        List<StudyResult> studies) {

    /** All files together, and what came of them. */
    public record AllRowsResult(
            @Says("Raw files") int files,
            @Says("Rows of all files") int rows,
            @Says("Rows that take part") int kept,
            @Says("Rows left out by a recorded decision") int dropped,

            @Says("Rows kept out of results because they say what cannot be")
            int held,

            @Says("Why rows were left out, the most frequent reason first")
            List<ReasonResult> reasons,

            @Says("Rows left out for reasons behind the first three")
            int otherReasons,

            @Says("Pairs set side by side") int pairs,
            @Says("Pairs that are compared") int compared,
            @Says("Pairs that are shown and not compared") int shown) {

        /** How many reasons are named where room is short. */
        public static final int NAMED = 3;

        /** The first reasons. */
        public List<ReasonResult> named() {
            return reasons.subList(0, Math.min(NAMED, reasons.size()));
        }
    }

    /** A reason, and how many rows it took. */
    public record ReasonResult(
            @Says("The reason") String reason,
            @Says("Rows left out for it") int rows) {}

    /** One study. */
    public record StudyResult(
            @Says("The study") String study,
            @Says("What is counted: units, cases") String of,

            @Says("How many; absent where fewer than the dossier shows of patients")
            Optional<Integer> members,

            @Says("Centres it names") int centres,
            @Says("Devices it used") int devices,
            @Says("When it was done, in words") Optional<String> period) {}

    /** One file. */
    public record FileResult(
            @Says("The study") String study,
            @Says("The file, and the sheet of a workbook") String file,
            @Says("Rows behind the headings") int rows,
            @Says("Rows that take part") int kept,
            @Says("Rows left out by a recorded decision") int dropped,

            @Says("Rows kept out of results because they say what cannot be")
            int held,

            @Says("Rows that are not simply kept, in file order")
            List<NoteResult> notes,

            @Says("How many more notes there are than are listed")
            int unlisted) {}

    /** A row that is not simply kept. */
    public record NoteResult(
            @Says("The line, or the row of the sheet") int line,
            @Says("dropped, held or remarked") String fate,
            @Says("The decision or check") String code,
            @Says("The reason") String reason) {}

    /** Members of a device in a centre. */
    public record CountResult(
            @Says("The study") String study,

            @Says("The centre; empty if the study names none")
            String centre,

            @Says("The device") String device,

            @Says("The step; empty for all steps together") String step,

            @Says("What is counted: units, cases") String of,

            @Says("How many; absent where fewer than the dossier shows of patients")
            Optional<Integer> members,

            @Says("Rows they rest on; absent where the number is")
            Optional<Integer> rows) {}

    /** Use outside of a label. */
    public record LabelUseResult(
            @Says("The study") String study,
            @Says("The device") String device,
            @Says("What the label limits") String condition,
            @Says("The labelled range") String limit,
            @Says("Units or cases that were outside of it") int outside,
            @Says("Units or cases for which it is known") int of,
            @Says("What is counted: units, cases") String level) {}
}
