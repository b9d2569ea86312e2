package comparand.model.library;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** In what order a column of texts writes the parts of a date; declared, because 03/04/2026 is two days. */
public enum DateOrder {
    YEAR_MONTH_DAY(0, 1, 2),
    DAY_MONTH_YEAR(2, 1, 0),
    MONTH_DAY_YEAR(2, 0, 1);

    private static final Pattern PARTS = Pattern.compile("(\\d{1,4})([-./])(\\d{1,2})\\2(\\d{1,4})");

    private final int year;
    private final int month;
    private final int day;

    DateOrder(int year, int month, int day) {
        this.year = year;
        this.month = month;
        this.day = day;
    }

    /** The day a text names, with the year in four digits and hyphens, points or slashes between; empty if it is none. */
    public Optional<LocalDate> read(String text) {
        var m = PARTS.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        var parts = List.of(m.group(1), m.group(3), m.group(4));
        if (parts.get(year).length() != 4
                || parts.get(month).length() > 2
                || parts.get(day).length() > 2) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.of(
                    Integer.parseInt(parts.get(year)),
                    Integer.parseInt(parts.get(month)),
                    Integer.parseInt(parts.get(day))));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
