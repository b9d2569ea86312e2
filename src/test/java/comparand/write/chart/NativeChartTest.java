package comparand.write.chart;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Series;
import comparand.support.DemoCharts;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFChart;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumData;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;

/** A native chart keeps the numbers of its figure, in what it draws from and in the sheet that a person edits. */
class NativeChartTest {

    static Stream<Plot> charts() {
        return DemoCharts.all().stream();
    }

    @ParameterizedTest
    @MethodSource("charts")
    @DisplayName(
            "a presentation read back has the figure's points, intervals and labels, and refers to the cells that hold them")
    void readBack(Plot chart) throws IOException {
        try (var show = new XMLSlideShow(new ByteArrayInputStream(presentation(chart)))) {
            var charts = show.getSlides().get(0).getSlideShow().getCharts();
            assertThat(charts).hasSameSizeAs(chart.panels());
            for (int i = 0; i < charts.size(); i++) {
                same(charts.get(i), chart.panels().get(i));
            }
        }
    }

    private static void same(XSLFChart drawn, Panel panel) throws IOException {
        var series = drawn.getCTChart().getPlotArea().getScatterChartArray(0).getSerList();
        var sheet = workbook(drawn).getSheetAt(0);
        for (var expected : panel.series()) {
            var ser = series.stream()
                    .filter(s -> s.getTx()
                            .getStrRef()
                            .getStrCache()
                            .getPtArray(0)
                            .getV()
                            .equals(expected.name()))
                    .filter(s -> numbers(s.getXVal().getNumRef().getNumCache()).equals(across(expected)))
                    // bands carry the name of their line
                    .filter(s -> numbers(s.getYVal().getNumRef().getNumCache()).equals(up(expected)))
                    .findFirst()
                    .orElseThrow();
            assertThat(cells(sheet, ser.getXVal().getNumRef())).isEqualTo(across(expected));
            assertThat(cells(sheet, ser.getYVal().getNumRef())).isEqualTo(up(expected));
            intervals(series, expected);
            var xml = ser.getDLbls() == null ? "" : ser.getDLbls().xmlText();
            expected.points().stream()
                    .filter(p -> !p.label().isEmpty())
                    .forEach(p -> assertThat(xml).contains(escaped(p.label())));
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    /** Lines from the lower to the upper end, with a gap between two. */
    private static void intervals(List<CTScatterSer> drawn, Series expected) {
        var ends = expected.points().stream()
                .flatMap(p -> p.acrossInterval().stream().flatMap(i -> Stream.of(i.low(), i.high())))
                .toList();
        if (!ends.isEmpty()) {
            assertThat(drawn).anySatisfy(s -> {
                assertThat(numbers(s.getXVal().getNumRef().getNumCache())).isEqualTo(ends);
                assertThat(s.getXVal().getNumRef().getNumCache().getPtCount().getVal())
                        .isEqualTo(ends.size() / 2 * 3 - 1);
            });
        }
        var above = expected.points().stream()
                .flatMap(p -> p.upInterval().stream().map(i -> i.high() - p.up()))
                .toList();
        if (!above.isEmpty()) {
            assertThat(drawn.stream().flatMap(s -> s.getErrBarsList().stream()))
                    .anySatisfy(b -> assertThat(numbers(b.getPlus().getNumRef().getNumCache()))
                            .isEqualTo(above));
        }
    }

    private static List<Double> up(Series series) {
        return series.points().stream().map(Series.Point::up).toList();
    }

    private static List<Double> across(Series series) {
        return series.points().stream().map(Series.Point::across).toList();
    }

    private static List<Double> numbers(CTNumData cache) {
        return cache.getPtList().stream().map(p -> Double.valueOf(p.getV())).toList();
    }

    private static XSSFWorkbook workbook(XSLFChart chart) throws IOException {
        try {
            return chart.getWorkbook();
        } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException e) {
            throw new IOException(e);
        }
    }

    private static List<Double> cells(org.apache.poi.xssf.usermodel.XSSFSheet sheet, CTNumRef reference) {
        var area = org.apache.poi.ss.util.CellRangeAddress.valueOf(
                reference.getF().substring(reference.getF().indexOf('!') + 1));
        var values = new ArrayList<Double>();
        for (int row = area.getFirstRow(); row <= area.getLastRow(); row++) {
            values.add(sheet.getRow(row).getCell(area.getFirstColumn()).getNumericCellValue());
        }
        return values;
    }

    @Test
    @DisplayName("no line is smoothed, and every interval keeps its numbers beside the reference")
    void plain() throws IOException {
        for (var chart : DemoCharts.all()) {
            try (var show = new XMLSlideShow(new ByteArrayInputStream(presentation(chart)))) {
                for (var drawn : show.getCharts()) {
                    var plot = drawn.getCTChart().getPlotArea().getScatterChartArray(0);
                    assertThat(plot.getSerList())
                            .isNotEmpty()
                            .allSatisfy(s -> assertThat(s.getSmooth().getVal()).isFalse());
                }
            }
        }
    }

    /** All panels of a figure on one slide. */
    static byte[] presentation(Plot... charts) throws IOException {
        try (var show = new XMLSlideShow()) {
            show.setPageSize(new java.awt.Dimension(960, 540));
            for (var chart : charts) {
                var slide = show.createSlide();
                double shares =
                        chart.panels().stream().mapToDouble(Panel::share).sum();
                double left = 20;
                for (var panel : chart.panels()) {
                    var drawn = show.createChart();
                    NativeChart.fill(drawn, panel, NativeLook.slide("Arial"), DataPlace.within(drawn));
                    double width = 920 * panel.share() / shares;
                    slide.addChart(
                            drawn,
                            new Rectangle2D.Double(left * 12_700, 60 * 12_700, (width - 10) * 12_700, 440 * 12_700));
                    left += width;
                }
            }
            var out = new ByteArrayOutputStream();
            show.write(out);
            return out.toByteArray();
        }
    }
}
