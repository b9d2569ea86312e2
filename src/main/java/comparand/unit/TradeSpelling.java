package comparand.unit;

import comparand.diag.Suggest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads units as people in the trade write them, {@code mmHg}, {@code cmH₂O}, {@code °C}, {@code µL},
 * {@code mL/min/m²}, {@code mg/100 L}, {@code ×10⁹/L}, by rewriting them as UCUM terms. A UCUM term is read as it is.
 * The writer's spelling is kept.
 */
public final class TradeSpelling {

    /** Whole words only; everything else is left to UCUM. Trade usage, common practice. */
    private static final Map<String, String> WORDS = words();

    /** What to suggest for a mistyped unit. */
    private static final List<String> USUAL = List.of(
            "mmHg",
            "kPa",
            "hPa",
            "mbar",
            "cmH2O",
            "psi",
            "Torr",
            "Pa",
            "L",
            "mL",
            "µL",
            "nL",
            "dL",
            "L/min",
            "mL/min",
            "g/dL",
            "g/L",
            "mg/dL",
            "mg/L",
            "mmol/L",
            "µmol/L",
            "m²",
            "cm²",
            "mm",
            "cm",
            "µm",
            "kg",
            "mg",
            "µg",
            "min",
            "°C",
            "°F",
            "mPa·s",
            "cP",
            "mmHg·min/L",
            "mL/min/m²",
            "L/min/m²");

    private static final Pattern WORD = Pattern.compile("[\\p{L}%°℃℉'\\[\\]]+[₂2]?[\\p{L}\\[\\]]*");
    private static final Pattern NUMBER_THEN_UNIT = Pattern.compile("/\\s*(\\d+)\\s*\\.?\\s*([\\p{L}\\[].*)");
    private static final Pattern POWER_OF_TEN =
            Pattern.compile("(?:^|(?<=[ .(/]))(?:[×x*.]\\s*)?10(?:\\^|\\*\\*)?([⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)");
    private static final Pattern TWO_WORDS = Pattern.compile("\\bmm Hg\\b|\\bcm H[2₂]O\\b|\\bdeg C\\b");
    private static final Pattern POINTS = Pattern.compile("percentage[ -]points?|%[ -]?points?");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺";
    private static final String PLAIN = "0123456789-+";

    /** Spellings read before: a library has many thousand quantities and some dozen units. */
    private static final Map<String, Unit> READ = new ConcurrentHashMap<>();

    /** More than people use, and few enough to bear whatever a file may hold. */
    private static final int MOST_REMEMBERED = 1000;

    private TradeSpelling() {}

    /** The spellings most often met, for lists to choose from. */
    public static List<String> usual() {
        return USUAL;
    }

    /** A unit as written, or why it is none. Positions count within the text as written. */
    public static Parsed<Unit> read(String written) {
        var text = written.strip();
        var known = READ.get(text);
        if (known != null) {
            return Parsed.ok(known);
        }
        return parsed(text).map(u -> {
            if (READ.size() < MOST_REMEMBERED) {
                READ.put(text, u);
            }
            return u;
        });
    }

    private static Parsed<Unit> parsed(String text) {
        if (text.isEmpty()) {
            return Parsed.fault(0, 1, "there is no unit here", "write a unit, or `1` for a bare number");
        }
        if (text.equals("G/L")) {
            return Parsed.fault(
                    0,
                    3,
                    "`G/L` means gigaparticles per litre to a laboratory and gauss per litre to UCUM",
                    "write `10⁹/L`");
        }
        var asUcum = Ucum.read(text);
        return asUcum.fold(
                unit -> Parsed.ok(unit.spelled(text.equals("1") ? "" : text)),
                first -> Ucum.read(rewrite(text))
                        .fold(
                                unit -> Parsed.ok(unit.spelled(text)),
                                second -> Parsed.fault(
                                        place(text, first, second),
                                        wordLength(text, second),
                                        "`" + text + "` cannot be read as a unit: " + second.problem(),
                                        fix(quoted(second.problem()), second))));
    }

    private static String fix(String word, Parsed.Fault<Unit> fault) {
        return Suggest.nearest(word, USUAL)
                .map(u -> "did you mean `" + u + "`?")
                .orElse(fault.fix());
    }

    private static int place(String text, Parsed.Fault<Unit> first, Parsed.Fault<Unit> second) {
        var word = quoted(second.problem());
        int found = text.indexOf(word);
        return found >= 0 ? found : Math.min(first.at(), text.length() - 1);
    }

