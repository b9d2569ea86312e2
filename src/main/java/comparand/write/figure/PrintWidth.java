package comparand.write.figure;

import comparand.document.chart.Chart;

/** How wide figures are printed: one column of a journal page, or two. */
public enum PrintWidth {
    ONE_COLUMN(85),
    TWO_COLUMNS(175);

    static final double POINTS_PER_MM = 72 / 25.4;

    private final int mm;

    PrintWidth(int mm) {
        this.mm = mm;
    }

    /** Panels side by side want two columns, and so do boxes side by side. */
    public static PrintWidth of(Chart chart) {
        boolean beside = chart.fold(
                plot -> plot.panels().size() > 1,
                diagram -> diagram.steps().stream().anyMatch(s -> s.leaves().isPresent()));
        return beside ? TWO_COLUMNS : ONE_COLUMN;
    }

    public int mm() {
        return mm;
    }

    public double points() {
        return mm * POINTS_PER_MM;
    }
}
