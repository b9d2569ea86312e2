package comparand.compose.text;

import java.util.Locale;

/** How a constant is written in results: {@code SAME_AFTER_CONVERSION} as {@code same-after-conversion}. */
public final class Kebab {

    private Kebab() {}

    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
