package comparand.reference.format;

import comparand.reference.Name;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Names of BibTeX: {@code First von Last}, {@code von Last, First} or {@code von Last, Jr, First}; a name all in braces is that of
 * a body ("BibTeXing", 4; "Tame the BeaST", 11, from memory). Particles are the words in small letters.
 */
final class BibtexName {

    private BibtexName() {}

    /** The names of a list, still in TeX. */
    static List<String> split(String tex) {
        return outside(tex.strip(), (text, at) -> {
            boolean isAnd = text.regionMatches(true, at, "and", 0, 3)
                    && (at == 0 || Character.isWhitespace(text.charAt(at - 1)))
                    && at + 3 < text.length()
                    && Character.isWhitespace(text.charAt(at + 3));
            return isAnd ? 3 : 0;
        });
    }

    static Optional<Name> read(String tex, UnaryOperator<String> plain) {
        var name = tex.strip();
        if (name.startsWith("{") && closing(name) == name.length() - 1) {
            var body = plain.apply(name);
            return body.isEmpty() ? Optional.empty() : Optional.of(Name.body(body));
        }
        var parts = outside(name, (text, at) -> text.charAt(at) == ',' ? 1 : 0);
        var words = words(parts.get(0));
        if (parts.size() > 1) {
            int von = 0;
            while (von < words.size() - 1 && isSmall(words.get(von))) {
                von++;
            }
            return person(
                    words,
                    0,
                    von,
                    plain.apply(parts.get(parts.size() - 1)),
                    parts.size() > 2 ? plain.apply(parts.get(1)) : "",
                    plain);
        }
        int last = words.size() - 1;
        int from = 0;
        while (from < last && !isSmall(words.get(from))) {
            from++;
        }
        int to = last;
        while (to > from && !isSmall(words.get(to - 1))) {
            to--;
        }
        boolean hasParticle = from < to;
        var given = String.join(" ", words.subList(0, hasParticle ? from : Math.max(0, last)));
        return person(
                words,
                hasParticle ? from : Math.max(0, last),
                hasParticle ? to : Math.max(0, last),
                plain.apply(given),
                "",
                plain);
    }

    private static Optional<Name> person(
            List<String> words, int from, int to, String given, String suffix, UnaryOperator<String> plain) {
        var particle = plain.apply(String.join(" ", words.subList(from, to)));
        var family = plain.apply(String.join(" ", words.subList(to, words.size())));
        if (family.isEmpty()) {
            var left = (given + " " + particle).strip();
            return left.isEmpty() ? Optional.empty() : Optional.of(Name.person(left, ""));
        }
        return Optional.of(new Name(family, given, particle, "", suffix, ""));
    }

    /** {@code von Last, Jr, First}, in TeX. */
    static String text(Name name) {
        if (name.isBody()) {
            return "{" + Tex.of(name.literal()) + "}";
        }
        var particle = name.particle().isEmpty() ? "" : Tex.of(name.particle()) + " ";
        return particle
                + guarded(name.family())
                + (name.suffix().isEmpty() ? "" : ", " + guarded(name.suffix()))
                + ", "
                + guarded(name.first());
    }

    /** In braces where a word in it would be taken for something else. */
    private static String guarded(String text) {
        boolean isPlain = text.isEmpty()
                || (!text.contains(",")
                        && words(text).stream().noneMatch(w -> isSmall(w) || w.equalsIgnoreCase("and")));
        // a name whose only part is all in braces would be that of a body, and a comma always follows
        return isPlain ? Tex.of(text) : "{" + Tex.of(text) + "}";
    }

    private static boolean isSmall(String word) {
        var bare = word.startsWith("{\\") ? word.replaceAll("[{}]|\\\\[a-zA-Z]+|\\\\.", "") : word;
        return bare.codePoints().filter(Character::isLetter).findFirst().stream()
                        .anyMatch(Character::isLowerCase)
                && (!word.startsWith("{") || word.startsWith("{\\"));
    }

    private static List<String> words(String part) {
        return outside(
                        part.strip(),
                        (text, at) -> Character.isWhitespace(text.charAt(at)) || text.charAt(at) == '~' ? 1 : 0)
                .stream()
                .filter(w -> !w.isEmpty())
                .toList();
    }

    private interface Separator {
        /** How many signs separate at a place; 0 if none. */
        int at(String text, int at);
    }

    /** The parts between separators outside of braces, stripped; at least one. */
    private static List<String> outside(String text, Separator separator) {
        var parts = new ArrayList<String>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            int length = depth == 0 && c != '}' ? separator.at(text, i) : 0;
            if (length > 0 && !(i > 0 && text.charAt(i - 1) == '\\')) {
                parts.add(text.substring(from, i).strip());
                from = i + length;
                i = from - 1;
            }
        }
        parts.add(text.substring(from).strip());
        return parts;
    }

    /** Where the brace that a text begins with is closed; beyond it if it is not. */
    private static int closing(String text) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return text.length();
    }
}
