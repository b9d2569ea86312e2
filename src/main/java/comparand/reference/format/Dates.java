package comparand.reference.format;

import static java.util.Objects.requireNonNullElse;

import comparand.model.library.PartialDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Dates from their parts. */
final class Dates {

    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private Dates() {}

    /** As fine as the parts say: an impossible day leaves the month, an impossible month the year. */
    static Optional<PartialDate> of(String year, @Nullable String month, @Nullable String day) {
        var m = requireNonNullElse(month, "");
        var d = requireNonNullElse(day, "");
        return (m.isEmpty() || d.isEmpty()
                        ? Optional.<PartialDate>empty()
                        : PartialDate.read(year + "-" + two(m) + "-" + two(d)))
                .or(() -> m.isEmpty() ? Optional.empty() : PartialDate.read(year + "-" + two(m)))
                .or(() -> PartialDate.read(year));
    }

    private static String two(String number) {
        return number.length() == 1 ? "0" + number : number;
    }

    /** The number of a month by its English name or the first three letters of it; empty for anything else. */
    static Optional<String> month(String name) {
        var word = name.toLowerCase(Locale.ROOT).replaceAll("\\.$", "");
        if (word.matches("0?[1-9]|1[0-2]")) {
            return Optional.of(two(word));
        }
        int at = word.length() < 3 ? -1 : MONTHS.indexOf(word.substring(0, 3));
        return at >= 0 && isMonth(word, at) ? Optional.of(two(Integer.toString(at + 1))) : Optional.empty();
    }

    private static boolean isMonth(String word, int at) {
        var whole = java.time.Month.of(at + 1).name().toLowerCase(Locale.ROOT);
        return word.length() == 3 || word.equals(whole) || word.equals("sept");
    }

    /** {@code jan} to {@code dec}. */
    static String name(int month) {
        return MONTHS.get(month - 1);
    }
}
