package comparand.model.library;

/** Where the data of a study come from. */
public enum StudyKind {
    BENCH,
    CLINICAL
}
