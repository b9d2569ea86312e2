package comparand.simulation;

import comparand.simulation.Judged.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.Predicate;

/** The first tables of the report, from all judged pairs: by what is compared, by kind of error, by cause. */
final class SummaryTables {

    private SummaryTables() {}

    static String all(List<Judged> pairs) {
        return summary(pairs) + kinds(pairs) + causes(pairs);
    }

    static List<Judged> where(List<Judged> pairs, Predicate<Judged> holds) {
        return pairs.stream().filter(holds).toList();
    }

    /** By what the two sides are; the published pairs together are a row of their own. */
    static Map<String, Predicate<Judged>> sides() {
        var sides = new LinkedHashMap<String, Predicate<Judged>>();
        sides.put("local and published, with mean, spread and n", p -> printed(p, Print::tellsSpread));
        sides.put(
                "local and published, a figure without spread or n",
                p -> printed(p, f -> f == Print.FIGURE || f == Print.WITHOUT_NUMBER));
        sides.put("local and published, a limit", p -> printed(p, f -> f == Print.LIMIT));
        sides.put("**local and published, all**", p -> p.is(Kind.PUBLISHED));
        sides.put("local and read off between two published", p -> p.is(Kind.READ_OFF));
        sides.put(
                "two devices, bench or one hospital",
                p -> p.is(Kind.PRESENT) && !p.local().severalHospitals());
        sides.put(
                "two devices, several hospitals together",
                p -> p.is(Kind.PRESENT) && p.local().severalHospitals());
        sides.put("two devices, within one of several hospitals", p -> p.is(Kind.WITHIN_HOSPITAL));
        return sides;
    }

    static boolean printed(Judged pair, Predicate<Print> form) {
        return pair.is(Kind.PUBLISHED)
                && pair.published().map(Published::print).filter(form).isPresent();
    }

    private static String summary(List<Judged> pairs) {
        var table = new Table(
                "Summary",
                "A bare figure is taken as exact by both, and the tool says so; here its verdict is counted as if it were one on the"
                        + " difference of two means. Against a limit the tool says on which side the local mean lies, which is"
                        + " judged as such; the naive reader takes the limit for a mean.",
                1,
                "pairs",
                "number",
                "tool: answers",
                "wrong",
                "% of pairs",
                "% of answers",
                "side by side: answers",
                "wrong",
                "% of pairs",
                "% of answers");
        sides().forEach((words, holds) -> {
            var some = where(pairs, holds);
            var cells = new ArrayList<Object>(List.of(words, some.size()));
            for (var reader : Reader.values()) {
                boolean reads = !reader.has(some).isEmpty();
                cells.add(reads ? reader.answers(some).hits() : "–");
                cells.add(reads ? reader.wrong(some).hits() : "–");
                cells.add(reader.wrong(some).text());
                cells.add(reader.wrongOfAnswers(some).text());
            }
            table.row(cells.toArray());
        });
        return table.text();
    }

    /** A kind of error, and the pairs that it could befall. */
    private record Kinds(String words, Predicate<Judged> could, BiPredicate<Truth, Reading> wrong) {}

    private static String kinds(List<Judged> pairs) {
        var table = new Table(
                "By kind of error",
                "Local and published values.",
                2,
                "said",
                "pairs it could befall",
                "number",
                "tool: wrong",
                "% of these",
                "% of all answers",
                "side by side: wrong",
                "% of these",
                "% of all answers");
        var kinds = List.of(
                new Kinds("higher or lower, where there is none", Judged::isNull, Truth::wrongDirection),
                new Kinds("higher or lower, the wrong way", p -> !p.isNull(), Truth::wrongDirection),
                new Kinds("not as large as m", p -> p.truth().inMargins() >= 1, Truth::wrongWithin),
                new Kinds("more than m", p -> p.truth().inMargins() <= 1, Truth::wrongBeyond));
        var groups = new LinkedHashMap<String, List<Judged>>();
        groups.put("all", where(pairs, p -> p.is(Kind.PUBLISHED)));
        groups.put("nothing wrong", where(pairs, p -> p.is(Cause.NOTHING)));
        groups.forEach((words, group) -> {
            for (var kind : kinds) {
                var could = where(group, kind.could);
                var cells = new ArrayList<Object>(List.of(kind.words, words, could.size()));
                for (var reader : Reader.values()) {
                    cells.add(reader.rate(could, kind.wrong).hits());
                    cells.add(reader.rate(could, kind.wrong).text());
                    cells.add(Rate.of(
                                    reader.answered(group),
                                    p -> kind.could.test(p) && kind.wrong.test(p.truth(), reader.of(p)))
                            .text());
                }
                table.row(cells.toArray());
            }
        });
        return table.text();
    }

    private static String causes(List<Judged> pairs) {
        var table = new Table(
                "By cause",
                "Local and published values; each pair stands in one row. Where the published side has a cause, the local rows may"
                        + " be repeated or from several hospitals as well.",
                1,
                "cause",
                "pairs",
                "tool: answers, %",
                "wrong, % of pairs",
                "% of answers",
                "side by side: answers, %",
                "wrong, % of pairs",
                "% of answers");
        Arrays.stream(Cause.values()).forEach(cause -> {
            var some = where(pairs, p -> p.is(cause));
            var cells = new ArrayList<Object>(List.of(cause.words(), some.size()));
            for (var reader : Reader.values()) {
                cells.add(reader.answers(some).brief());
                cells.add(reader.wrong(some).text());
                cells.add(reader.wrongOfAnswers(some).text());
            }
            table.row(cells.toArray());
        });
        return table.text();
    }
}
