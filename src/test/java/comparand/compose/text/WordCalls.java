package comparand.compose.text;

import comparand.model.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where the sources of the composer and of the page ask for words: the keys as they are written there, and the names it gives texts under. */
final class WordCalls {

    private static final Path COMPOSER = Path.of("src/main/java/comparand/compose");
    private static final Path PAGE = Path.of("src/main/java/comparand/write/html");
    private static final Pattern COMMENT = Pattern.compile("/\\*[\\s\\S]*?\\*/|(?m)^\\s*//.*$");
    private static final Pattern CALL = Pattern.compile("\\b(say|word|text|name|number|item)\\(");
    /** The writer of the page names many things that are no words. */
    private static final Pattern CALL_OF_PAGE = Pattern.compile("\\bwords\\.(say)\\(");

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    /** A whole key: alone, or one side of a choice. */
    private static final Pattern KEY = Pattern.compile("(?:^|[?:]\\s*)\"([^\"]+)\"(?!\\s*\\+)");

    private static final Pattern PREFIX = Pattern.compile("\"([a-z][A-Za-z.-]*\\.)\"\\s*\\+");

    private WordCalls() {}

    /**
     * A call for words.
     *
     * @param key the source of its first argument
     * @param names under which it gives texts
     * @param readable whether these can be read off the source
     */
    record Call(String file, String key, List<String> names, boolean readable) {

        /** Whole keys written in the call. */
        List<String> keys() {
            return find(KEY, key);
        }

        /** Beginnings of keys written in the call. */
        List<String> prefixes() {
            return find(PREFIX, key);
        }
    }

    static List<Call> all() {
        return sources().flatMap(WordCalls::calls).toList();
    }

    /** Beginnings to which a part is added while the program runs. */
    static Set<String> prefixes() {
        var prefixes = new TreeSet<String>();
        sources().forEach(s -> prefixes.addAll(find(PREFIX, s.text())));
        return prefixes;
    }

    /** The rows of the key: one a standing, those listed in the source, and the two abbreviations. */
    static List<String> keyRows() {
        var rows = new ArrayList<String>(List.of("NA", "NR"));
        for (var standing : Standing.values()) {
            var name = standing.name();
            rows.add(name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT).replace('_', '-'));
        }
        for (var list : inFile("Key.java", "(?:SIGNS|IN_WORKBOOK) =\\s+List\\.of\\(([^)]*)\\)")) {
            literals(list).forEach(s -> rows.addAll(List.of(s, s + ".name")));
        }
        return rows;
    }

    static List<String> literals(String source) {
        return find(LITERAL, source);
    }

    /** The first group of every match in a file. */
    static List<String> inFile(String file, String pattern) {
        return sources()
                .filter(s -> s.file().equals(file))
                .flatMap(s -> find(Pattern.compile(pattern), s.text()).stream())
                .toList();
    }

    private record Source(String file, String text, Pattern call) {}

    private static Stream<Source> sources() {
        return Stream.concat(sources(COMPOSER, CALL), sources(PAGE, CALL_OF_PAGE));
    }

    private static Stream<Source> sources(Path folder, Pattern call) {
        try (var files = Files.walk(folder)) {
            return files
                    .filter(f -> f.toString().endsWith(".java"))
                    .sorted()
                    .map(f -> source(f, call))
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Source source(Path file, Pattern call) {
        try {
            return new Source(
                    file.toFile().getName(),
                    COMMENT.matcher(Files.readString(file)).replaceAll(""),
                    call);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Call> calls(Source source) {
        var calls = new ArrayList<Call>();
        Matcher call = source.call().matcher(source.text());
        while (call.find()) {
            var arguments = arguments(source.text(), call.end());
            if (arguments.isEmpty() || arguments.get(0).matches("\\w+ \\w+")) {
                continue; // a declaration
            }
            // all but one of these put nothing into their words: what follows is a width or a cell
            var given = call.group(1).equals("say") ? arguments.subList(1, arguments.size()) : List.<String>of();
            if (given.size() == 1 && given.get(0).matches("\\w+")) {
                given = arrayNamed(given.get(0), source.text());
            }
            calls.add(new Call(source.file(), key(arguments.get(0), source.text()), names(given), readable(given)));
        }
        return calls.stream();
    }

    /** The argument itself, or what is put into the variable that it names. */
    private static String key(String argument, String text) {
        var assigned =
                Pattern.compile("var " + Pattern.quote(argument) + " =([^;]*);").matcher(text);
        return argument.matches("\\w+") && assigned.find() ? assigned.group(1) : argument;
    }

    private static List<String> arrayNamed(String name, String text) {
        var array = Pattern.compile("var " + name + " = new String\\[] \\{").matcher(text);
        return array.find() ? arguments(text, array.end()) : List.of(name);
    }

    private static List<String> names(List<String> given) {
        var names = new ArrayList<String>();
        for (int i = 0; i < given.size(); i += 2) {
            names.addAll(literals(given.get(i)));
        }
        return names;
    }

    private static boolean readable(List<String> given) {
        for (int i = 0; i < given.size(); i += 2) {
            if (!given.get(i).matches("\"\\w+\"")) {
                return false;
            }
        }
        return true;
    }

    /** The arguments behind an opening bracket, each as it is written. */
    private static List<String> arguments(String text, int from) {
        var arguments = new ArrayList<String>();
        int depth = 0;
        boolean quoted = false;
        int start = from;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' && text.charAt(i - 1) != '\\') {
                quoted = !quoted;
            } else if (!quoted && (c == '(' || c == '{' || c == '[')) {
                depth++;
            } else if (!quoted && depth == 0 && (c == ',' || c == ')' || c == '}')) {
                arguments.add(text.substring(start, i).strip());
                start = i + 1;
                if (c != ',') {
                    break;
                }
            } else if (!quoted && (c == ')' || c == '}' || c == ']')) {
                depth--;
            }
        }
        arguments.removeIf(String::isEmpty);
        return arguments;
    }

    private static List<String> find(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(m -> m.group(1)).toList();
    }
}
