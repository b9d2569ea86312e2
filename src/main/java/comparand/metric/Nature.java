package comparand.metric;

/** How values of a metric come about, and so what may be said of a difference. */
public enum Nature {
    /** Measured: it varies from unit to unit and case to case, so a difference needs an interval. */
    MEASURED,
    /** Stated by design or label: a nominal figure without sampling spread. */
    STATED,
    /** Counted: so many of so many units or cases. */
    EVENT
}
