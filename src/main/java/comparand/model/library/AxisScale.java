package comparand.model.library;

/** How an axis is divided. */
public enum AxisScale {
    LINEAR,
    LOG10
}
