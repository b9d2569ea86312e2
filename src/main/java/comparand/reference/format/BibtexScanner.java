package comparand.reference.format;

import comparand.diag.Diagnostic;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Splits a BibTeX file into entries, after "BibTeXing" (Patashnik, 1988): whatever stands outside of an entry is a comment; an
 * entry stands in braces or parentheses; a value is made of pieces in braces, in quotes, of digits, or names of strings, joined
 * by {@code #}. An entry that cannot be read is named and left, and reading goes on with the next {@code @}.
 */
final class BibtexScanner {

    private static final Pattern NEXT = Pattern.compile("(?m)^[ \\t]*@[ \\t]*[A-Za-z]+\\s*[({]");
    private static final Pattern WORD = Pattern.compile("[^\\s\"#%'(),={}@\\\\]+");

    private final String text;
    private final Lines lines;
    private final List<Diagnostic> findings;
    private final Map<String, String> strings = new HashMap<>();
    private int at;

    BibtexScanner(String file, String text, List<Diagnostic> findings) {
        this.text = text;
        this.lines = Lines.at(file, text);
        this.findings = findings;
    }

    /** What ends the reading of one entry. */
    private static final class Broken extends Exception {
        private static final long serialVersionUID = 1;
        private final int at;

        Broken(int at, String problem) {
            super(problem);
            this.at = at;
        }
    }

    List<BibtexEntry> entries() {
        var entries = new ArrayList<BibtexEntry>();
        for (int sign = text.indexOf('@'); sign >= 0; sign = text.indexOf('@', at)) {
            at = sign + 1;
            blanks();
            var type = word();
            blanks();
            boolean opens = !type.isEmpty() && at < text.length() && (peek() == '{' || peek() == '(');
            if (opens) {
                entry(sign, type, entries);
            }
        }
        return entries;
    }

    private void entry(int sign, String type, List<BibtexEntry> entries) {
        char close = text.charAt(at++) == '{' ? '}' : ')';
        try {
            switch (type.toLowerCase(Locale.ROOT)) {
                case "comment" -> skip(close);
                case "preamble" -> {
                    value();
                    end(close);
                }
                case "string" -> fields(close).forEach(f -> strings.put(f.name(), f.tex()));
                default -> {
                    int from = at;
                    while (at < text.length() && ",\n\r}".indexOf(peek()) < 0 && peek() != close) {
                        at++;
                    }
                    var key = text.substring(from, at).strip();
                    if (key.indexOf('=') >= 0 || key.chars().anyMatch(Character::isWhitespace)) {
                        throw new Broken(from, "a key and a comma are missing before its first field");
                    }
                    comma(close);
                    var fields = fields(close);
                    entries.add(new BibtexEntry(type, key, lines.span(sign, type.length() + 1), fields));
                }
            }
        } catch (Broken broken) {
            findings.add(
                    Diagnostic.hold(
                            "entry-unreadable",
                            lines.span(Math.min(broken.at, text.length()), 1),
                            "the entry `@%s` of line %d cannot be read: %s"
                                    .formatted(type, lines.span(sign, 1).line(), broken.getMessage()),
                            "it was left out; reading went on with the next entry",
                            "mend it: every opened brace and quote is closed, fields are `name = {text}`, with commas between"));
            var next = NEXT.matcher(text);
            at = next.find(Math.min(sign + 1, text.length())) ? next.start() : text.length();
        }
    }

    private List<BibtexEntry.Field> fields(char close) throws Broken {
        var fields = new ArrayList<BibtexEntry.Field>();
        for (blanks(); !ends(close); comma(close)) {
            int from = at;
            var name = word().toLowerCase(Locale.ROOT);
            if (name.isEmpty()) {
                throw new Broken(
                        at,
                        at < text.length() ? "`" + peek() + "` stands where a field should begin" : unclosed(close));
            }
            blanks();
            if (at >= text.length() || peek() != '=') {
                throw new Broken(at, "`=` is missing behind `" + name + "`");
            }
            at++;
            var value = value();
            if (fields.stream().anyMatch(f -> f.name().equals(name))) {
                findings.add(Diagnostic.note(
                        "field-twice",
                        lines.span(from, name.length()),
                        "`%s` stands twice in this entry".formatted(name),
                        "only one of them can be meant; the first was taken",
                        "keep the one that is right"));
            } else {
                fields.add(new BibtexEntry.Field(name, value[0], value[1], lines.span(from, name.length())));
            }
        }
        return fields;
    }

    /** The value as text, and with the names of months as they are called. */
    private String[] value() throws Broken {
        var tex = new StringBuilder();
        var months = new StringBuilder();
        do {
            blanks();
            if (at >= text.length()) {
                throw new Broken(at, "the file ends where a value should stand");
            }
            char first = peek();
            if (first == '{' || first == '"') {
                var piece = piece(first == '{' ? '}' : '"');
                tex.append(piece);
                months.append(piece);
            } else {
                var name = word();
                if (name.isEmpty()) {
                    throw new Broken(at, "`" + first + "` stands where a value should begin");
                }
                tex.append(name.matches("\\d+") ? name : string(name));
                months.append(name);
            }
            blanks();
        } while (at < text.length() && peek() == '#' && at++ >= 0);
        return new String[] {tex.toString(), months.toString()};
    }

    private String string(String name) {
        var known = strings.get(name.toLowerCase(Locale.ROOT));
        if (known != null) {
            return known;
        }
        if (name.length() != 3 || Dates.month(name).isEmpty()) {
            findings.add(Diagnostic.note(
                    "string-undefined",
                    lines.span(at - name.length(), name.length()),
                    "`%s` is neither in braces nor defined by `@string`".formatted(name),
                    "what it stands for is not known; the name itself was taken",
                    "put the text in braces, or define it before its use"));
        }
        return name;
    }

    /** What stands between braces or quotes, braces within it balanced. */
    private String piece(char close) throws Broken {
        int from = ++at;
        int depth = 0;
        for (; at < text.length(); at++) {
            char c = peek();
            if (depth == 0 && c == close) {
                return text.substring(from, at++);
            }
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            if (depth < 0) {
                break;
            }
        }
        throw new Broken(from - 1, close == '"' ? "a quote is opened and not closed" : unclosed('}'));
    }

    private void skip(char close) throws Broken {
        int from = at;
        int depth = 0;
        for (; at < text.length(); at++) {
            char c = peek();
            if (depth == 0 && c == close) {
                at++;
                return;
            }
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
        }
        throw new Broken(from, unclosed(close));
    }

    private static String unclosed(char close) {
        return "`" + (close == '}' ? '{' : '(') + "` is opened and not closed";
    }

    private boolean ends(char close) throws Broken {
        if (at >= text.length()) {
            throw new Broken(at, unclosed(close));
        }
        boolean ends = peek() == close;
        at += ends ? 1 : 0;
        return ends;
    }

    private void end(char close) throws Broken {
        blanks();
        if (!ends(close)) {
            throw new Broken(at, "`" + close + "` is missing");
        }
    }

    /** A comma, or nothing before the end. */
    private void comma(char close) throws Broken {
        blanks();
        if (at < text.length() && peek() == ',') {
            at++;
        } else if (at >= text.length() || peek() != close) {
            throw new Broken(at, at >= text.length() ? unclosed(close) : "a comma is missing before `" + peek() + "`");
        }
        blanks();
    }

    private String word() {
        var word = WORD.matcher(text).region(at, text.length());
        if (!word.lookingAt()) {
            return "";
        }
        at = word.end();
        return word.group();
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(peek())) {
            at++;
        }
    }

    private char peek() {
        return text.charAt(at);
    }
}
