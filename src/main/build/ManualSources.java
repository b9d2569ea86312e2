import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Takes what the manual says of each rule out of the javadoc of its class, the one place where it is written: what it checks,
 * why it matters, what to write instead; and lists the files of the demo, which a program cannot list once they are packed. Run
 * while resources are made; fails where a rule does not say one of the three.
 *
 * <p>Arguments: the folder of the main sources, that of the demo, and that of the manual among the resources to be made. Written
 * are {@code findings/rules.json}, a list of objects with the keys group, code, checks, why and instead in the order in which
 * rules are listed, code words between backticks; and {@code demo.txt}, a name a line.
 */
final class ManualSources {

    private static final Pattern CODE = Pattern.compile("public String code\\(\\) \\{\\s*return \"([a-z0-9-]+)\";");
    private static final Pattern JAVADOC = Pattern.compile("/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:public )?final class", Pattern.DOTALL);
    private static final Pattern RECORD = Pattern.compile(
            "What it checks: (.*?) Why it matters: (.*?) What to write instead: (.*)", Pattern.DOTALL);
    private static final Pattern ROWS = Pattern.compile("Checks (.*?) It matters because (.*?) What to do: (.*)", Pattern.DOTALL);
    private static final Pattern LISTED = Pattern.compile("// ([a-z ]+)\\n|new ([A-Za-z]+)\\(");

    private ManualSources() {}

    private record Text(String group, String code, String checks, String why, String instead) {}

    public static void main(String[] args) throws IOException {
        var sources = Path.of(args[0]);
        var texts = new ArrayList<Text>();
        texts.addAll(rules(sources.resolve("comparand/check"), "Rules.java", RECORD, "Records: "));
        texts.addAll(rules(sources.resolve("comparand/study/quality"), "QualityRules.java", ROWS, "Rows of raw data"));
        var out = new StringBuilder("[\n");
        for (int i = 0; i < texts.size(); i++) {
            var t = texts.get(i);
            out.append("{\"group\": %s, \"code\": %s, \"checks\": %s, \"why\": %s, \"instead\": %s}%s\n"
                    .formatted(quoted(t.group), quoted(t.code), quoted(t.checks), quoted(t.why), quoted(t.instead),
                            i + 1 < texts.size() ? "," : ""));
        }
        out.append("]\n");
        var manual = Path.of(args[2]);
        write(manual.resolve("findings/rules.json"), out.toString());
        write(manual.resolve("demo.txt"), demo(Path.of(args[1])));
    }

    /** The files of the demo; states of other days are not shown. */
    private static String demo(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .filter(f -> !f.startsWith("dated/"))
                    .sorted()
                    .map(f -> f + "\n")
                    .collect(Collectors.joining());
        }
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        if (!Files.exists(file) || !Files.readString(file).equals(text)) {
            Files.writeString(file, text);
        }
    }

    private static List<Text> rules(Path folder, String list, Pattern form, String group) throws IOException {
        Map<String, String> sources = new HashMap<>();
        try (var files = Files.list(folder)) {
            for (var file : files.toList()) {
                sources.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
            }
        }
        var texts = new ArrayList<Text>();
        var seen = new ArrayList<String>();
        var under = "";
        for (Matcher m = LISTED.matcher(sources.get(list.replace(".java", ""))); m.find(); ) {
            if (m.group(1) != null) {
                under = m.group(1);
                continue;
            }
            var source = sources.get(m.group(2));
            var code = source == null ? null : CODE.matcher(source);
            if (code == null || !code.find() || seen.contains(code.group(1))) {
                continue;
            }
            seen.add(code.group(1));
            texts.add(text(group.endsWith(" ") ? group + under : group, code.group(1), m.group(2), source, form));
        }
        return texts;
    }

    private static Text text(String group, String code, String name, String source, Pattern form) {
        var doc = JAVADOC.matcher(source);
        if (!doc.find()) {
            throw new IllegalStateException(name + " has no javadoc");
        }
        var plain = plain(doc.group(1));
        var said = form.matcher(plain);
        if (!said.matches()) {
            throw new IllegalStateException("the javadoc of " + name + " does not say what it checks, why it matters and what to"
                    + " do, in the words the manual looks for: " + plain);
        }
        return new Text(group, code, end(said.group(1)), end(said.group(2)), end(said.group(3)));
    }

    /** The words of a javadoc comment, code between backticks. */
    private static String plain(String doc) {
        return doc.replaceAll("(?m)^\\s*\\*? ?", " ")
                .replaceAll("\\s+", " ")
                .replaceAll("\\{@(?:code|literal) ((?:[^{}]|\\{[^{}]*})*)}", "`$1`")
                .replaceAll("\\{@link #?([A-Za-z.#]+)[^}]*}", "$1")
                .replaceAll("</?(?:p|em|strong)>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static String end(String text) {
        return text.strip().replaceAll("\\.$", "");
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
