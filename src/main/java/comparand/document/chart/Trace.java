package comparand.document.chart;

/** How points are joined, or a line is drawn. */
public enum Trace {
    NONE,
    SOLID,
    DASHED,
    DOTTED,
    DASH_DOT
}
