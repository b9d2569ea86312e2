package comparand.document.chart;

/** The shape of a point; it carries the meaning, colour only repeats it. */
public enum Mark {
    /** Our own mean or difference. */
    FILLED_CIRCLE,
    HOLLOW_CIRCLE,
    /** A published value under the same conditions. */
    FILLED_SQUARE,
    /** A published value made alike by a named conversion. */
    FILLED_SQUARE_WITH_TAIL,
    /** Conditions differ. */
    HOLLOW_DIAMOND,
    /** A condition that decides is not reported: a question mark stands beside it. */
    HOLLOW_DIAMOND_ASKED,
    FILLED_TRIANGLE,
    HOLLOW_TRIANGLE,
    /** One of many single results. */
    SMALL_DOT,
    NONE
}
