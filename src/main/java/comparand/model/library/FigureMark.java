package comparand.model.library;

/** What the mark of a figure stands for, by its legend. */
public enum FigureMark {
    MEAN,
    MEDIAN,
    /** A single figure that is neither. */
    VALUE
}
