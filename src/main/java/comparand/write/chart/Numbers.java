package comparand.write.chart;

import comparand.document.chart.Series.Point;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumData;

/** Numbers kept beside a reference to cells. */
final class Numbers {

    private Numbers() {}

    /** One entry a point; a point without a number has none. */
    static void fill(CTNumData cache, List<Point> points, Function<Point, Optional<Double>> number) {
        cache.setFormatCode("General");
        cache.addNewPtCount().setVal(points.size());
        for (int i = 0; i < points.size(); i++) {
            int at = i;
            number.apply(points.get(i)).ifPresent(value -> {
                var pt = cache.addNewPt();
                pt.setIdx(at);
                pt.setV(String.valueOf(value));
            });
        }
    }
}
