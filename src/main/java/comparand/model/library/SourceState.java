package comparand.model.library;

/** Where a source stands today. */
public enum SourceState {
    CURRENT,
    CORRECTED,
    CONCERN,
    RETRACTED,
    SUPERSEDED,
    PREPRINT
}
