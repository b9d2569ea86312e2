package comparand.document.chart;

import java.util.List;

/**
 * One pair of axes and what is drawn on them, in this order: areas, ribbons, rules, series.
 *
 * @param heading above it, such as "Shown, not compared"; may be empty
 * @param share of the width of the figure, relative to the other panels
 * @param framed whether a thin frame sets it apart from the panel beside it
 */
public record Panel(
        String heading,
        double share,
        boolean framed,
        Axis across,
        Axis up,
        List<Area> areas,
        List<Ribbon> ribbons,
        List<Rule> rules,
        List<Series> series) {

    public Panel {
        areas = List.copyOf(areas);
        ribbons = List.copyOf(ribbons);
        rules = List.copyOf(rules);
        series = List.copyOf(series);
        if (!(share > 0)) {
            throw new IllegalArgumentException("a panel has a share of the width, got " + share);
        }
    }
}
