package comparand.document.result;

/** A finding that did not stop the run. */
public record FindingResult(
        @Says("HOLD or NOTE") String severity,
        @Says("Name of the check") String code,
        @Says("File") String file,
        @Says("Line, from 1") int line,
        @Says("Column, from 1") int column,
        @Says("What was found") String message,
        @Says("Why it matters") String why,
        @Says("What to do") String fix) {}
