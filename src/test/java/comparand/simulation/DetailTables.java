package comparand.simulation;

import static comparand.simulation.SummaryTables.printed;
import static comparand.simulation.SummaryTables.where;

import comparand.simulation.Judged.Kind;
import comparand.simulation.Reading.Why;
import java.util.LinkedHashMap;
import java.util.List;

/** The further tables of the report: what is found, what is withheld, what a verdict on a figure is worth, what misleads. */
final class DetailTables {

    private DetailTables() {}

    static String all(List<Judged> pairs) {
        return byDifference(pairs) + withheld(pairs) + figures(pairs) + watched(pairs);
    }

    private static String byDifference(List<Judged> pairs) {
        var table = new Table(
                "Nothing wrong: what is found",
                "Per cent of the pairs in which nothing stands in the way, by their true difference. Silence is no way to win here.",
                2,
                "true difference",
                "reader",
                "pairs",
                "direction: right",
                "wrong",
                "not as large as m: right",
                "wrong",
                "more than m: right",
                "wrong",
                "nothing said");
        for (double times : new double[] {0, 0.5, 1, 2}) {
            var some = where(pairs, p -> p.is(Cause.NOTHING) && p.truth().inMargins() == times);
            for (var reader : Reader.values()) {
                table.row(
                        times == 0 ? "none" : times == 0.5 ? "half of m" : times == 1 ? "m" : "twice m",
                        reader.words(),
                        some.size(),
                        reader.rate(some, Truth::rightDirection).brief(),
                        reader.rate(some, Truth::wrongDirection).brief(),
                        reader.rate(some, Truth::rightWithin).brief(),
                        reader.rate(some, Truth::wrongWithin).brief(),
                        reader.rate(some, Truth::rightBeyond).brief(),
                        reader.rate(some, Truth::wrongBeyond).brief(),
                        reader.rate(some, (t, r) -> !r.isAnswer()).brief());
            }
        }
        return table.text();
    }

    private static String withheld(List<Judged> pairs) {
        var table = new Table(
                "Withheld by the tool",
                "Local and published values. Rightly: a condition that decides was another by more than its tolerance, or was not"
                        + " reported (in some of these it was alike in truth), or the ± was unexplained.",
                1,
                "why",
                "pairs",
                "rightly, %",
                "of which not reported and alike, %",
                "side by side: answers",
                "wrong, % of answers");
        var words = new LinkedHashMap<Why, String>();
        words.put(Why.SHOWN, "shown, not compared");
        words.put(Why.EITHER_WAY, "depends on what the ± is");
        words.put(Why.NOT_SETTLED, "not settled");
        words.put(Why.UNTESTABLE, "cannot be tested");
        words.put(Why.NOT_PAIRED, "no local result");
        words.forEach((why, text) -> {
            var some = where(pairs, p -> p.is(Kind.PUBLISHED) && p.tool().isWithheld(why));
            table.row(
                    text,
                    some.size(),
                    why == Why.NOT_SETTLED
                            ? "–"
                            : Rate.of(some, DetailTables::rightly).text(),
                    Rate.of(some, p -> p.is(Cause.SILENT_ALIKE)).text(),
                    Reader.NAIVE.answers(some).hits(),
                    Reader.NAIVE.wrongOfAnswers(some).text());
        });
        return table.text();
    }

    private static boolean rightly(Judged pair) {
        var value = pair.published().orElseThrow();
        return pair.tool().isWithheld(Why.EITHER_WAY)
                ? value.print() == Print.UNEXPLAINED
                : pair.tool().isWithheld(Why.SHOWN) && value.isToBeWithheld();
    }

    private static String figures(List<Judged> pairs) {
        var table = new Table(
                "Figures taken as exact",
                "The tool says of these that the difference of two means cannot be tested, and gives its verdict against the figure"
                        + " as printed. Wrong, in per cent of pairs, by either truth; conditions alike.",
                1,
                "printed",
                "pairs",
                "wrong against the true mean behind it",
                "wrong against the figure as printed");
        for (var form : List.of(Print.FIGURE, Print.WITHOUT_NUMBER, Print.QUARTILES)) {
            var some = where(
                    pairs,
                    p -> p.asPrinted().isPresent()
                            && printed(p, f -> f == form)
                            && p.published().orElseThrow().unlike() == Unlike.ALIKE);
            table.row(
                    form == Print.FIGURE
                            ? Cause.FIGURE.words()
                            : form == Print.WITHOUT_NUMBER
                                    ? Cause.WITHOUT_NUMBER.words()
                                    : "a median with quartiles that look skewed",
                    some.size(),
                    Reader.TOOL.wrong(some).text(),
                    Rate.of(some, p -> p.asPrinted().orElseThrow().wrong(p.tool()))
                            .text());
        }
        return table.text();
    }

    private static String watched(List<Judged> pairs) {
        var table = new Table(
                "A closer look",
                "Pairs with one thing in common; what falls short is named below.",
                1,
                "pairs",
                "number",
                "tool: wrong, % of pairs",
                "no true difference",
                "tool: false direction, % of these",
                "side by side: the same, %");
        for (var watched : Watched.all()) {
            var some = watched.of(pairs);
            var none = where(some, Judged::isNull);
            table.row(
                    watched.words(),
                    some.size(),
                    Reader.TOOL.wrong(some).text(),
                    none.size(),
                    watched.falseDirection(pairs).text(),
                    Reader.NAIVE.rate(none, Truth::wrongDirection).text());
        }
        return table.text();
    }
}
