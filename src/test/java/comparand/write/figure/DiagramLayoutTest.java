package comparand.write.figure;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.chart.Diagram;
import comparand.document.chart.Diagram.Card;
import comparand.document.chart.Diagram.Step;
import comparand.support.DemoCharts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Where boxes, arrows and their texts stand, at the widths of one and two columns of a page, in both languages. */
class DiagramLayoutTest {

    private static final Faces FACES = FigureLayoutTest.faces();

    /** A word that no box of one column holds. */
    private static final String LONG = "Oxygenatorenverträglichkeitserklärungsverzeichnisnummernzusammenstellung";

    static Stream<Arguments> diagrams() {
        var all = new ArrayList<Diagram>();
        all.add(DemoCharts.screening("en"));
        all.add(DemoCharts.screening("de"));
        IntStream.range(0, 40).mapToObj(i -> random(new Random(i))).forEach(all::add);
        return all.stream().flatMap(d -> Stream.of(Arguments.of(d, 85), Arguments.of(d, 175)));
    }

    /** Any number of steps, with few words or many, long ones among them. */
    private static Diagram random(Random random) {
        var steps = new ArrayList<Step>();
        for (int i = 0; i <= random.nextInt(7); i++) {
            steps.add(new Step(
                    random.nextInt(3) == 0 ? "Phase " + i : "",
                    card(random),
                    random.nextInt(3) == 0 ? Optional.empty() : Optional.of(card(random))));
        }
        return new Diagram("any", "What it shows.", "All of it in words.", steps, List.of("A note."));
    }

    private static Card card(Random random) {
        return new Card(IntStream.rangeClosed(0, random.nextInt(6))
                .mapToObj(i -> text(random))
                .toList());
    }

    private static String text(Random random) {
        var words = List.of("records", "Berichte", "(n\u00a0=\u00a0" + random.nextInt(9999) + ")", "from", LONG, "of");
        return IntStream.rangeClosed(0, random.nextInt(9))
                .mapToObj(i -> words.get(random.nextInt(words.size())))
                .reduce("What", (a, b) -> a + " " + b);
    }

    /** What was painted: boxes are the shapes with an outline, heads of arrows those without. */
    private static final class Painted implements Surface {
        final List<Lettering> texts = new ArrayList<>();
        final List<Box> boxes = new ArrayList<>();
        final List<List<Spot>> lines = new ArrayList<>();
        final List<List<Spot>> heads = new ArrayList<>();

        static Painted of(Diagram diagram, int millimetres) {
            var painted = new Painted();
            drawing(diagram, millimetres).paint(painted);
            return painted;
        }

        @Override
        public void line(List<Spot> through, Pen pen) {
            lines.add(through);
        }

        @Override
        public void polygon(List<Spot> corners, Paint paint) {
            if (paint.outline().isPresent()) {
                boxes.add(new Box(
                        corners.get(0).x(),
                        corners.get(0).y(),
                        corners.get(2).x(),
                        corners.get(2).y()));
            } else {
                heads.add(corners);
            }
        }

        @Override
        public void circle(Spot centre, double radius, Paint paint) {
            throw new AssertionError("a diagram has no marks");
        }

        @Override
        public void text(Lettering lettering) {
            texts.add(lettering);
        }
    }

    private static Drawing drawing(Diagram diagram, int millimetres) {
        return Drawing.of(diagram, millimetres * FigureLayoutTest.POINTS_PER_MM, FACES);
    }

    /** From the height of capitals to the depth of a g, and as wide as it is set. */
    private static Box box(Lettering t) {
        double left = t.left(FACES);
        return new Box(
                left,
                t.at().y() - 0.66 * t.size(),
                left + FACES.width(t.text(), t.size(), t.strong()),
                t.at().y() + 0.2 * t.size());
    }

