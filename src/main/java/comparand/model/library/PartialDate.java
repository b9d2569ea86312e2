package comparand.model.library;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Pattern;

/** A date known to the day, the month or the year: {@code 2024-03-18}, {@code 2024-03}, {@code 2024}. */
public record PartialDate(String text, LocalDate earliest) implements Comparable<PartialDate> {

    private static final Pattern YEAR = Pattern.compile("\\d{4}");
    private static final Pattern MONTH = Pattern.compile("\\d{4}-\\d{2}");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    /** Empty if the text is no such date. */
    public static Optional<PartialDate> read(String text) {
        try {
            if (YEAR.matcher(text).matches()) {
                return Optional.of(new PartialDate(text, LocalDate.of(Integer.parseInt(text), 1, 1)));
            }
            if (MONTH.matcher(text).matches()) {
                return Optional.of(new PartialDate(text, YearMonth.parse(text).atDay(1)));
            }
            return DAY.matcher(text).matches()
                    ? Optional.of(new PartialDate(text, LocalDate.parse(text)))
                    : Optional.empty();
        } catch (java.time.DateTimeException e) {
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
