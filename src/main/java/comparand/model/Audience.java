package comparand.model;

/** Who reads: each is given the outputs made for it, beside the results as data. */
public enum Audience {
    /** Who wants every pair: the evidence table and workbook. */
    EVIDENCE,
    /** Who decides on a purchase. */
    COMMITTEE,
    /** Who can supply what was not reported: makers and authors, to whom letters go. */
    SUPPLIER,
    /** Who listens to a talk, and who gives it. */
    TALK,
    /** Who writes a paper. */
    MANUSCRIPT,
    /** Who asks the next question: the page. */
    PAGE
}
