package comparand.reference;

import comparand.diag.Span;

/** A reference and the place in a file where it begins. */
public record Found(Reference reference, Span at) {}
