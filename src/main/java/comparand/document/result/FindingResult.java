package comparand.document.result;

import java.util.Optional;

/** A finding that did not stop the run. */
public record FindingResult(
        @Says("HOLD or NOTE") String severity,
        @Says("Name of the check") String code,
        @Says("File") String file,
        @Says("In a workbook, the cell as Cases!F17") Optional<String> cell,
        @Says("Line, or row of the sheet, from 1") int line,
        @Says("Column, from 1") int column,
        @Says("What was found") String message,
        @Says("Why it matters") String why,
        @Says("What to do") String fix) {}
