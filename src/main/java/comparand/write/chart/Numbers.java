package comparand.write.chart;

import comparand.write.chart.Drawn.Dot;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumData;

/** Numbers kept beside a reference to cells. */
final class Numbers {

    private Numbers() {}

    /** One entry a point; a point without a number has none. */
    static void fill(CTNumData cache, List<Dot> dots, Function<Dot, Optional<Double>> number) {
        cache.setFormatCode("General");
        cache.addNewPtCount().setVal(dots.size());
        for (int i = 0; i < dots.size(); i++) {
            int at = i;
            number.apply(dots.get(i)).ifPresent(value -> {
                var pt = cache.addNewPt();
                pt.setIdx(at);
                pt.setV(String.valueOf(value));
            });
        }
    }
}
