package comparand.intake;

/**
 * Who read the sources.
 *
 * @param by initials; empty where nobody said
 * @param on the day, as year-month-day; empty likewise
 */
public record Reader(String by, String on) {

    static final Reader NOBODY = new Reader("", "");
}
