package comparand.reference.format;

import comparand.model.library.PartialDate;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Dates of publication: {@code 2023 Oct 12}. One that no calendar has, such as {@code 2020 Jan-Feb} or {@code 2020 Winter}, gives
 * its year and is kept as it stands.
 */
final class MedlineDates {

    private static final Pattern FORM = Pattern.compile("(\\d{4})(?: ([A-Z][a-z]{2})(?: (\\d{1,2}))?)?");
    private static final Pattern YEAR = Pattern.compile("\\b(?:1[5-9]|20)\\d\\d\\b");

    private MedlineDates() {}

    static void read(Draft draft, TaggedRecord tags) {
        tags.take("DP").ifPresent(t -> {
            var text = Plain.text(t.text());
            var exact = exact(text);
            exact.or(() -> year(text)).ifPresentOrElse(draft::issued, () -> draft.dateUnreadable(t.span(), text));
            if (exact.filter(d -> text(d).equals(text)).isEmpty()) {
                draft.keep("DP", text);
            }
        });
    }

    private static Optional<PartialDate> exact(String text) {
        var form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        var month = Optional.ofNullable(form.group(2)).flatMap(Dates::month);
        return form.group(2) != null && month.isEmpty()
                ? Optional.empty()
                : Dates.of(form.group(1), month.orElse(""), form.group(3));
    }

    private static Optional<PartialDate> year(String text) {
        var year = YEAR.matcher(text);
        return year.find() ? PartialDate.read(year.group()) : Optional.empty();
    }

    static String text(PartialDate date) {
        var parts = date.text().split("-", -1);
        var out = new StringBuilder(parts[0]);
        if (parts.length > 1) {
            var name = Dates.name(Integer.parseInt(parts[1]));
            out.append(' ').append(Character.toUpperCase(name.charAt(0))).append(name.substring(1));
        }
        if (parts.length > 2) {
            out.append(' ').append(Integer.parseInt(parts[2]));
        }
        return out.toString();
    }

    /** The first date within a citation, such as {@code Lancet. 2010 Feb 6;375(9713):445}. */
    static Optional<PartialDate> within(String citation) {
        var date = Pattern.compile("\\b(?:1[5-9]|20)\\d\\d\\b(?: [A-Z][a-z]{2}\\b(?: \\d{1,2}\\b)?)?")
                .matcher(citation);
        return date.find() ? exact(date.group()).or(() -> year(date.group())) : Optional.empty();
    }
}
