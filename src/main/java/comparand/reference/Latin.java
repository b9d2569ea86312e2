package comparand.reference;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words as small Latin letters without marks, so that one name spelt in two ways is one name. */
final class Latin {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern NOT_WORDS = Pattern.compile("[^\\p{L}\\p{Nd}]+");

    private Latin() {}

    /** Words in small letters without marks, one blank between them; letters of other scripts stay. */
    static String words(String text) {
        return NOT_WORDS
                .matcher(MARKS.matcher(Normalizer.normalize(letters(text), Normalizer.Form.NFKD))
                        .replaceAll(""))
                .replaceAll(" ")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    /** The same with hyphens between words and nothing but a to z and digits; empty if none is left. */
    static String slug(String text) {
        return words(text).replaceAll("[^a-z0-9 ]+", "").strip().replaceAll(" +", "-");
    }

    /** Letters that no decomposition takes apart. */
    private static String letters(String text) {
        var out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case 'ß' -> out.append("ss");
                case 'ẞ' -> out.append("SS");
                case 'æ' -> out.append("ae");
                case 'Æ' -> out.append("Ae");
                case 'œ' -> out.append("oe");
                case 'Œ' -> out.append("Oe");
                case 'ø' -> out.append('o');
                case 'Ø' -> out.append('O');
                case 'ł' -> out.append('l');
                case 'Ł' -> out.append('L');
                case 'đ', 'ð' -> out.append('d');
                case 'Đ', 'Ð' -> out.append('D');
                case 'þ' -> out.append("th");
                case 'Þ' -> out.append("Th");
                case 'ı' -> out.append('i');
                case '\'', '\u2019', '\u02BC', '\u02B9' -> {}
                default -> out.appendCodePoint(c);
            }
        });
        return out.toString();
    }
}
