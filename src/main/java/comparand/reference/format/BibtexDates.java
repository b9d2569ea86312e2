package comparand.reference.format;

import comparand.model.library.PartialDate;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Year, month and day of a BibTeX entry; a month that is none, such as {@code apr # "-" # may}, is kept as it stands. */
final class BibtexDates {

    private static final Pattern YEAR = Pattern.compile("\\b(1[5-9]|20)\\d\\d\\b");
    private static final Pattern DAY_AND_MONTH = Pattern.compile("(\\d{1,2})[\\s.]+([A-Za-z]+)");
    private static final Pattern MONTH_AND_DAY = Pattern.compile("([A-Za-z]+)[\\s.]+(\\d{1,2})");

    private BibtexDates() {}

    static void read(Draft draft, Function<String, Optional<BibtexEntry.Field>> take) {
        var date = take.apply("date");
        var year = take.apply("year");
        var month = take.apply("month");
        var day = take.apply("day");
        var whole = date.flatMap(f -> PartialDate.read(plain(f.tex())));
        if (whole.isPresent()) {
            draft.issued(whole.get());
            month.ifPresent(f -> draft.keep("month", plain(f.months())));
            return;
        }
        var text = year.or(() -> date);
        var found = text.map(f -> YEAR.matcher(plain(f.tex())))
                .filter(java.util.regex.Matcher::find)
                .map(java.util.regex.Matcher::group);
        if (found.isEmpty()) {
            text.ifPresent(f -> draft.dateUnreadable(f.span(), f.tex()));
            text.ifPresent(f -> draft.keep(f.name(), plain(f.tex())));
            month.ifPresent(f -> draft.keep("month", plain(f.months())));
            return;
        }
        text.filter(f -> !plain(f.tex()).equals(found.get())).ifPresent(f -> draft.keep(f.name(), plain(f.tex())));
        var parts = month.map(f -> parts(plain(f.months()))).orElse(new String[] {"", ""});
        var days = parts[1].isEmpty() ? day.map(f -> plain(f.tex())).orElse("") : parts[1];
        if (parts[0].isEmpty()) {
            month.ifPresent(f -> draft.keep("month", plain(f.months())));
        }
        Dates.of(found.get(), parts[0], days.matches("\\d{1,2}") ? days : "").ifPresent(draft::issued);
    }

    /** Month as two digits and day; empty where there is none. */
    private static String[] parts(String text) {
        var alone = Dates.month(text);
        if (alone.isPresent()) {
            return new String[] {alone.get(), ""};
        }
        var dayFirst = DAY_AND_MONTH.matcher(text);
        if (dayFirst.matches() && Dates.month(dayFirst.group(2)).isPresent()) {
            return new String[] {Dates.month(dayFirst.group(2)).orElse(""), dayFirst.group(1)};
        }
        var monthFirst = MONTH_AND_DAY.matcher(text);
        if (monthFirst.matches() && Dates.month(monthFirst.group(1)).isPresent()) {
            return new String[] {Dates.month(monthFirst.group(1)).orElse(""), monthFirst.group(2)};
        }
        return new String[] {"", ""};
    }

    private static String plain(String tex) {
        return Tex.plain(tex, command -> {});
    }
}
