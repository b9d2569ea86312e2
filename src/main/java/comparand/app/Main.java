package comparand.app;

import comparand.diag.Suggest;
import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line. */
@Command(
        name = "comparand",
        description = {
            "Sets the results of a local device evaluation beside published values, says for each pair whether like is set"
                    + " beside like, and writes the tables that a committee, a talk and a paper need.",
            ""
        },
        footer = {
            "",
            "Start here:",
            "  comparand start my-library            a small library that works, to fill with your own",
            "  comparand check my-library            what is wrong or missing in it",
            "  comparand build my-library/dossiers/example.yaml",
            "  comparand explain unit-missing         what a finding means, with an example",
            "",
            "Exit codes: 0 written, 2 stopped by findings and nothing written, 64 wrong usage, 70 our own fault."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            CheckCommand.class,
            BuildCommand.class,
            ShowCommand.class,
            TraceCommand.class,
            PlanCommand.class,
            RequestsCommand.class,
            ChangesCommand.class,
            CatalogueCommand.class,
            StartCommand.class,
            IntakeCommand.class,
            AddCommand.class,
            SecondCommand.class,
            ReferencesCommand.class,
            ExplainCommand.class,
            ManualCommand.class
        })
final class Main implements Runnable {

    private final BufferedReader input;
    private final Console console;
    private final LocalDate today;
    private boolean written;

    @Spec
    private CommandSpec spec;

    private Main(BufferedReader input, Console console, LocalDate today) {
        this.input = input;
        this.console = console;
        this.today = today;
    }

    public static void main(String[] args) {
        Offline.begin();
        var out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(args, System.in, out, err, today(System.getenv()));
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs one command; the streams and the day are given, so that tests can run the whole tool in memory. */
    static int run(String[] args, PrintStream out, PrintStream err, LocalDate today) {
        return run(args, InputStream.nullInputStream(), out, err, today);
    }

    static int run(String[] args, InputStream in, PrintStream out, PrintStream err, LocalDate today) {
        return run(args, in, out, err, today, Path.of(""));
    }

    /** The same from a folder that relative paths are taken from. */
    static int run(String[] args, InputStream in, PrintStream out, PrintStream err, LocalDate today, Path from) {
        // numbers are written alike wherever the tool runs
        Locale.setDefault(Locale.ROOT);
        var console = new Console(out, err);
        var main = new Main(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)), console, today);
        var commands = new CommandLine(main);
        commands.registerConverter(Path.class, from::resolve);
        commands.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        commands.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        commands.setExecutionStrategy(new Leftovers(console));
        commands.setExitCodeExceptionMapper(e -> Exit.OUR_FAULT);
        commands.setParameterExceptionHandler((e, given) -> {
            console.complain(e.getMessage() + meant(e));
            console.complain("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
            return Exit.USAGE;
        });
        commands.setExecutionExceptionHandler((e, command, parsed) -> main.ourFault(e));
        try {
            return commands.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            return main.ourFault(e);
        }
    }

    /** The command or option nearest to a mistyped one. */
    private static String meant(ParameterException e) {
        if (!(e instanceof UnmatchedArgumentException unmatched)
                || unmatched.getUnmatched().isEmpty()) {
            return "";
        }
        var spec = e.getCommandLine().getCommandSpec();
        var known = new ArrayList<>(spec.subcommands().keySet());
        known.addAll(spec.optionsMap().keySet());
        return Suggest.nearest(unmatched.getUnmatched().get(0).replaceFirst("=.*", ""), known)
                .map(k -> System.lineSeparator() + "Did you mean: " + k)
                .orElse("");
    }

    private int ourFault(Throwable e) {
        console.complain("This is a fault of the tool, not of your files: "
                + e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage()));
        console.complain((written ? "The outputs were written before it." : "Nothing was written.")
                + " Please report it with the library and the command that led to it.");
        if (System.getProperty("comparand.debug") != null) {
            for (var frame : e.getStackTrace()) {
                console.complain("  " + frame);
            }
        }
        return Exit.OUR_FAULT;
    }

    /** From here on a fault must not say that nothing was written. */
    void hasWritten() {
        written = true;
    }

    /** The day of SOURCE_DATE_EPOCH, an open convention for builds that must not depend on the clock, or today. */
    static LocalDate today(Map<String, String> environment) {
        var epoch = environment.get("SOURCE_DATE_EPOCH");
        return epoch != null && epoch.matches("\\d{1,12}")
                ? LocalDate.ofInstant(Instant.ofEpochSecond(Long.parseLong(epoch)), ZoneOffset.UTC)
                : LocalDate.now(ZoneOffset.UTC);
    }

    /** All commands. */
    CommandSpec commands() {
        return spec;
    }

    /** What is typed at the terminal. */
    BufferedReader input() {
        return input;
    }

    Console console() {
        return console;
    }

    LocalDate today() {
        return today;
    }

    /** Where outputs go unless {@code --out} says otherwise. */
    static Path reports() {
        return Path.of("target", "reports");
    }

    @Override
    public void run() {
        console.say(spec.commandLine().getUsageMessage());
    }
}