    @ParameterizedTest
    @MethodSource("diagrams")
    @DisplayName("no text leaves its box or lies on another, and none outside of the boxes meets one")
    void textsKeepToTheirBoxes(Diagram diagram, int millimetres) {
        var painted = Painted.of(diagram, millimetres);

        assertThat(painted.texts).isNotEmpty();
        for (var text : painted.texts) {
            var own = box(text);
            var met = painted.boxes.stream().filter(b -> b.meets(own)).toList();
            assertThat(met).as(text.text()).hasSizeLessThan(2).allMatch(b -> b.holds(own));
            assertThat(painted.texts.stream().filter(t -> box(t).meets(own)))
                    .as("only itself lies where %s is", text.text())
                    .hasSize(1);
        }
    }

    @ParameterizedTest
    @MethodSource("diagrams")
    @DisplayName("there is a box for each step and for what leaves there, apart from each other, on the sheet")
    void boxesStandApart(Diagram diagram, int millimetres) {
        var drawing = drawing(diagram, millimetres);
        var boxes = Painted.of(diagram, millimetres).boxes;
        var sheet = new Box(-0.01, -0.01, drawing.width() + 0.01, drawing.height() + 0.01);

        assertThat(boxes).hasSize(diagram.steps().size() + leaving(diagram));
        assertThat(boxes).allMatch(sheet::holds);
        for (var one : boxes) {
            assertThat(boxes.stream().filter(b -> b.meets(one)))
                    .as("only itself")
                    .hasSize(1);
        }
    }

    @ParameterizedTest
    @MethodSource("diagrams")
    @DisplayName("an arrow leads from each box to the next and to what leaves there, through no box and no text")
    void arrows(Diagram diagram, int millimetres) {
        var painted = Painted.of(diagram, millimetres);

        assertThat(painted.lines).hasSize(diagram.steps().size() - 1 + leaving(diagram));
        assertThat(painted.heads).hasSameSizeAs(painted.lines);
        for (var head : painted.heads) {
            var tip = head.get(0);
            assertThat(painted.boxes)
                    .as("the tip of an arrow touches a box")
                    .anyMatch(b -> b.wider(0.5).holds(new Box(tip.x(), tip.y(), tip.x(), tip.y()))
                            || (Math.abs(b.top() - tip.y()) < 0.5 && b.left() < tip.x() && tip.x() < b.right()));
        }
        for (var line : painted.lines) {
            var way = Box.between(line.get(0), line.get(1), 0.2);
            assertThat(way.width() > 0.3 && way.height() > 0.3).isTrue();
            var inner = new Box(way.left() + 1, way.top() + 1, way.right() - 1, way.bottom() - 1);
            assertThat(painted.boxes.stream().filter(b -> b.meets(inner))).isEmpty();
            assertThat(painted.texts.stream().filter(t -> box(t).meets(way))).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("diagrams")
    @DisplayName("every line of every box and every note is written whole, at 7 points or more")
    void nothingLeftOut(Diagram diagram, int millimetres) {
        var painted = Painted.of(diagram, millimetres);
        var written = painted.texts.stream().map(Lettering::text).reduce("", String::concat);
        var expected = new ArrayList<>(diagram.notes());
        diagram.steps().forEach(s -> {
            expected.add(s.phase());
            expected.addAll(s.card().lines());
            s.leaves().ifPresent(c -> expected.addAll(c.lines()));
        });

        assertThat(expected)
                .allSatisfy(e -> assertThat(written.replace(" ", "")).contains(e.replace(" ", "")));
        assertThat(painted.texts).allMatch(t -> t.size() >= 7);
    }

    @Test
    @DisplayName(
            "the flow of the demo has its boxes in the order of the PRISMA 2020 flow diagram, in one column at its left")
    void order() {
        var painted = Painted.of(DemoCharts.screening("en"), 175);
        var left = painted.texts.stream()
                .filter(t -> t.at().x() < 100)
                .map(t -> t.text().replace('\u00a0', ' '))
                .toList();

        assertThat(left)
                .containsSubsequence(
                        "Identification",
                        "Records identified (n = 19)",
                        "Screening",
                        "Records screened (n = 17)",
                        "Reports sought for retrieval (n = 14)",
                        "Reports assessed for eligibility (n = 14)",
                        "Included",
                        "Studies included (n = 9)",
                        "Reports of included studies (n = 10)");
    }

    private static int leaving(Diagram diagram) {
        return (int)
                diagram.steps().stream().filter(s -> s.leaves().isPresent()).count();
    }
}
