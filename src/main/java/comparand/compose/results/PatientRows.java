package comparand.compose.results;

import comparand.compose.text.Run;
import comparand.model.library.StudyKind;
import java.util.Set;

/**
 * What is said of patients' rows where others than the author read it. A finding may quote a number or the name of a case;
 * the author sees it, at the terminal, and documents say only that something was found, under which rule and on which line.
 * Findings pass as they are where their words come from no cell; of any other, new ones too, the words are kept back.
 */
final class PatientRows {

    /** Codes whose words hold nothing out of a row: counts, headings, units, and what the author wrote. */
    private static final Set<String> QUOTE_NO_CELL = Set.of(
            "columns-hidden",
            "data-without-rows",
            "device-changed",
            "device-differs",
            "dropped-by-rule",
            "dropped-line",
            "formulas-stored",
            "member-left-out",
            "numbers-as-text",
            "outside-label",
            "row-has-remark",
            "row-twice",
            "rows-hidden",
            "sheet-hidden",
            "value-missing");

    private final Run run;

    PatientRows(Run run) {
        this.run = run;
    }

    /**
     * The words of a finding as documents may print them.
     *
     * @param file it speaks of, from the library's folder on, with or without a sheet
     */
    String inDocuments(String file, String code, String message) {
        return QUOTE_NO_CELL.contains(code) || !isOfPatients(file)
                ? message
                : run.words().say("found.of-patients");
    }

    private boolean isOfPatients(String file) {
        return !file.endsWith("/study.yaml")
                && run.library().studies().values().stream()
                        .filter(s -> s.kind().value() == StudyKind.CLINICAL)
                        .anyMatch(s -> file.startsWith("studies/" + s.id() + "/"));
    }
}
