package comparand.support;

import comparand.app.WholeRun;
import comparand.compose.figure.FigureSet;
import comparand.compose.text.Run;
import comparand.compose.text.Words;
import comparand.document.chart.Plot;
import java.nio.file.Path;
import java.util.List;

/** The figures of the project's demo, composed once per test run. */
public final class DemoCharts {

    private static final FigureSet SET =
            new FigureSet(new Run(WholeRun.of(Path.of("evidence/dossiers/small-oxygenators.yaml")), Words.of("en")));

    private DemoCharts() {}

    public static FigureSet set() {
        return SET;
    }

    public static List<Plot> all() {
        return SET.all();
    }
}
