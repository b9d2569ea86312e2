package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.manual.example.Bench;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A page for every command: usage, options, and what it prints on the demo, run when the page is made. */
final class CommandPages {

    static final String FOLDER = "commands/";
    static final String FIRST = FOLDER + "index.html";

    /** What goes on in the same way is cut. */
    private static final int MOST_LINES = 60;

    private static final int LONGEST_LINE = 160;

    private final Bench bench;
    private final Path place;
    private final Map<String, JsonNode> examples = new HashMap<>();

    private CommandPages(Bench bench, Path place) {
        this.bench = bench;
        this.place = place;
        Resources.yaml("commands.yaml")
                .forEach(e -> examples.put(e.path("command").asText(), e));
    }

    /**
     * All commands.
     *
     * @param place a folder that holds the demo as {@code evidence}
     */
    static List<Page> of(List<CommandText> commands, Bench bench, Path place) {
        var these = new CommandPages(bench, place);
        var pages = new ArrayList<Page>();
        pages.add(list(commands));
        for (var command : commands) {
            pages.add(these.page(command));
        }
        return pages;
    }

    private static String path(CommandText command) {
        return FOLDER + command.name().replace(' ', '-') + ".html";
    }

    private static Page list(List<CommandText> commands) {
        var out = new Html();
        out.p(
                "Every command explains itself: `comparand COMMAND --help`. What a command gives goes to the standard output,"
                        + " findings and complaints go to the error output.");
        out.table(
                "Commands",
                List.of("Command", "What it does"),
                commands.stream()
                        .map(c -> Html.cells(
                                "<a href=\"%s\"><code>comparand %s</code></a>"
                                        .formatted(path(c).substring(FOLDER.length()), Html.text(c.name())),
                                Html.said(
                                        c.description().isEmpty()
                                                ? ""
                                                : c.description().get(0))))
                        .toList());
        var exits = Resources.yaml("exits.yaml");
        out.h2("Exit codes");
        var rows = new ArrayList<List<String>>();
        exits.forEach(e -> rows.add(
                Html.cells(e.path("code").asText(), Html.said(e.path("means").asText()))));
        out.table("Exit codes", List.of("Code", "Means"), rows);
        return new Page(
                FIRST,
                FIRST,
                "Commands",
                "What can be typed, and what comes of it.",
                out.toString(),
                List.of(new Page.Term("exit codes", "exit-codes")));
    }

    private Page page(CommandText command) {
        var out = new Html();
        out.pre(command.synopsis());
        command.description().stream().filter(d -> !d.isBlank()).forEach(out::p);
        choices("What is given", command.parameters(), out);
        choices("Options", command.options(), out);
        examples(command, out);
        return new Page(
                path(command),
                FIRST,
                "`comparand " + command.name() + "`",
                "",
                out.toString(),
                List.of(new Page.Term(command.name() + ", a command", "")));
    }

    private static void choices(String heading, List<CommandText.Choice> choices, Html out) {
        if (!choices.isEmpty()) {
            out.h2(heading);
            out.raw("<dl class=\"keys\">");
            choices.forEach(c -> out.raw("<div id=\"%s\"><dt>%s</dt><dd><p>%s</p></dd></div>"
                    .formatted(
                            "option-" + Html.anchor(c.names()),
                            Html.code(c.names()),
                            Html.said(Html.sentence(c.meaning())))));
            out.raw("</dl>");
        }
    }

    private void examples(CommandText command, Html out) {
        var entry = examples.get(command.name());
        if (entry == null) {
            throw new IllegalStateException("commands.yaml shows nothing of " + command.name());
        }
        out.h2("On the demo");
        if (entry.has("no-example")) {
            out.p(Html.sentence(entry.path("no-example").asText()));
        }
        entry.path("before").forEach(b -> run(b.asText(), 0, "", command));
        for (var example : entry.path("runs")) {
            var line = example.path("run").asText();
            if (example.has("says")) {
                out.p(Html.sentence(example.path("says").asText()));
            }
            var printed = run(
                    line, example.path("exit").asInt(0), example.path("typed").asText(""), command);
            out.pre("$ comparand " + line + "\n" + cut(printed), "said");
        }
    }

    private String run(String line, int exit, String typed, CommandText command) {
        var run = bench.run(place, line, typed);
        if (run.code() != exit) {
            throw new IllegalStateException("the example of %s, `comparand %s`, ended with %d: %s%s"
                    .formatted(command.name(), line, run.code(), run.out(), run.err()));
        }
        return run.err().isBlank() ? run.out() : run.out() + "\n" + run.err();
    }

    private static String cut(String text) {
        var lines = text.strip().lines().map(CommandPages::shortened).toList();
        return lines.size() <= MOST_LINES
                ? String.join("\n", lines)
                : String.join("\n", lines.subList(0, MOST_LINES))
                        + "\n… and %d more lines".formatted(lines.size() - MOST_LINES);
    }

    private static String shortened(String line) {
        return line.length() <= LONGEST_LINE ? line : line.substring(0, LONGEST_LINE) + "…";
    }
}
