package comparand.document.chart;

/**
 * A rectangle behind the points, such as a margin.
 *
 * @param label written at its edge, such as the margin's value; may be empty
 */
public record Area(double fromAcross, double toAcross, double fromUp, double toUp, Fill fill, String label) {

    /** How it is filled: hatching survives a copying machine. */
    public enum Fill {
        HATCHED,
        TINTED
    }
}
