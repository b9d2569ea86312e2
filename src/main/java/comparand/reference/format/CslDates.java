package comparand.reference.format;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.model.library.PartialDate;
import java.util.Optional;
import java.util.regex.Pattern;

/** Date variables of CSL-JSON: {@code date-parts}, or a text in one of several fields. Of a range, the beginning. */
final class CslDates {

    private static final Pattern DATE = Pattern.compile("(\\d{4})(?:-(\\d{1,2})(?:-(\\d{1,2}))?)?(?:[T/~?].*)?");
    private static final Pattern YEAR = Pattern.compile("\\b(?:1[5-9]|20)\\d\\d\\b");

    private CslDates() {}

    static Optional<PartialDate> read(JsonNode value) {
        if (value.isTextual() || value.isNumber()) {
            return text(value.asText());
        }
        var parts = value.path("date-parts").path(0);
        if (parts.isArray() && parts.path(0).asText().matches("\\d{4}")) {
            return Dates.of(parts.path(0).asText(), part(parts.path(1)), part(parts.path(2)));
        }
        for (var field : new String[] {"edtf", "raw", "literal", "date-time"}) {
            var text = value.path(field);
            var date = text.isTextual() ? text(text.asText()) : Optional.<PartialDate>empty();
            if (date.isPresent()) {
                return date;
            }
        }
        return Optional.empty();
    }

    private static String part(JsonNode part) {
        return part.asText().matches("\\d{1,2}") ? part.asText() : "";
    }

    private static Optional<PartialDate> text(String raw) {
        var date = DATE.matcher(raw.strip());
        if (date.matches()) {
            return Dates.of(date.group(1), date.group(2), date.group(3));
        }
        var year = YEAR.matcher(raw);
        return year.find() ? PartialDate.read(year.group()) : Optional.empty();
    }

    /** Whether the value says no more than the date: the same parts, be they numbers or texts. */
    static boolean isSame(JsonNode value, Optional<PartialDate> date) {
        if (date.isEmpty()) {
            return false;
        }
        var parts = value.path("date-parts");
        boolean isAlone = value.size() == 1 && parts.size() == 1;
        var texts = new StringBuilder();
        parts.path(0).forEach(p -> texts.append(texts.isEmpty() ? "" : "-").append(two(p.asText())));
        return (isAlone && texts.toString().equals(date.get().text()))
                || (value.isTextual() && value.asText().equals(date.get().text()));
    }

    private static String two(String number) {
        return number.length() == 1 ? "0" + number : number;
    }

    static JsonNode json(PartialDate date) {
        var node = CslReader.JSON.createObjectNode();
        var parts = node.putArray("date-parts").addArray();
        for (var part : date.text().split("-", -1)) {
            parts.add(Integer.parseInt(part));
        }
        return node;
    }
}
