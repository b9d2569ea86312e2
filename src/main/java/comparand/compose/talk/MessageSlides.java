package comparand.compose.talk;

import comparand.compose.figure.FigureSet;
import comparand.compose.talk.Draft.Asked;
import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.chart.Plot;
import comparand.document.talk.Part;
import comparand.document.talk.layout.Measure;
import comparand.document.talk.layout.Stage;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Summary;
import comparand.model.library.QuestionRecord;
import comparand.stat.ProportionInterval;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;

/** One message a metric: the firmest answer of each device in a table, that of all of them in the title. */
final class MessageSlides {

    /** Size of text that a room can read, for which the rows of a table are counted out. */
    private static final double SIZE = 20;

    private final Run run;
    private final Cells cells;
    private final SlideNumbers numbers;
    private final Titles titles;
    private final Speeches speeches;
    private final FigureSet figures;

    MessageSlides(Run run, SlideNumbers numbers, Titles titles, Speeches speeches) {
        this.run = run;
        this.cells = new Cells(run);
        this.numbers = numbers;
        this.titles = titles;
        this.speeches = speeches;
        this.figures = new FigureSet(run);
    }

    static String id(Metric metric) {
        return "message-" + metric.id();
    }

    Draft of(QuestionRecord question, Metric metric, boolean backup) {
        var comparisons = run.comparisons(metric);
        var asked = new FloorQuestions(run).of(metric);
        if (metric.nature() == Nature.EVENT) {
            return events(question, metric, comparisons, asked, backup);
        }
        var pairs = Stream.concat(
                        onePerDevice(Firmness.ofDevices(comparisons)).stream(),
                        onePerDevice(Firmness.ofPublished(comparisons)).stream())
                .toList();
        return pairs.isEmpty()
                ? shown(question, metric, comparisons, asked, backup)
                : compared(question, metric, pairs, asked, backup);
    }

    private static List<Comparison> onePerDevice(List<Comparison> firmestFirst) {
        var first = new LinkedHashMap<String, Comparison>();
        firmestFirst.forEach(c -> first.putIfAbsent(c.pairing().ours().device(), c));
        return List.copyOf(first.values());
    }

    private Draft compared(
            QuestionRecord question, Metric metric, List<Comparison> pairs, List<Asked> asked, boolean backup) {
        var main = pairs.get(0);
        var figure = figures.find(FigureSet.Kind.LIKE_WITH_LIKE, metric.id());
        if (figure.isPresent() && !(main.answer() instanceof Answer.Nominal)) {
            return drawn(question, metric, main, figure.get(), asked, backup);
        }
        var rows = new ArrayList<List<Cell>>();
        var shown = new ArrayList<Comparison>();
        for (var c : pairs) {
            rows.add(row(c));
            if (!fits(table(metric, rows))) {
                rows.remove(rows.size() - 1);
                break;
            }
            shown.add(c);
        }
        var say = say("talk.say.message", "asks", question.asks().value(), "answer", answer(main));
        return new Draft(
                id(metric),
                titles.of(main),
                List.of(new Part.Grid(table(metric, rows))),
                speeches.strip(shown),
                speeches.of(List.of(say), shown, asked),
                backup,
                published(shown));
    }

    /** The figure shows every pair of its study; one sentence below it says the answer that the title is of. */
    private Draft drawn(
            QuestionRecord question, Metric metric, Comparison main, Plot figure, List<Asked> asked, boolean backup) {
        var shown = run.comparisons(metric).stream()
                .filter(c -> study(c).equals(study(main)))
                .toList();
        return new Draft(
                id(metric),
                titles.of(main),
                List.of(new Part.Drawing(new SlideFigure(run).of(figure)), new Part.Points(List.of(sentence(main)))),
                speeches.strip(shown),
                speeches.of(
                        List.of(say("talk.say.message", "asks", question.asks().value(), "answer", answer(main))),
                        shown,
                        asked),
                backup,
                published(shown));
    }

    private static String study(Comparison c) {
        return c.pairing().ours().origin().fold(p -> "", l -> l.study().id());
    }

    private String sentence(Comparison c) {
        var step = titles.step(c);
        return say(
                "talk.answer",
                "device",
                run.names().device(c.pairing().ours().device()),
                "at",
                step.isEmpty() ? "" : " " + say("talk.at", "step", step),
                "difference",
                difference(c),
                "answer",
                verdict(c));
    }

    private String difference(Comparison c) {
        return numbers.withUnit(numbers.difference(c), c.pairing().ours().metric())
                .replace("\u00a0(", " (")
                .replaceAll("\\)\u00a0", ") ");
    }

    private String answer(Comparison c) {
        return ConditionLine.upperFirst(run.answers().of(c));
    }

    private static boolean fits(Table table) {
        var stage = Stage.plain("Arial");
        var measure = new Measure(stage.lines(), stage.body().width());
        // masters of a house leave less room
        return measure.height(new Part.Grid(table), SIZE) <= 0.88 * stage.body().height();
    }

