package comparand.reference.format;

import comparand.diag.Span;

/**
 * A tag of a record with its text, continuation lines joined.
 *
 * @param span of the text, as far as it stands on the line of its tag; of the tag if there is none
 */
record Tagged(String tag, String text, Span span) {}
