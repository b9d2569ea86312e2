package comparand.app;

import comparand.manual.CommandText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The commands as data for the manual, taken from where the help takes them. */
final class CommandTexts {

    private CommandTexts() {}

    /** Every command below one, those that only lead to others before these. */
    static List<CommandText> below(CommandSpec root) {
        var all = new ArrayList<CommandText>();
        root.subcommands().values().stream().distinct().forEach(c -> add(c, "", all));
        return all;
    }

    private static void add(CommandLine command, String above, List<CommandText> all) {
        var spec = command.getCommandSpec();
        var name = above.isEmpty() ? spec.name() : above + " " + spec.name();
        all.add(of(command, name));
        spec.subcommands().values().stream().distinct().forEach(c -> add(c, name, all));
    }

    private static CommandText of(CommandLine command, String name) {
        var spec = command.getCommandSpec();
        var help = new CommandLine.Help(spec, CommandLine.Help.defaultColorScheme(Ansi.OFF));
        return new CommandText(
                name,
                help.synopsis(0).strip().replaceAll("\\s+", " "),
                paragraphs(spec.usageMessage().description()),
                spec.positionalParameters().stream()
                        .map(p -> new CommandText.Choice(p.paramLabel(), meaning(p)))
                        .toList(),
                spec.options().stream()
                        .filter(o -> !o.hidden())
                        .map(o -> new CommandText.Choice(names(o), meaning(o)))
                        .toList());
    }

    private static String names(OptionSpec option) {
        var names = String.join(", ", option.names());
        return option.arity().max() == 0 ? names : names + " " + option.paramLabel();
    }

    private static String meaning(ArgSpec choice) {
        return String.join(" ", choice.description())
                .replace("%n", " ")
                .replace("${DEFAULT-VALUE}", choice.defaultValue() == null ? "none" : choice.defaultValue());
    }

    /** Lines up to an empty one are one paragraph. */
    private static List<String> paragraphs(String... lines) {
        return Arrays.asList(String.join("\n", lines).split("\n\\s*\n", -1)).stream()
                // lines in columns stay lines
                .flatMap(p -> p.matches("(?s).*\\S {2,}\\S.*") ? p.lines() : Stream.of(p.replaceAll("\\s*\n\\s*", " ")))
                .map(p -> p.strip().replaceAll(" {2,}", ": "))
                .filter(p -> !p.isEmpty())
                .toList();
    }
}
