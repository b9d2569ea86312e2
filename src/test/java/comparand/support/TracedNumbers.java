package comparand.support;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.NumberTokens.Kind;
import comparand.support.NumberTokens.Token;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A part of results.json in which numbers of a document are looked for.
 *
 * <p>A text is traced if it stands there word for word; else each of its numbers must stand there as printed, or a number
 * must stand there that rounds to it at its printed decimals. A number with the unit of a condition must stand there with
 * that unit: only numbers in the metric's own unit are rounded.
 */
public final class TracedNumbers {

    private static final double SAME = 1e-12;

    private final Set<String> texts = new HashSet<>();
    private final Set<String> printed = new HashSet<>();
    private final Set<String> withCompany = new HashSet<>();
    private final Set<String> units = new HashSet<>();
    private final List<BigDecimal> numbers = new ArrayList<>();

    public TracedNumbers(Collection<JsonNode> nodes) {
        nodes.forEach(this::read);
    }

    private void read(JsonNode node) {
        if (node.isTextual()) {
            var text = node.asText();
            texts.add(folded(text));
            for (var token : NumberTokens.of(text)) {
                printed.add(token.text());
                withCompany.add(token.text() + " " + token.company());
            }
            if (text.matches("-?\\d+(\\.\\d+)?(E-?\\d+)?")) {
                numbers.add(new BigDecimal(text));
            }
        } else if (node.isNumber()) {
            numbers.add(node.decimalValue());
        } else {
            Optional.ofNullable(node.get("unit")).ifPresent(u -> units.add(u.asText()));
            node.forEach(this::read);
        }
    }

    /** The numbers of a text that are not found, as printed. */
    public List<String> untraced(String text) {
        return stands(text)
                ? List.of()
                : NumberTokens.of(text).stream()
                        .filter(t -> !found(t))
                        .map(Token::text)
                        .toList();
    }

    /** Whether a number in a cell is one of the unrounded numbers. */
    public boolean has(double value) {
        return numbers.stream().anyMatch(n -> Math.abs(n.doubleValue() - value) <= SAME * Math.max(1, Math.abs(value)));
    }

    /** Whether a text stands here word for word, and not within a longer number. */
    private boolean stands(String text) {
        var wanted = folded(text);
        return wanted.codePoints().anyMatch(Character::isLetter)
                && texts.stream().anyMatch(t -> {
                    int at = t.indexOf(wanted);
                    return at >= 0 && !touchesDigit(t, at - 1) && !touchesDigit(t, at + wanted.length());
                });
    }

    private static boolean touchesDigit(String text, int at) {
        return at >= 0 && at < text.length() && Character.isDigit(text.charAt(at));
    }

    private boolean found(Token token) {
        if (isFingerprint(token.text())) {
            return true;
        }
        if (token.kind() == Kind.NAME) {
            return printed.contains(token.text());
        }
        if (withCompany.contains(token.text() + " " + token.company())) {
            return true;
        }
        return !isForeignUnit(token.company())
                && (printed.contains(token.text())
                        || (token.kind() == Kind.NUMBER && numbers.stream().anyMatch(n -> roundsTo(token, n))));
    }

    /** A fingerprint is printed by its first eight characters. */
    private boolean isFingerprint(String token) {
        return token.length() == 8 && texts.stream().anyMatch(t -> t.length() == 64 && t.startsWith(token));
    }

    /** A unit that is not the metric's own: rounded numbers never have it. */
    private boolean isForeignUnit(String company) {
        return company.matches("[°µ].*|.*/.*") && units.stream().noneMatch(u -> u.startsWith(company));
    }

    private static boolean roundsTo(Token token, BigDecimal number) {
        if (token.bound()) {
            return number.signum() >= 0 && number.compareTo(token.value()) < 0;
        }
        boolean share = token.isShare() && number.signum() >= 0 && number.compareTo(BigDecimal.ONE) <= 0;
        return rounds(number, token) || (share && rounds(number.movePointRight(2), token));
    }

    private static boolean rounds(BigDecimal number, Token token) {
        return number.setScale(token.decimals(), RoundingMode.HALF_UP).compareTo(token.value()) == 0;
    }

    /** Without blanks and capitals: line ends and first letters are a matter of layout. */
    private static String folded(String text) {
        return NumberTokens.plain(text).replace(" ", "").replace('-', '−').toLowerCase(Locale.ROOT);
    }
}
