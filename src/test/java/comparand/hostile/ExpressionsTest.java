package comparand.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Every regular expression of the tool, run over texts made to keep it busy. What it may cost is counted in signs looked at: so
 * the test means the same on every machine.
 */
class ExpressionsTest {

    private static final Path CLASSES = Path.of("target/classes");
    private static final Path SOURCES = Path.of("src/main/java");

    private static final int LENGTH = 200;
    /** Longer than any text that a record may hold, and far deeper than the stack where each sign takes a place on it. */
    private static final int LONG = 20_000;

    /** In proportion to the length of the text, whatever it is; and for what looks ahead from each place, its square. */
    private static final long MOST_STEPS = 6L * LENGTH * LENGTH;

    /** Calls that take an expression as their first text. */
    private static final Pattern CALL =
            Pattern.compile("(?:\\.matches|replaceAll|replaceFirst|\\.split)\\(\\s*\"((?:[^\"\\\\]|\\\\.)*)\"");

    private static final Pattern UNICODE = Pattern.compile("(?<!\\\\)((?:\\\\\\\\)*)\\\\u+(\\p{XDigit}{4})");

    private static final List<String> ALPHABET = List.of(
            " ",
            "a",
            "A",
            "1",
            "0",
            ".",
            ",",
            "-",
            "\u2013",
            "+",
            "±",
            ":",
            ";",
            "/",
            "(",
            ")",
            "[",
            "]",
            "{",
            "}",
            "<",
            ">",
            "\"",
            "'",
            "`",
            "\\",
            "\n",
            "\t",
            "\u00a0",
            "é",
            "_",
            "=",
            "%",
            "@",
            "1 ",
            "a ",
            "a-",
            "1.",
            "1,",
            ", ",
            "1-",
            ". ",
            " to ",
            "a1",
            "(a",
            "[a",
            "a:",
            "{a",
            "\\a",
            "10.1234/",
            "1 a",
            "Aa",
            "A.",
            "ab ",
            "i",
            "x ");

    private static Map<String, Pattern> all() throws IOException {
        var found = new TreeMap<String, Pattern>();
        try (var files = Files.walk(CLASSES.resolve("comparand"))) {
            for (var file :
                    files.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
                var name = CLASSES.relativize(file)
                        .toString()
                        .replace(".class", "")
                        .replace('/', '.');
                declared(name, found);
            }
        }
        try (var files = Files.walk(SOURCES)) {
            for (var file :
                    files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                CALL.matcher(Files.readString(file)).results().forEach(m -> {
                    var expression = written(m.group(1));
                    found.put(file.getFileName() + " " + expression, compiled(expression));
                });
            }
        }
        // one of each, and none that cannot repeat
        var seen = new HashSet<String>();
        found.values().removeIf(p -> !p.pattern().matches("(?s).*[*+{].*") || !seen.add(p.pattern()));
        return found;
    }

    /** What the compiler makes of a text in the sources. */
    private static String written(String source) {
        return UNICODE.matcher(source)
                .replaceAll(m -> Matcher.quoteReplacement(m.group(1) + (char) Integer.parseInt(m.group(2), 16)))
                .translateEscapes();
    }

    private static Pattern compiled(String expression) {
        try {
            return Pattern.compile(expression);
        } catch (PatternSyntaxException half) {
            // a part of an expression that is put together: whole, it is met elsewhere
            return Pattern.compile(Pattern.quote(expression));
        }
    }

    private static void declared(String name, Map<String, Pattern> found) {
        try {
            for (var field : Class.forName(name).getDeclaredFields()) {
                if (Modifier.isStatic(field.getModifiers()) && field.getType() == Pattern.class) {
                    field.setAccessible(true);
                    found.put(name + "." + field.getName(), (Pattern) field.get(null));
                }
            }
        } catch (ReflectiveOperationException | LinkageError e) {
            throw new AssertionError(name, e);
        }
    }

    /** Long runs of what it may take, behind what it begins with, and at the end what it cannot take. */
    private static Set<String> hostile(String expression, int length) {
        var units = new LinkedHashSet<>(ALPHABET);
        var beginnings = new LinkedHashSet<>(List.of("", "a1"));
        Pattern.compile("[\\p{L}\\p{N}]+(?: [\\p{L}\\p{N}]+)*")
                .matcher(expression.replaceAll("\\\\.", " "))
                .results()
                .limit(3)
                .forEach(m -> {
                    units.add(m.group());
                    units.add(m.group() + " ");
                    beginnings.add(m.group());
                });
        var texts = new LinkedHashSet<String>();
        for (var unit : units) {
            var run = unit.repeat(length / unit.length());
            for (var beginning : beginnings) {
                texts.add(beginning + run + "\u0001");
            }
            texts.add(run);
        }
        return texts;
    }

    @Test
    @DisplayName("no expression takes more steps than the square of the length, and none more stack than there is")
    void steps() throws IOException {
        var all = all();
        assertThat(all).hasSizeGreaterThan(120);
        var slow = new ArrayList<String>();
        for (var expression : all.entrySet()) {
            var one = expression.getValue();
            hostile(one.pattern(), LENGTH).stream()
                    .filter(text -> isSlow(one, text, MOST_STEPS))
                    .findFirst()
                    .ifPresent(text -> slow.add(expression.getKey() + " on " + shown(text)));
        }
        assertThat(slow).isEmpty();
    }

    @Test
    @DisplayName("no expression takes a place on the stack for each sign")
    void stack() throws IOException {
        var deep = new ArrayList<String>();
        for (var expression : all().entrySet()) {
            hostile(expression.getValue().pattern(), LONG).stream()
                    .filter(text -> isDeep(expression.getValue(), text))
                    .findFirst()
                    .ifPresent(text -> deep.add(expression.getKey() + " on " + shown(text)));
        }
        assertThat(deep).isEmpty();
    }

    private static String shown(String text) {
        return text.substring(0, 20).replace("\n", "\\n");
    }

    private static boolean isSlow(Pattern expression, String text, long most) {
        try {
            look(expression, new CountedText(text, most));
            return false;
        } catch (CountedText.TooMany e) {
            return true;
        }
    }

    /** On a stack smaller than any thread of the tool has. */
    private static boolean isDeep(Pattern expression, String text) {
        var deep = new boolean[1];
        var thread = new Thread(
                null,
                () -> {
                    try {
                        expression
                                .matcher(new CountedText(text, LONG + LONG / 4))
                                .matches();
                    } catch (CountedText.TooMany e) {
                        // slow, and not deep before it
                    } catch (StackOverflowError e) {
                        deep[0] = true;
                    }
                },
                "small stack",
                1 << 18);
        thread.start();
        try {
            thread.join();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
        return deep[0];
    }

    private static void look(Pattern expression, CharSequence text) {
        var matcher = expression.matcher(text);
        matcher.matches();
        matcher.reset();
        while (matcher.find()) {
            // only the steps count
        }
    }
}
