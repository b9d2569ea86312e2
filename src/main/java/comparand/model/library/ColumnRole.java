package comparand.model.library;

/** What a column of a data file says about its row. */
public enum ColumnRole {
    DEVICE,
    UNIT,
    RUN,
    CASE,
    CENTRE,
    /** Read by nobody; named so that no column is overlooked. */
    IGNORED
}
