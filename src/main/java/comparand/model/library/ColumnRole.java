package comparand.model.library;

/** What a column of a data file says about its row. */
public enum ColumnRole {
    DEVICE,
    /** One physical device. */
    UNIT,
    RUN,
    CASE,
    CENTRE,
    /** The number or name of a sample within its case or run. */
    SAMPLE,
    /** The moment of a sample, in the words that {@code at:} of other columns use. */
    TIME_POINT,
    DATE,
    /** The time of a sample since the start of its case or run: it sets samples in order. */
    ELAPSED,
    /** Free words: kept for the reader of the file, never computed with; a row that has some is pointed out. */
    REMARK,
    /** In a file with one row per measured quantity: the number. */
    VALUE,
    /** In a file with one row per measured quantity: the unit of the number in the same row. */
    UNIT_OF_VALUE,
    /** Of a count of bubbles: before or behind the device; its codes are {@code upstream} and {@code downstream}. */
    CHANNEL,
    /** Of a count of bubbles: the lower edge of the size class. */
    BIN_FROM,
    /** Of a count of bubbles: the upper edge of the size class. */
    BIN_TO,
    /** Of a count of bubbles: how many there were. */
    BIN_COUNT,
    /** Read by nobody; named so that no column is overlooked. */
    IGNORED
}
