package comparand.compose.figure;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.compose.figure.FigureSet.Kind;
import comparand.document.chart.Area;
import comparand.document.chart.Axis;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Point;
import comparand.support.Built;
import comparand.support.DemoCharts;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What figures show, against the results of the same run. */
class FigureSetTest {

    private static final Set<String> COMPARED = Set.of("same", "same-after-conversion");

    static Stream<Plot> charts() {
        return DemoCharts.all().stream();
    }

    private static Stream<Plot> splits() {
        return DemoCharts.set().entries().stream()
                .filter(e -> e.kind() == Kind.LIKE_WITH_LIKE)
                .map(FigureSet.Entry::chart);
    }

    private static Stream<JsonNode> pairs(boolean compared) {
        return Built.all(Built.demo().results().get("pairs")).stream()
                .filter(p -> p.get("purpose").asText().equals("local-against-published"))
                .filter(p -> COMPARED.contains(p.get("standing").asText()) == compared);
    }

    private static String locator(String id) {
        return Built.all(Built.demo().results().get("comparands")).stream()
                .filter(c -> c.get("id").asText().equals(id))
                .map(c -> c.get("locator").asText())
                .findFirst()
                .orElseThrow();
    }

    private static Stream<Point> published(Panel panel) {
        return panel.series().stream()
                .filter(s -> s.mark() != Mark.FILLED_CIRCLE)
                .flatMap(s -> s.points().stream());
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    @DisplayName("the demo has a figure of every kind")
    void everyKind(Kind kind) {
        assertThat(DemoCharts.set().entries()).anyMatch(e -> e.kind() == kind);
    }

    @Test
    @DisplayName("the left panel holds published values of compared pairs only, and no label in brackets")
    void onlyLikeBesideLike() {
        var compared = pairs(true).map(p -> locator(p.get("theirs").asText())).collect(Collectors.toSet());
        var drawn = splits().flatMap(c -> published(c.panels().get(0))).toList();

        assertThat(drawn).hasSizeGreaterThan(5).allSatisfy(p -> {
            assertThat(compared).anyMatch(locator -> p.label().endsWith(", " + locator));
            assertThat(p.label()).doesNotContain("[");
        });
    }

    @Test
    @DisplayName(
            "the right panel is framed and named, holds hollow marks only, each with its brackets and reason, and no lines")
    void apart() {
        var right = splits().filter(c -> c.panels().size() > 1)
                .map(c -> c.panels().get(1))
                .toList();
        var compared = pairs(true).map(p -> locator(p.get("theirs").asText())).collect(Collectors.toSet());

        assertThat(right).hasSizeGreaterThan(2).allSatisfy(panel -> {
            assertThat(panel.framed()).isTrue();
            assertThat(panel.heading()).isEqualTo("Shown, not compared");
            assertThat(panel.areas()).isEmpty();
            assertThat(panel.series()).allSatisfy(s -> {
                assertThat(s.mark()).isIn(Mark.HOLLOW_DIAMOND, Mark.HOLLOW_DIAMOND_ASKED);
                assertThat(s.trace()).isEqualTo(comparand.document.chart.Trace.NONE);
                assertThat(s.points()).allSatisfy(p -> {
                    assertThat(p.label()).startsWith("[").contains("]", ": ");
                    assertThat(compared).noneMatch(locator -> p.label().contains(", " + locator + ":"));
                });
            });
        });
    }

    @Test
    @DisplayName(
            "the margin lies around our mean, as wide to either side as the dossier says, with its value at its edge")
    void band() {
        var panel = DemoCharts.set()
                .find(Kind.LIKE_WITH_LIKE, "pressure-drop")
                .orElseThrow()
                .panels()
                .get(0);
        var means = panel.series().stream()
                .filter(s -> s.mark() == Mark.FILLED_CIRCLE)
                .flatMap(s -> s.points().stream())
                .toList();

        assertThat(panel.areas()).hasSameSizeAs(means);
        for (int i = 0; i < means.size(); i++) {
            var area = panel.areas().get(i);
            // 10 mmHg, as evidence/dossiers/small-oxygenators.yaml sets it
            assertThat(area.toAcross() - means.get(i).across()).isEqualTo(10, within());
            assertThat(means.get(i).across() - area.fromAcross()).isEqualTo(10, within());
            assertThat(area.fill()).isEqualTo(Area.Fill.HATCHED);
        }
        assertThat(panel.areas().get(0).label()).isEqualTo("margin ±\u00a010\u00a0mmHg");
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-9);
    }

    @ParameterizedTest
    @MethodSource("charts")
    @DisplayName("every point and every end of an interval is a number of the results")
    void numbersOfTheResults(Plot chart) {
        var known = new HashSet<Double>();
        numbers(Built.demo().results(), known);
        for (var panel : chart.panels()) {
            boolean rows = panel.up() instanceof Axis.Rows;
            for (var series : panel.series()) {
                for (var point : series.points()) {
                    if (series.mark() != Mark.NONE || !rows) {
                        assertThat(known).contains(rows ? point.across() : point.up());
                    }
                    point.acrossInterval().ifPresent(i -> assertThat(known).contains(i.low(), i.high()));
                    point.upInterval().ifPresent(i -> assertThat(known).contains(i.low(), i.high()));
                }
            }
        }
    }

