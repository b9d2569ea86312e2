package comparand.support;

import comparand.app.WholeRun;
import comparand.compose.figure.FigureSet;
import comparand.compose.text.Run;
import comparand.compose.text.Words;
import comparand.document.chart.Diagram;
import comparand.document.chart.Plot;
import comparand.model.Compared;
import java.nio.file.Path;
import java.util.List;

/** The figures of the project's demo, composed once per test run. */
public final class DemoCharts {

    private static final Compared RUN = WholeRun.of(Path.of("evidence/dossiers/small-oxygenators.yaml"));

    private static final FigureSet SET = new FigureSet(new Run(RUN, Words.of("en")));

    private DemoCharts() {}

    /** How its sources were found, in a language. */
    public static Diagram screening(String language) {
        return new FigureSet(new Run(RUN, Words.of(language))).screening().orElseThrow();
    }

    public static FigureSet set() {
        return SET;
    }

    public static List<Plot> all() {
        return SET.all();
    }
}
