package comparand.document.result;

/** A published value without a local one. */
public record UnpairedResult(
        @Says("Name of the value") String comparand,
        @Says("Why nothing is set beside it") String why) {}
