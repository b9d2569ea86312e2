package comparand.reference.format;

import java.util.regex.Pattern;

/** Text of CSL-JSON without the few tags that may set type in it ({@code <i>}, {@code <sup>} and their like). */
final class CslMarkup {

    private static final Pattern TAGS = Pattern.compile(
            "</?(?:i|b|em|strong|sub|sup|sc|span|scp|italic|bold)(?:\\s+(?:class|style)=\"[^\"]*\")?\\s*/?>",
            Pattern.CASE_INSENSITIVE);

    private CslMarkup() {}

    static String plain(String text) {
        return TAGS.matcher(text).replaceAll("");
    }
}
