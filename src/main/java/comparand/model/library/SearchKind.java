package comparand.model.library;

/**
 * What kind of place was searched: the kinds that the PRISMA 2020 flow diagram counts records by (Page et al., BMJ
 * 2021;372:n71, figure 1).
 */
public enum SearchKind {
    DATABASE,
    REGISTER,
    WEBSITE,
    /** A maker, a society, an authority that was asked. */
    ORGANISATION,
    /** References of what was found, and works that cite it. */
    CITATIONS,
    OTHER
}