    private static int wordLength(String text, Parsed.Fault<Unit> second) {
        var word = quoted(second.problem());
        return text.contains(word) ? Math.max(1, word.length()) : 1;
    }

    private static String quoted(String problem) {
        int open = problem.indexOf('`');
        int close = problem.indexOf('`', open + 1);
        return open >= 0 && close > open ? problem.substring(open + 1, close) : "\u0000";
    }

    /** The UCUM term for a trade spelling; what is not recognised is passed on as it is. */
    static String rewrite(String text) {
        var t = text.replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('μ', 'u')
                .replace('µ', 'u');
        t = t.replace('−', '-').replace('–', '-');
        t = TWO_WORDS
                .matcher(t)
                .replaceAll(
                        m -> m.group().startsWith("deg") ? "degC" : m.group().replace(" ", ""));
        t = POINTS.matcher(t).replaceAll("%");
        var perHundred = NUMBER_THEN_UNIT.matcher(t);
        if (perHundred.find() && !perHundred.group(2).contains("/")) {
            t = perHundred.replaceFirst("/($1.$2)");
        }
        t = POWER_OF_TEN.matcher(t).replaceAll(m -> Matcher.quoteReplacement("10*" + plain(m.group(1))));
        t = plain(t);
        t = t.replaceAll("\\s*[·×⋅∙]\\s*", ".").replaceAll("\\s*/\\s*", "/").replaceAll("\\bper\\b", "/");
        t = WORD.matcher(t).replaceAll(m -> Matcher.quoteReplacement(WORDS.getOrDefault(m.group(), m.group())));
        return t.strip().replaceAll("\\s*/\\s*", "/").replaceAll("\\s+", ".");
    }

    private static String plain(String text) {
        var out = new StringBuilder(text.length());
        for (int k = 0; k < text.length(); k++) {
            int i = SUPERSCRIPTS.indexOf(text.charAt(k));
            out.append(i < 0 ? text.charAt(k) : PLAIN.charAt(i));
        }
        return out.toString();
    }

    private static Map<String, String> words() {
        var w = new LinkedHashMap<String, String>();
        say(w, "mm[Hg]", "mmHg", "mmhg", "mm Hg");
        say(w, "cm[Hg]", "cmHg");
        say(w, "cm[H2O]", "cmH2O", "cmH₂O", "cmh2o");
        say(w, "mm[H2O]", "mmH2O", "mmH₂O");
        say(w, "[psi]", "psi", "PSI");
        say(w, "Cel", "°C", "℃", "degC", "°c");
        say(w, "[degF]", "°F", "℉", "degF");
        say(w, "L/min", "lpm", "LPM");
        say(w, "ug", "mcg");
        say(w, "mL", "cc", "ccm");
        say(w, "s", "sec", "secs", "second", "seconds");
        say(w, "min", "mins", "minute", "minutes");
        say(w, "h", "hr", "hrs", "hour", "hours");
        say(w, "d", "day", "days");
        say(w, "wk", "week", "weeks");
        say(w, "mo", "month", "months");
        say(w, "a", "yr", "yrs", "year", "years");
        say(w, "[lb_av]", "lb", "lbs");
        say(w, "[in_i]", "in", "inch", "inches");
        say(w, "[Ch]", "Fr", "French", "Charriere");
        say(w, "%", "percent", "vol%", "pct");
        say(w, "[wood'U]", "WU", "Wood");
        say(w, "[iU]", "IU");
        say(w, "[pH]", "pH");
        say(w, "(101325.Pa/760)", "Torr", "torr"); // exactly 1/760 of a standard atmosphere; no UCUM code of its own
        say(w, "meq", "mEq");
        say(w, "min-1", "rpm", "bpm");
        say(w, "L", "litre", "litres", "liter", "liters");
        say(w, "m2", "sqm");
        say(w, "{count}", "count", "counts", "bubbles");
        return Map.copyOf(w);
    }

    /** The spellings of the trade that are read as whole words, by the UCUM term each stands for. */
    public static SortedMap<String, List<String>> spellings() {
        var byTerm = new TreeMap<String, List<String>>();
        new TreeMap<>(WORDS)
                .forEach((spelling, term) ->
                        byTerm.computeIfAbsent(term, t -> new ArrayList<>()).add(spelling));
        return byTerm;
    }

    private static void say(Map<String, String> words, String code, String... spellings) {
        for (var spelling : spellings) {
            words.put(spelling, code);
        }
    }
}
