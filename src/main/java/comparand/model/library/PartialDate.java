package comparand.model.library;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Pattern;

/** A date known to the day, the month or the year: {@code 2024-03-18}, {@code 2024-03}, {@code 2024}. */
public record PartialDate(String text, LocalDate earliest, LocalDate latest) implements Comparable<PartialDate> {

    private static final Pattern YEAR = Pattern.compile("\\d{4}");
    private static final Pattern MONTH = Pattern.compile("\\d{4}-\\d{2}");
    /** The form of a whole date; not every text of this form is a day. */
    public static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    /** Empty if the text is no such date. */
    public static Optional<PartialDate> read(String text) {
        try {
            if (YEAR.matcher(text).matches()) {
                var year = Year.parse(text);
                return Optional.of(
                        new PartialDate(text, year.atDay(1), year.atMonth(12).atEndOfMonth()));
            }
            if (MONTH.matcher(text).matches()) {
                var month = YearMonth.parse(text);
                return Optional.of(new PartialDate(text, month.atDay(1), month.atEndOfMonth()));
            }
            if (DAY.matcher(text).matches()) {
                var day = LocalDate.parse(text);
                return Optional.of(new PartialDate(text, day, day));
            }
            return Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    @Override
    public int compareTo(PartialDate other) {
        return earliest.compareTo(other.earliest);
    }

    @Override
    public String toString() {
        return text;
    }
}