    private Table table(Metric metric, List<List<Cell>> rows) {
        return new Table(
                "Message" + metric.id().replace("-", ""),
                ConditionLine.upperFirst(run.terms().metric(metric)),
                List.of(
                        cells.name("col.device", 17),
                        cells.text("talk.col.result", 25),
                        cells.text("talk.col.difference", 21),
                        cells.text("col.answer", 30)),
                rows,
                List.of());
    }

    private List<Cell> row(Comparison c) {
        var pairing = c.pairing();
        var ours = run.summaries().of(pairing.ours());
        var theirs = run.summaries().beside(pairing.theirs(), pairing.standing());
        var result = c.answer() instanceof Answer.Nominal || pairing.theirs().isLocal()
                ? say("talk.against", "ours", ours, "theirs", theirs)
                : say(
                        "talk.against.published",
                        "ours",
                        ours,
                        "theirs",
                        theirs,
                        "locator",
                        run.names().locator(pairing.theirs()));
        var step = titles.step(c);
        var device = run.names().brief(pairing.ours().device());
        return List.of(
                Cell.words(step.isEmpty() ? device : say("talk.row", "device", device, "step", step)),
                Cell.words(result),
                Cell.words(difference(c)),
                Cell.words(verdict(c)));
    }

    /** The verdict alone: what the printed figure lacks stands in the table of all pairs. */
    private String verdict(Comparison c) {
        if (c.answer() instanceof Answer.EitherReading e) {
            return run.answers().verdictOfBoth(e, c);
        }
        return Firmness.tested(c)
                .map(t -> run.answers().verdict(t, c))
                .orElseGet(() -> run.answers().of(c));
    }

    private static List<Comparand> published(List<Comparison> pairs) {
        return pairs.stream()
                .flatMap(c -> Stream.of(c.pairing().ours(), c.pairing().theirs()))
                .filter(c -> !c.isLocal())
                .toList();
    }

    private Draft events(
            QuestionRecord question, Metric metric, List<Comparison> comparisons, List<Asked> asked, boolean backup) {
        var rows = new ArrayList<List<Cell>>();
        for (var c : run.compared().matched().evidence().localResults()) {
            if (c.metric().equals(metric) && c.summary() instanceof Summary.Events e) {
                rows.add(List.of(
                        Cell.words(run.names().device(c.device())),
                        Cell.words(run.answers()
                                .events(e, ProportionInterval.EXACT.of(e.events(), e.of(), Answer.LEVEL)))));
            }
        }
        var table = new Table(
                "Message" + metric.id().replace("-", ""),
                ConditionLine.upperFirst(run.terms().metric(metric)),
                List.of(cells.name("col.device", 30), cells.text("col.events", 70)),
                rows.isEmpty() ? List.of(cells.nothing(2)) : rows,
                List.of());
        return new Draft(
                id(metric),
                titles.events(metric),
                List.of(new Part.Grid(table)),
                speeches.strip(comparisons),
                speeches.of(List.of(question.asks().value()), comparisons, asked),
                backup,
                published(comparisons));
    }

    /** Values, and none of them made alike: each in the brackets of its standing, with its reason. */
    private Draft shown(
            QuestionRecord question, Metric metric, List<Comparison> comparisons, List<Asked> asked, boolean backup) {
        var rows = new ArrayList<List<Cell>>();
        var taken = new ArrayList<Comparison>();
        for (var c : comparisons) {
            rows.add(List.of(
                    Cell.words(run.names().brief(c.pairing().ours().device())),
                    Cell.words(say(
                            "talk.against",
                            "ours",
                            run.summaries().of(c.pairing().ours()),
                            "theirs",
                            run.summaries()
                                    .beside(c.pairing().theirs(), c.pairing().standing()))),
                    Cell.words(
                            run.conditions().why(c.pairing()).isBlank()
                                    ? run.answers().of(c)
                                    : run.conditions().why(c.pairing()))));
            if (!fits(shownTable(metric, rows))) {
                rows.remove(rows.size() - 1);
                break;
            }
            taken.add(c);
        }
        return new Draft(
                id(metric),
                titles.shown(metric),
                List.of(new Part.Grid(shownTable(metric, rows.isEmpty() ? List.of(cells.nothing(3)) : rows))),
                taken.isEmpty() ? "" : speeches.strip(taken),
                speeches.of(
                        List.of(say("talk.say.shown", "asks", question.asks().value())), taken, asked),
                backup,
                published(taken));
    }

    private Table shownTable(Metric metric, List<List<Cell>> rows) {
        return new Table(
                "Message" + metric.id().replace("-", ""),
                ConditionLine.upperFirst(run.terms().metric(metric)),
                List.of(cells.name("col.device", 16), cells.text("talk.col.pair", 30), cells.text("col.why", 50)),
                rows,
                List.of());
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
