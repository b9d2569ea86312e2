package comparand.compose.results;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Words;
import comparand.document.result.ScreeningResult;
import comparand.document.result.ScreeningResult.ScreenedResult;
import comparand.document.result.ScreeningResult.SearchResult;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Searches, records and counts of a log of screening in words, alike in figure, tables, text and slides. */
public final class ScreeningText {

    private final Words words;

    public ScreeningText(Words words) {
        this.words = words;
    }

    /** What kind of place was searched. */
    public String kind(SearchResult search) {
        return words.say("searched." + constant(search.kind()));
    }

    /** The place that was searched, behind its kind. */
    public String place(SearchResult search) {
        return words.say("flow.place", "kind", ConditionLine.upperFirst(kind(search)), "where", search.where());
    }

    /** What became of a record. */
    public String fate(ScreenedResult record) {
        return words.say("screened." + constant(record.became()));
    }

    private static String constant(String kebab) {
        return kebab.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    /** Why a record was left out; of a duplicate, what it repeats; nothing of what is included. */
    public Optional<String> reason(ScreenedResult record) {
        return record.reason()
                .or(() -> record.duplicateOf().map(of -> words.say("flow.repeats", "record", of)))
                .or(() -> record.became().equals("included")
                        ? Optional.empty()
                        : Optional.of(words.say("flow.no-reason")));
    }

    /** A box of the flow by the key of its words, with its count. */
    public String count(String key, int n) {
        return counted(words.say(key), n);
    }

    /** Words with a count behind them, as the flow of the PRISMA 2020 statement prints it: {@code Records screened (n = 17)}. */
    public String counted(String what, int n) {
        return words.say("flow.count", "what", ConditionLine.upperFirst(what), "n", String.valueOf(n));
    }

    /** Who took part in something, each once, in the order in which they are named. */
    public static List<String> who(Stream<Optional<String>> named) {
        return named.flatMap(Optional::stream).distinct().toList();
    }

    /** The day of the last search. */
    public static String last(ScreeningResult screening) {
        return screening.searches().stream()
                .map(SearchResult::on)
                .max(String::compareTo)
                .orElse("");
    }
}
