package comparand.compose.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where the scripts of the page ask for words: {@code say('key', {place: text})}. */
final class ScriptCalls {

    private static final Path SCRIPTS = Path.of("src/main/resources/comparand/write/html/scripts");
    private static final Pattern COMMENT = Pattern.compile("/\\*[\\s\\S]*?\\*/|(?m)^\\s*//.*$");
    private static final Pattern CALL = Pattern.compile("\\bsay\\(");
    private static final Pattern KEY = Pattern.compile("(?:^|[?:]\\s*)'([^']+)'(?!\\s*\\+)");
    private static final Pattern BEGINNING = Pattern.compile("'([a-z]{2,}[A-Za-z.-]*\\.)'");
    private static final Pattern NAME = Pattern.compile("^\\s*(\\w+)\\s*(?::|$)");

    private ScriptCalls() {}

    /**
     * A call for words.
     *
     * @param keys whole keys in it: one, or both sides of a choice
     * @param names under which it gives texts
     * @param readable whether key and names are written in the call itself
     */
    record Call(String file, List<String> keys, Set<String> names, boolean readable) {}

    static List<Call> all() {
        var calls = new ArrayList<Call>();
        for (var file : files()) {
            var text = text(file);
            Matcher call = CALL.matcher(text);
            while (call.find()) {
                calls.add(call(file.toFile().getName(), pieces(text, call.end())));
            }
        }
        return calls;
    }

    /** Beginnings of keys to which a part is added while the page is used. */
    static Set<String> beginnings() {
        var beginnings = new TreeSet<String>();
        for (var file : files()) {
            BEGINNING.matcher(text(file)).results().forEach(m -> beginnings.add(m.group(1)));
        }
        return beginnings;
    }

    private static Call call(String file, List<String> arguments) {
        var keys = KEY.matcher(arguments.get(0))
                .results()
                .map(m -> m.group(1))
                .filter(k -> !k.endsWith("."))
                .toList();
        var given = arguments.size() < 2 ? "{}" : arguments.get(1);
        var names = new TreeSet<String>();
        if (given.startsWith("{")) {
            for (var piece : pieces(given, 1)) {
                var name = NAME.matcher(piece);
                if (name.find()) {
                    names.add(name.group(1));
                }
            }
        }
        return new Call(file, keys, names, !keys.isEmpty() && given.startsWith("{"));
    }

    /** What stands between an opening bracket and its closing one, cut at the commas that no other bracket holds. */
    private static List<String> pieces(String text, int from) {
        var pieces = new ArrayList<String>();
        int depth = 0;
        boolean quoted = false;
        int start = from;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\'') {
                quoted = !quoted;
            } else if (!quoted && "([{".indexOf(c) >= 0) {
                depth++;
            } else if (!quoted && depth == 0 && ",)]}".indexOf(c) >= 0) {
                pieces.add(text.substring(start, i).strip());
                start = i + 1;
                if (c != ',') {
                    break;
                }
            } else if (!quoted && ")]}".indexOf(c) >= 0) {
                depth--;
            }
        }
        pieces.removeIf(String::isEmpty);
        return pieces;
    }

    private static List<Path> files() {
        try (var files = Files.list(SCRIPTS)) {
            return files.filter(f -> f.toString().endsWith(".js")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return COMMENT.matcher(Files.readString(file)).replaceAll("");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
