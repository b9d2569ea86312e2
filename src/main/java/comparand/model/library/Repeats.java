package comparand.model.library;

/** What is done when one unit was tested more than once at one step. */
public enum Repeats {
    /** The mean of the repeats is the one value of that unit. */
    AVERAGE,
    /** There are none: a repeat is a fault of the file. */
    REFUSE
}
