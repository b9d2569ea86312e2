package comparand.model.library;

/** What is done with a row that stands in a file a second time. */
public enum Duplicates {
    /** It is a fault of the file. */
    REFUSE,
    /** The first counts, and every later one is left out by decision. */
    DROP_SECOND,
    /** Rows may be equal: nothing in them tells one from another. */
    KEEP
}
