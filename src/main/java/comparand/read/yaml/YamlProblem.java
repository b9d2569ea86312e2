package comparand.read.yaml;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.util.List;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** What the YAML library says about a file, in words for the author of the file. */
final class YamlProblem {

    private static final String WHY = "a file that cannot be read whole is not read at all";

    /** The library's words, and ours: what is wrong, and what to do. */
    private record Saying(String theirs, String code, String message, String fix) {}

    private static final String CODE = "yaml-unreadable";
    private static final List<Saying> SAYINGS = List.of(
            new Saying("TAB", "yaml-tab", "a tab stands where YAML wants blanks", "replace the tab by two blanks"),
            new Saying("\\t", "yaml-tab", "a tab stands where YAML wants blanks", "replace the tab by two blanks"),
            new Saying(
                    "mapping values are not allowed",
                    CODE,
                    "a colon stands where no key can be",
                    "put quotes around a text that contains a colon, or check the indentation"),
            new Saying(
                    "could not find expected ':'",
                    CODE,
                    "a key needs a colon behind it",
                    "write `key: value`; the file may have been cut off here"),
            new Saying(
                    "expected <block end>",
                    CODE,
                    "this line does not fit the indentation of those before it",
                    "check brackets, quotes and indentation in this line and the one before"),
            new Saying(
                    "expected ',' or",
                    CODE,
                    "a comma or a closing bracket is missing",
                    "check brackets, quotes and indentation in this line and the one before"),
            new Saying(
                    "found unexpected end of stream",
                    CODE,
                    "the file ends within a quote",
                    "close the quote; the file may have been cut off here"),
            new Saying(
                    "incompatible YAML",
                    CODE,
                    "this version of YAML is not read here",
                    "take the line that begins with %YAML out"),
            new Saying(
                    "cannot start any token", CODE, "a text cannot begin with this sign", "put quotes around the text"),
            new Saying(
                    "unknown escape character",
                    CODE,
                    "a backslash in double quotes stands for a sign that does not exist",
                    "use single quotes, or write two backslashes"));

    private YamlProblem() {}

    static Diagnostic of(MarkedYamlEngineException e, String file) {
        var span = e.getProblemMark()
                .or(e::getContextMark)
                .map(m -> new Span(file, m.getLine() + 1, m.getColumn() + 1, 1))
                .orElse(Span.startOf(file));
        return of(e.getProblem(), span);
    }

    /** A sign that YAML does not allow, such as a control character. */
    static Diagnostic of(ReaderException e, String text, String file) {
        int at = 0;
        while (at < text.length() && StreamReader.isPrintable(text.codePointAt(at))) {
            at += Character.charCount(text.codePointAt(at));
        }
        return Diagnostic.stop(
                CODE,
                TextPlace.of(file, text, at),
                "the sign U+%04X cannot stand in a text file".formatted(e.getCodePoint()),
                WHY,
                "delete it; it is most often left over from copying");
    }

    static Diagnostic of(YamlEngineException e, String file) {
        return of(String.valueOf(e.getMessage()), Span.startOf(file));
    }

    private static Diagnostic of(String problem, Span span) {
        return SAYINGS.stream()
                .filter(s -> problem.contains(s.theirs))
                .findFirst()
                .map(s -> Diagnostic.stop(s.code, span, s.message, WHY, s.fix))
                .orElseGet(() -> Diagnostic.stop(
                        CODE,
                        span,
                        "this cannot be read as YAML: " + sentence(problem),
                        WHY,
                        "check this line and the one before for an open bracket or quote"));
    }

    private static String sentence(String message) {
        return message.lines().findFirst().orElse("").strip().replaceAll("\\.+$", "");
    }
}
