package comparand.reference.format;

import comparand.model.library.PartialDate;
import java.util.Optional;
import java.util.regex.Pattern;

/** Dates of RIS: {@code YYYY/MM/DD/other}, of which all but the year may be empty; the year again under its own tag. */
final class RisDates {

    private static final Pattern FORM = Pattern.compile("(\\d{4})(?:[/-](\\d{1,2})?(?:[/-](\\d{1,2})?(?:/(.*))?)?)?");

    private RisDates() {}

    static void read(Draft draft, TaggedRecord tags) {
        var year = tags.take("PY", "Y1");
        var day = tags.take("DA");
        var fromYear = year.flatMap(t -> date(t.text()));
        var fromDay = day.flatMap(t -> date(t.text()));
        if (fromDay.isPresent()
                && fromYear.filter(y -> !sameYear(y, fromDay.get())).isEmpty()) {
            draft.issued(fromDay.get());
        } else {
            fromYear.ifPresent(draft::issued);
            day.ifPresent(t -> draft.keep("DA", t.text()));
        }
        year.filter(t -> fromYear.isEmpty() || !isExact(t.text())).ifPresent(t -> draft.keep(t.tag(), t.text()));
        day.filter(t -> fromDay.isPresent() && draft.issued().equals(fromDay) && !isExact(t.text()))
                .ifPresent(t -> draft.keep("DA", t.text()));
        if (draft.issued().isEmpty()) {
            year.or(() -> day).ifPresent(t -> draft.dateUnreadable(t.span(), t.text()));
        }
    }

    private static boolean sameYear(PartialDate one, PartialDate other) {
        return one.earliest().getYear() == other.earliest().getYear();
    }

    /** Whether nothing is lost by reading it as a date. */
    private static boolean isExact(String raw) {
        return Plain.text(raw).matches("\\d{4}(?:/(?:\\d{2}(?:/(?:\\d{2})?/?)?|//?)?)?");
    }

    private static Optional<PartialDate> date(String raw) {
        var form = FORM.matcher(Plain.text(raw));
        if (!form.matches()) {
            var year = Pattern.compile("\\b(1[5-9]|20)\\d\\d\\b").matcher(raw);
            return year.find() ? PartialDate.read(year.group()) : Optional.empty();
        }
        return Dates.of(form.group(1), form.group(2), form.group(3));
    }

    static String text(PartialDate date) {
        return date.text().replace('-', '/');
    }
}
