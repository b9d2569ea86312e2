package comparand.model.library;

/**
 * What became of a record. Each ends in one box of the flow of the PRISMA 2020 statement (Page et al., BMJ 2021;372:n71,
 * figure 1), and in one only.
 */
public enum ScreeningFate {
    /** The same report as another record of the log; removed before screening. */
    DUPLICATE,
    /** By title and abstract, or by what the place that was searched shows of it. */
    EXCLUDED_AT_SCREENING,
    /** Sought, and not to be had. */
    NOT_RETRIEVED,
    /** Read whole, and not eligible. */
    EXCLUDED_AFTER_READING,
    INCLUDED
}
