package comparand.read.proposal;

import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A heading taken apart: {@code Hb [g/L]}, {@code p_in (mmHg)} and {@code hb_gdl} name a quantity and a unit.
 *
 * @param words small letters, in order, without the unit
 * @param unit as a record would write it
 */
record HeadingWords(List<String> words, Optional<String> unit) {

    private static final Pattern BRACKETS = Pattern.compile("^(.*?)\\s*[\\[(]\\s*([^\\[\\]()]+?)\\s*[\\])]\\s*$");
    private static final Pattern COMMA_UNIT = Pattern.compile("^(.*?)\\s*[,/]\\s+(\\S.*)$");

    /** Units as they are glued to names in headings that allow letters only. Common practice. */
    private static final Map<String, String> GLUED = Map.ofEntries(
            Map.entry("mmhg", "mmHg"),
            Map.entry("kpa", "kPa"),
            Map.entry("mbar", "mbar"),
            Map.entry("lpm", "L/min"),
            Map.entry("lmin", "L/min"),
            Map.entry("mlmin", "mL/min"),
            Map.entry("ml", "mL"),
            Map.entry("nl", "nL"),
            Map.entry("ul", "µL"),
            Map.entry("gdl", "g/dL"),
            Map.entry("gl", "g/L"),
            Map.entry("mgdl", "mg/dL"),
            Map.entry("mgl", "mg/L"),
            Map.entry("mmoll", "mmol/L"),
            Map.entry("pct", "%"),
            Map.entry("percent", "%"),
            Map.entry("c", "°C"),
            Map.entry("degc", "°C"),
            Map.entry("um", "µm"),
            Map.entry("kg", "kg"),
            Map.entry("m2", "m²"),
            Map.entry("min", "min"),
            Map.entry("hours", "h"),
            Map.entry("h", "h"));

    static HeadingWords of(String heading) {
        for (var form : List.of(BRACKETS, COMMA_UNIT)) {
            var m = form.matcher(heading);
            if (m.matches()) {
                var unit = m.group(2);
                if (isUnit(unit)) {
                    return new HeadingWords(split(m.group(1)), Optional.of(unit));
                }
            }
        }
        var words = split(heading);
        if (words.size() > 1 && GLUED.containsKey(words.get(words.size() - 1))) {
            return new HeadingWords(
                    words.subList(0, words.size() - 1), Optional.ofNullable(GLUED.get(words.get(words.size() - 1))));
        }
        return new HeadingWords(words, Optional.ofNullable(words.size() == 1 ? ALONE.get(words.get(0)) : null));
    }

    /** Headings that are a unit by themselves. */
    private static final Map<String, String> ALONE = Map.of("hours", "h", "minutes", "min");

    private static boolean isUnit(String text) {
        return TradeSpelling.read(text).<Boolean>fold(u -> true, fault -> false);
    }

    private static List<String> split(String name) {
        var parts = new ArrayList<String>();
        Arrays.stream(name.split("[^\\p{L}\\p{N}₂]+"))
                .filter(p -> !p.isEmpty())
                .map(p -> p.toLowerCase(Locale.ROOT).replace('₂', '2'))
                .forEach(parts::add);
        return parts;
    }

    String name() {
        return String.join(" ", words);
    }

    Optional<Unit> readUnit() {
        return unit.flatMap(u -> TradeSpelling.read(u).<Optional<Unit>>fold(Optional::of, fault -> Optional.empty()));
    }
}
