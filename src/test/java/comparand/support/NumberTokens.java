package comparand.support;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The numbers that stand in a text, as a reader would pick them out. */
public final class NumberTokens {

    private static final String DIGITS = "0123456789";
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /** A hyphen or sign counts as a sign only where a number can begin: not in 3-12 or quillane-15. */
    private static final Pattern TOKEN = Pattern.compile("(?<date>(?<!\\d)\\d{4}-\\d{2}(?:-\\d{2})?(?!\\d))"
            + "|(?<name>\\d+\\.\\d+\\.\\d+|[\\p{L}_]+\\d[\\p{L}\\d_]*|\\d+[\\p{L}_][\\p{L}\\d_]*)"
            + "|(?<number>(?:(?<![^\\s(\\[{|\"=≥≤<>±/:;])[+−-])?\\d+(?:[.,]\\d+)?)"
            + "(?<power>\\s?×\\s?10(?<exponent>[⁻" + RAISED + "]+))?");

    private static final Pattern COMPANY = Pattern.compile("\\s?([%°µ\\p{L}][^\\s,;:|()\\[\\]?]*)");

    private static final Map<Character, Character> LOWERED =
            IntStream.range(0, 10).boxed().collect(Collectors.toMap(i -> RAISED.charAt(i), i -> DIGITS.charAt(i)));

    private NumberTokens() {}

    /** What a token is. */
    public enum Kind {
        NUMBER,
        /** Letters and digits grown together: B21, T2r3, SvO2; or a version such as 1.2.3. */
        NAME,
        DATE
    }

    /**
     * A number in a text.
     *
     * @param text as printed, with a true minus
     * @param value its value; zero for a name or a date
     * @param decimals how many are printed
     * @param company the word behind it, most often its unit; may be empty
     * @param bound whether it is the end of what is only known to lie below it
     * @param start where it begins in the text
     */
    public record Token(
            Kind kind, String text, BigDecimal value, int decimals, String company, boolean bound, int start) {

        public boolean isShare() {
            return company.equals("%");
        }

        /** Digits without leading zeros: 2 for 0.71 and for 12. */
        public int significant() {
            return Math.max(1, value.unscaledValue().abs().toString().length());
        }
    }

    public static List<Token> of(String text) {
        var plain = plain(text);
        var matcher = TOKEN.matcher(plain);
        var tokens = new ArrayList<Token>();
        while (matcher.find()) {
            var number = matcher.group("number");
            if (number == null) {
                var kind = matcher.group("date") == null ? Kind.NAME : Kind.DATE;
                tokens.add(new Token(kind, matcher.group(), BigDecimal.ZERO, 0, "", false, matcher.start()));
                continue;
            }
            var value = new BigDecimal(number.replace('−', '-').replace(',', '.'));
            int decimals = value.scale();
            var exponent = matcher.group("exponent");
            if (exponent != null) {
                int power = lowered(exponent);
                value = value.scaleByPowerOfTen(power);
                decimals -= power;
            }
            var company = COMPANY.matcher(plain).region(matcher.end(), plain.length());
            boolean bound = matcher.start() > 0 && plain.charAt(matcher.start() - 1) == '<';
            tokens.add(new Token(
                    Kind.NUMBER,
                    matcher.group().replace(" ", "").replaceFirst("^-", "−"),
                    value,
                    decimals,
                    company.lookingAt() ? company.group(1).replaceFirst("\\.$", "") : "",
                    bound,
                    matcher.start()));
        }
        return tokens;
    }

    /** Every kind of blank as one; the length stays. */
    static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2009', ' ');
    }

    private static int lowered(String exponent) {
        var digits = exponent.chars()
                .filter(c -> c != '⁻')
                .mapToObj(c -> String.valueOf(LOWERED.getOrDefault((char) c, '0')))
                .collect(Collectors.joining());
        return (exponent.startsWith("⁻") ? -1 : 1) * Integer.parseInt(digits);
    }
}
