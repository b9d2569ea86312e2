package comparand.read.workbook;

import comparand.model.DataCell;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.DateUtil;

/** A number whose format says that it counts days: what day or time it stands for. */
final class StoredDate {

    private static final Pattern ELAPSED = Pattern.compile("\\[(h+|m+|s+)\\]", Pattern.CASE_INSENSITIVE);

    private StoredDate() {}

    /**
     * The day, the time, or both; a text for a duration of hours, which is neither.
     *
     * @param days as stored, counted from the workbook's first day
     * @param from1904 whether that is in 1904
     * @param format the number format of the cell
     */
    static DataCell read(double days, boolean from1904, String format) {
        if (ELAPSED.matcher(format).find()) {
            return duration(days);
        }
        var moment = DateUtil.isValidExcelDate(days) ? DateUtil.getLocalDateTime(days, from1904, true) : null;
        if (moment == null) {
            return new DataCell.Fault("a date before the first day of the calendar");
        }
        var time = moment.toLocalTime();
        if (days < 1) {
            return new DataCell.When(Optional.empty(), Optional.of(time));
        }
        return new DataCell.When(
                Optional.of(moment.toLocalDate()),
                time.equals(LocalTime.MIDNIGHT) ? Optional.empty() : Optional.of(time));
    }

    private static DataCell duration(double days) {
        var length = Duration.ofSeconds(Math.round(days * Duration.ofDays(1).toSeconds()));
        return DataCell.of(String.format(
                Locale.ROOT, "%d:%02d:%02d", length.toHours(), length.toMinutesPart(), length.toSecondsPart()));
    }
}
