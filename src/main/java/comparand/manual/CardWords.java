package comparand.manual;

import comparand.metric.Bounds;
import comparand.metric.Role;
import java.math.BigDecimal;
import java.util.Locale;

/** What a card of the catalogue says by its kinds and numbers, in words; the same at the terminal and in the manual. */
public final class CardWords {

    private CardWords() {}

    public static String role(Role role) {
        return switch (role) {
            case DECIDES -> "decides";
            case DECIDES_WITHIN_DEVICE -> "decides within a device, qualifies between devices";
            case DECIDES_IF_KNOWN -> "decides where both report it, qualifies where one is silent";
            case QUALIFIES -> "qualifies";
        };
    }

    public static String bounds(Bounds b) {
        return b.equals(Bounds.ANY) ? "any" : plain(b.low()) + " to " + plain(b.high());
    }

    public static String plain(double x) {
        return Double.isInfinite(x)
                ? "any"
                : BigDecimal.valueOf(x).stripTrailingZeros().toPlainString();
    }

    public static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