    /** All numbers in the file, and those in its facts, which stand there as texts. */
    private static void numbers(JsonNode node, Set<Double> into) {
        if (node.isNumber()) {
            into.add(node.asDouble());
        } else if (node.isTextual() && node.asText().matches("-?\\d+(\\.\\d+)?(E-?\\d+)?")) {
            into.add(Double.valueOf(node.asText()));
        }
        node.forEach(child -> numbers(child, into));
    }

    @ParameterizedTest
    @MethodSource("charts")
    @DisplayName("all lies within the axes, whose ticks go up by one step and from end to end")
    void withinAxes(Plot chart) {
        for (var panel : chart.panels()) {
            for (var series : panel.series()) {
                for (var p : series.points()) {
                    assertThat(p.across())
                            .isBetween(panel.across().from(), panel.across().to());
                    assertThat(p.up()).isBetween(panel.up().from(), panel.up().to());
                }
            }
            Stream.of(panel.across(), panel.up())
                    .filter(a -> a instanceof Axis.Scale)
                    .map(a -> (Axis.Scale) a)
                    .forEach(FigureSetTest::even);
        }
    }

    private static void even(Axis.Scale scale) {
        var at = scale.ticks().stream().map(Axis.Tick::at).toList();
        double step = at.get(1) - at.get(0);
        assertThat(at.get(0)).isEqualTo(scale.from());
        assertThat(at.get(at.size() - 1)).isEqualTo(scale.to());
        assertThat(at.size()).isBetween(3, 9);
        for (int i = 1; i < at.size(); i++) {
            assertThat(at.get(i) - at.get(i - 1)).isEqualTo(step, within());
        }
        assertThat(scale.ticks())
                .allSatisfy(t -> assertThat(Double.parseDouble(t.label().replace('\u2212', '-')))
                        .isEqualTo(t.at()));
    }

    @ParameterizedTest
    @MethodSource("charts")
    @DisplayName("the alternative says the message, and what is labelled in the figure")
    void alternative(Plot chart) {
        assertThat(chart.alternative()).startsWith(chart.message());
        assertThat(chart.message()).endsWith(".");
        var said = chart.alternative().replace('\u00a0', ' ');
        chart.panels().stream()
                .flatMap(p -> p.series().stream())
                .flatMap(s -> s.points().stream())
                .map(p -> p.label().replace('\u00a0', ' '))
                .filter(l -> !l.isEmpty() && !chart.id().startsWith("flow-"))
                .forEach(l -> assertThat(said).contains(l));
    }

    @Test
    @DisplayName("what was measured beyond a label is hollow and stands on no line")
    void beyondTheLabel() {
        var panel = DemoCharts.set()
                .find(Kind.FLOW_CURVE, "pressure-drop")
                .orElseThrow()
                .panels()
                .get(0);
        var hollow = panel.series().stream()
                .filter(s -> s.mark() == Mark.HOLLOW_CIRCLE)
                .toList();

        // Mirrowen 12 is labelled up to 1.2 L/min and was run at 1.5: evidence/devices/mirrowen-12.yaml
        assertThat(hollow).hasSize(1);
        assertThat(hollow.get(0).points()).extracting(Point::across).containsExactly(1.5);
        assertThat(hollow.get(0).trace()).isEqualTo(comparand.document.chart.Trace.NONE);
        assertThat(panel.series().stream()
                        .filter(s -> s.mark() == Mark.FILLED_CIRCLE && s.name().startsWith("Mirrowen"))
                        .flatMap(s -> s.points().stream())
                        .map(Point::across))
                .containsExactly(0.5, 1.0, 1.2);
        assertThat(panel.rules()).extracting(r -> r.at()).containsExactly(1.5, 1.2, 2.0);
    }

    @Test
    @DisplayName("dots of cases are the values of the results, hospital by hospital, moved aside only")
    void casesStayWhereTheyAre() {
        var chart = DemoCharts.set().find(Kind.CASES, "plasma-free-haemoglobin").orElseThrow();
        var panel = chart.panels().get(0);
        var dots = panel.series().stream()
                .filter(s -> s.mark() == Mark.SMALL_DOT)
                .flatMap(s -> s.points().stream())
                .toList();
        var each = Built.all(Built.demo().results().get("comparands")).stream()
                .filter(c -> c.get("id").asText().startsWith("three-hospitals/plasma-free-haemoglobin/"))
                .flatMap(c -> Built.all(c.get("summary").get("each")).stream())
                .map(JsonNode::asDouble)
                .sorted()
                .toList();

        // 54 cases, of which 5 have no value
        assertThat(dots).hasSize(49);
        assertThat(dots.stream().map(Point::across).sorted()).isEqualTo(each);
        assertThat(dots)
                .allSatisfy(
                        d -> assertThat(Math.abs(d.up() - Math.rint(d.up()))).isLessThan(0.5));
    }

    @Test
    @DisplayName("lines of series end with a name where a key would need colours")
    void directLabels() {
        DemoCharts.set().entries().stream()
                .filter(e -> e.kind() == Kind.FLOW_CURVE || e.kind() == Kind.LINE)
                .flatMap(e -> e.chart().panels().stream())
                .flatMap(p -> p.series().stream())
                .filter(s -> s.trace() != comparand.document.chart.Trace.NONE)
                .map(Series::endLabel)
                .forEach(label -> assertThat(label).isNotBlank());
    }
}
