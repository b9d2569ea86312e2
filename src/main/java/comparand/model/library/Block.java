package comparand.model.library;

/** The three groups in which characteristics of devices are set side by side. */
public enum Block {
    TECHNICAL,
    BIOLOGICAL,
    CLINICAL
}
