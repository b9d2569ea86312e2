package comparand.document.result;

/** A value that takes no part. */
public record SetAsideResult(
        @Says("Name of the value") String value,
        @Says("Name of its source or study") String source,
        @Says("Name of its metric") String metric,
        @Says("Name of its device") String device,

        @Says("As printed in the source; for a local result, its raw data file")
        String printed,

        @Says("Short pointer to its place") String locator,

        @Says("retracted, superseded, preprint, same-study, left-out or held")
        String reason,

        @Says("The reason in words") String words) {}
