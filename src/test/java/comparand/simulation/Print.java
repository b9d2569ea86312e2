package comparand.simulation;

/** In what form a source prints its results. */
enum Print {
    SD,
    SE,
    INTERVAL,
    QUARTILES,
    /** A ± that nobody explains. */
    UNEXPLAINED,
    /** A ± of an unknown number of results. */
    WITHOUT_NUMBER,
    /** Neither ± nor number. */
    FIGURE,
    LIMIT;

    /** Whether mean, spread and number can be had. */
    boolean tellsSpread() {
        return this != WITHOUT_NUMBER && this != FIGURE && this != LIMIT;
    }

    boolean isExplained() {
        return tellsSpread() && this != UNEXPLAINED;
    }
}
