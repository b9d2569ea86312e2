package comparand.model.library;

/** What kind of document a source is. */
public enum SourceKind {
    INSTRUCTIONS_FOR_USE,
    BENCH_PAPER,
    CLINICAL_PAPER,
    ABSTRACT,
    PREPRINT,
    STANDARD,
    REGISTRY_REPORT,
    LETTER,
    FLYER
}
