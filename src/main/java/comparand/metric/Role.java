package comparand.metric;

/** What a difference in a condition or in a definition does to the standing of a pair. */
public enum Role {
    /** Unlike in this, two values are not compared. */
    DECIDES,
    /**
     * Decides between values of one device; between two devices, each used as supplied, it is only named. An integral
     * filter cannot be taken out to please a comparison.
     */
    DECIDES_WITHIN_DEVICE,
    /** Decides where both sides report it; silence is only named, because hardly any source breaks it. */
    DECIDES_IF_KNOWN,
    /** Unlike in this, two values may be compared, and the difference is named. */
    QUALIFIES;

    /** Whether a value that is silent on this can be set beside no other. */
    public boolean asksForReport() {
        return this == DECIDES || this == DECIDES_WITHIN_DEVICE;
    }
}
