package comparand.compose;

import java.util.Locale;

/** How a constant is written in results: {@code SAME_AFTER_CONVERSION} as {@code same-after-conversion}. */
final class Kebab {

    private Kebab() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
