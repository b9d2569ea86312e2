package comparand.write.figure;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.chart.Plot;
import comparand.support.DemoCharts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Where things stand on a figure, at the widths of one and two columns of a page. */
class FigureLayoutTest {

    static final double POINTS_PER_MM = 72 / 25.4;

    private static final Faces FACES = faces();

    static Faces faces() {
        try {
            return Faces.of(Optional.empty());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<Arguments> drawings() {
        return DemoCharts.all().stream().flatMap(c -> Stream.of(Arguments.of(c, 85), Arguments.of(c, 175)));
    }

    /** Every text, shape and line as it was painted. */
    static final class Painted implements Surface {
        final List<Lettering> texts = new ArrayList<>();
        final List<Spot> spots = new ArrayList<>();
        final List<Pen> pens = new ArrayList<>();
        final List<Box> marks = new ArrayList<>();

        static Painted of(Plot chart, int millimetres) {
            var painted = new Painted();
            Drawing.of(chart, millimetres * POINTS_PER_MM, FACES).paint(painted);
            return painted;
        }

        @Override
        public void line(List<Spot> through, Pen pen) {
            spots.addAll(through);
            pens.add(pen);
        }

        @Override
        public void polygon(List<Spot> corners, Paint paint) {
            spots.addAll(corners);
            paint.outline().ifPresent(pens::add);
        }

        @Override
        public void circle(Spot centre, double radius, Paint paint) {
            marks.add(Box.around(centre, radius, radius));
            spots.add(centre.plus(-radius, -radius));
            spots.add(centre.plus(radius, radius));
            paint.outline().ifPresent(pens::add);
        }

        @Override
        public void text(Lettering lettering) {
            texts.add(lettering);
        }
    }

    /** The room that the letters take: from the height of capitals to the base line. */
    private static Box box(Lettering text) {
        double left = text.left(FACES);
        double capitals = 0.66;
        return new Box(
                left,
                text.at().y() - capitals * text.size(),
                left + FACES.width(text.text(), text.size(), text.strong()),
                text.at().y());
    }

    @ParameterizedTest
    @MethodSource("drawings")
    @DisplayName("no text lies on another or on a round mark, and none is cut off")
    void textsStandApart(Plot chart, int millimetres) {
        var drawing = Drawing.of(chart, millimetres * POINTS_PER_MM, FACES);
        var painted = Painted.of(chart, millimetres);
        var canvas = new Box(-0.01, -0.01, drawing.width() + 0.01, drawing.height() + 0.01);
        var texts = painted.texts;

        assertThat(texts).hasSizeGreaterThan(5);
        for (int i = 0; i < texts.size(); i++) {
            var own = box(texts.get(i));
            assertThat(canvas.holds(own)).as("on the sheet: " + texts.get(i)).isTrue();
            for (int k = i + 1; k < texts.size(); k++) {
                assertThat(own.meets(box(texts.get(k))))
                        .as("%s on %s", texts.get(i), texts.get(k))
                        .isFalse();
            }
            for (var mark : painted.marks) {
                assertThat(own.meets(mark)).as("%s on a mark", texts.get(i)).isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    @DisplayName("every shape stays on the sheet")
    void shapesStayOnTheSheet(Plot chart, int millimetres) {
        var drawing = Drawing.of(chart, millimetres * POINTS_PER_MM, FACES);

        assertThat(Painted.of(chart, millimetres).spots).isNotEmpty().allSatisfy(s -> {
            assertThat(s.x()).isBetween(-0.01, drawing.width() + 0.01);
            assertThat(s.y()).isBetween(-0.01, drawing.height() + 0.01);
        });
    }

    @ParameterizedTest
    @MethodSource("drawings")
    @DisplayName("text has 7 points or more and lines half a point or more, as journals ask for printed figures")
    void largeEnough(Plot chart, int millimetres) {
        var painted = Painted.of(chart, millimetres);

        assertThat(painted.texts).allSatisfy(t -> assertThat(t.size()).isGreaterThanOrEqualTo(7));
        assertThat(painted.pens).allSatisfy(p -> assertThat(p.width()).isGreaterThanOrEqualTo(0.5));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    @DisplayName("every label, name, heading, key and note of a figure is written whole")
    void nothingLeftOut(Plot chart, int millimetres) {
        var written = joined(String.join(
                "",
                Painted.of(chart, millimetres).texts.stream()
                        .map(Lettering::text)
                        .toList()));
        var expected = new ArrayList<String>(chart.notes());
        chart.key().forEach(k -> expected.add(k.means()));
        chart.panels().forEach(p -> {
            expected.add(p.heading());
            p.up().fold(s -> expected.add(s.title()), r -> expected.addAll(r.names()));
            p.across().fold(s -> expected.add(s.title()), r -> expected.addAll(r.names()));
            p.areas().forEach(a -> expected.add(a.label()));
            p.rules().forEach(r -> expected.add(r.label()));
            p.series().forEach(s -> {
                expected.add(s.endLabel());
                s.points().forEach(point -> expected.add(point.label()));
            });
        });

        assertThat(expected).allSatisfy(e -> assertThat(written).contains(joined(e)));
    }

    /** Lines are broken at blanks, which are not written. */
    private static String joined(String text) {
        return text.replaceAll("[ \n]", "");
    }

    @Test
    @DisplayName("panels stand side by side where there is room, and one below the other where there is none")
    void narrowFiguresStack() {
        var split = DemoCharts.all().stream()
                .filter(c -> c.panels().size() == 2)
                .findFirst()
                .orElseThrow();
        var heading = split.panels().get(1).heading();

        assertThat(place(split, heading, 175).x()).isGreaterThan(175 * POINTS_PER_MM / 2);
        assertThat(place(split, heading, 85).x()).isLessThan(20);
    }

    private static Spot place(Plot chart, String text, int millimetres) {
        return Painted.of(chart, millimetres).texts.stream()
                .filter(t -> t.text().equals(text))
                .findFirst()
                .orElseThrow()
                .at();
    }
}
