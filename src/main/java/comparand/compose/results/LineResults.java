package comparand.compose.results;

import comparand.document.result.LineResult;
import comparand.document.result.LineResult.LinePointResult;
import comparand.model.FittedLine;
import java.util.stream.IntStream;

/** Fitted lines as data: what a figure needs, and no single case. */
public final class LineResults {

    private static final int STEPS = 10;

    private LineResults() {}

    public static LineResult of(FittedLine fitted) {
        var line = fitted.line();
        double low = line.measured().low();
        double step = (line.measured().high() - low) / STEPS;
        var points = IntStream.rangeClosed(0, STEPS)
                .mapToObj(i -> point(fitted, i == STEPS ? line.measured().high() : low + i * step))
                .toList();
        return new LineResult(
                fitted.along(),
                fitted.alongUnit().named(),
                fitted.of(),
                fitted.ofUnit().named(),
                line.n(),
                line.at(0).mean(),
                line.slope(),
                line.slopeSe(),
                line.residualSd(),
                line.rSquared(),
                ComparandResults.range(line.measured()),
                points);
    }

    private static LinePointResult point(FittedLine fitted, double at) {
        var estimate = fitted.line().at(at);
        var interval = estimate.interval(ComparandResults.LEVEL);
        return new LinePointResult(at, estimate.mean(), interval.low(), interval.high());
    }
}
