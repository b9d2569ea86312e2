package comparand.reference.format;

import java.text.Normalizer;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Text of TeX as plain text and back. Accents become the letters they make, braces and commands that only set type are
 * dropped, mathematics is read as its signs one after another. What is written is plain Unicode with the signs escaped that
 * have a meaning in TeX; reading that gives the same text again.
 */
final class Tex {

    /** No letter bears more, and damaged text might never end them. */
    private static final int MOST_ACCENTS = 4;

    private final String tex;
    private final Consumer<String> unknown;
    private final StringBuilder out = new StringBuilder();
    private int at;
    private boolean inMathematics;
    private int accents;

    private Tex(String tex, Consumer<String> unknown) {
        this.tex = tex;
        this.unknown = unknown;
    }

    /**
     * Plain text.
     *
     * @param unknown is told of every command whose meaning is not known; it stays in the text as it stands
     */
    static String plain(String tex, Consumer<String> unknown) {
        var reading = new Tex(tex, unknown);
        reading.read();
        return Plain.text(reading.out.toString());
    }

    private void read() {
        while (at < tex.length()) {
            char c = tex.charAt(at);
            if (c == '\\') {
                out.append(command());
            } else {
                out.append(sign(c));
            }
        }
    }

    /** One sign, or several that are set as one. */
    private String sign(char c) {
        if (c == '{' || c == '}') {
            at++;
            return "";
        }
        if (c == '$') {
            inMathematics = !inMathematics;
            at++;
            return "";
        }
        if (c == '~') {
            at++;
            return " ";
        }
        if (inMathematics && (c == '^' || c == '_')) {
            at++;
            return "";
        }
        for (var joined : JOINED) {
            if (tex.startsWith(joined[0], at)) {
                at += joined[0].length();
                return joined[1];
            }
        }
        at++;
        return Character.toString(c);
    }

    private static final String[][] JOINED = {{"---", "—"}, {"--", "–"}, {"``", "“"}, {"''", "”"}, {"`", "‘"}};

    /** A command with what belongs to it. */
    private String command() {
        int from = at++;
        if (at >= tex.length()) {
            return "\\";
        }
        char first = tex.charAt(at);
        if (!isLetter(first)) {
            at++;
            var accent = TexSigns.ACCENTS.get(Character.toString(first));
            if (accent != null) {
                return accented(accent);
            }
            return "&%$#_{}".indexOf(first) >= 0
                    ? Character.toString(first)
                    : Character.isWhitespace(first) || ",;:\\".indexOf(first) >= 0
                            ? " "
                            : "-/!@()[]".indexOf(first) >= 0 ? "" : "\\" + first;
        }
        while (at < tex.length() && isLetter(tex.charAt(at))) {
            at++;
        }
        var name = tex.substring(from + 1, at);
        var accent = TexSigns.ACCENTS.get(name);
        if (accent != null) {
            return accented(accent);
        }
        var sign = TexSigns.SIGNS.get(name);
        if (sign != null) {
            endOfCommand();
            return sign;
        }
        if (TexSigns.UNPRINTED.contains(" " + name + " ")) {
            blanks();
            skipGroup();
            return "";
        }
        if (TexSigns.NO_TEXT.contains(" " + name + " ")) {
            blanks();
            return "";
        }
        unknown.accept("\\" + name);
        return "\\" + name;
    }

    /** Blanks behind the name of a command are part of it, and so is an empty group that keeps them apart. */
    private void endOfCommand() {
        if (tex.startsWith("{}", at)) {
            at += 2;
        } else {
            blanks();
        }
    }

    private void blanks() {
        while (at < tex.length() && Character.isWhitespace(tex.charAt(at))) {
            at++;
        }
    }

    private void skipGroup() {
        int depth = 0;
        while (at < tex.length()) {
            char c = tex.charAt(at);
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            if (depth < 0 || (depth == 0 && c != '}')) {
                return;
            }
            at++;
            if (depth == 0) {
                return;
            }
        }
    }

    /** The letter an accent stands over: the next sign, a group, or a dotless letter. */
    private String accented(String accent) {
        blanks();
        int depth = 0;
        while (at < tex.length() && tex.charAt(at) == '{') {
            at++;
            depth++;
            blanks();
        }
        accents++;
        var letter = letter();
        accents--;
        for (; depth > 0 && at < tex.length() && tex.charAt(at) == '}'; depth--) {
            at++;
        }
        return letter.map(l ->
                        Normalizer.normalize(l.substring(0, l.offsetByCodePoints(0, 1)) + accent, Normalizer.Form.NFC)
                                + l.substring(l.offsetByCodePoints(0, 1)))
                .orElse("");
    }

    private Optional<String> letter() {
        if (at >= tex.length() || tex.charAt(at) == '}') {
            return Optional.empty();
        }
        if (tex.charAt(at) != '\\' || accents >= MOST_ACCENTS) {
            int point = tex.codePointAt(at);
            at += Character.charCount(point);
            return Optional.of(Character.toString(point));
        }
        var made = command();
        return switch (made) {
            case "" -> Optional.empty();
            case "ı" -> Optional.of("i");
            case "ȷ" -> Optional.of("j");
            default -> Optional.of(made);
        };
    }

    private static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }

    /** Plain text as TeX, for a value in braces. */
    static String of(String plain) {
        var out = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            char before = i > 0 ? plain.charAt(i - 1) : ' ';
            switch (c) {
                case '\\' -> out.append("\\textbackslash{}");
                case '{' -> out.append("\\textbraceleft{}");
                case '}' -> out.append("\\textbraceright{}");
                case '~' -> out.append("\\textasciitilde{}");
                case '^' -> out.append("\\textasciicircum{}");
                case '`' -> out.append("\\textasciigrave{}");
                case '&', '%', '$', '#', '_' -> out.append('\\').append(c);
                case '-', '\'' -> out.append(before == c ? "{}" : "").append(c);
                default -> out.append(c);
            }
        }
        return out.toString();
    }
}
