package comparand.metric;

/** Which way a metric is favourable, all else being equal. */
public enum Better {
    MORE,
    LESS,
    /** A state or a size: neither more nor less of it is an advantage by itself. */
    NEITHER
}
