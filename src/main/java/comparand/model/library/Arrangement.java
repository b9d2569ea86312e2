package comparand.model.library;

/** How a part belongs to a device. */
public enum Arrangement {
    /** Built in: it cannot be left out. */
    INTEGRAL,
    /** Clipped on or supplied separately: a circuit may run without it. */
    SEPARATE,
    /** Not part of this device at all. */
    ABSENT
}
