package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** What all commands have in common: help, wrong usage, exit codes. */
class MainTest {

    @TempDir
    Path folder;

    @Test
    void withoutArgumentsTheHelpSaysWhatTheToolIsForAndWhereToStart() {
        var run = CommandLineUse.run();

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("local device evaluation", "published values")
                .contains("comparand start my-library", "comparand check my-library", "comparand build my-library")
                .contains("0 written", "2 stopped", "64 wrong", "70 our own fault");
        assertThat(CommandLineUse.run("--help").out().strip())
                .isEqualTo(run.out().strip());
    }

    @Test
    void theHelpListsEveryCommandWithOneSentenceAtLeast() {
        var help = CommandLineUse.run("--help").out();

        assertThat(commands()).hasSizeGreaterThanOrEqualTo(5);
        for (var command : commands()) {
            var description = command.usageMessage().description();
            assertThat(description).as(command.name()).isNotEmpty();
            assertThat(help.replaceAll("\\s+", " ")).contains(" " + command.name() + " " + description[0]);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "check     | everything that is wrong     | LIBRARY | --findings",
                "build     | the outputs of one dossier   | DOSSIER | --out --findings",
                "trace     | from print or raw data       | DOSSIER ID |",
                "plan      | answer that is open          | DOSSIER |",
                "catalogue | Lists the metrics            | METRIC  | --library",
                "start     | Writes a new library         | DIR     |"
            })
    void theHelpOfACommandTeachesIt(String command, String says, String parameters, @Nullable String options) {
        var run = CommandLineUse.run(command, "--help");

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("Usage: comparand " + command).contains(says, "--help", "--version");
        assertThat(run.out()).contains(parameters.split(" "));
        if (options != null) {
            assertThat(run.out()).contains(options.split(" "));
        }
    }

    @Test
    void everyOptionAndParameterIsInTheHelpWithWords() {
        for (var command : commands()) {
            var help = CommandLineUse.run(command.name(), "--help").out().replaceAll("\\s+", " ");
            for (var option : command.options()) {
                assertThat(option.description()).as(option.longestName()).isNotEmpty();
                assertThat(help).contains(option.longestName(), option.description()[0]);
            }
            for (var parameter : command.positionalParameters()) {
                assertThat(parameter.description()).as(parameter.paramLabel()).isNotEmpty();
                assertThat(help).contains(parameter.paramLabel(), parameter.description()[0]);
            }
        }
    }

    @ParameterizedTest(name = "{0} --version")
    @ValueSource(strings = {"", "check", "build", "trace", "plan", "catalogue", "start"})
    void theVersionNamesTheToolAndItsNumber(String command) {
        var run = command.isEmpty() ? CommandLineUse.run("--version") : CommandLineUse.run(command, "--version");

        assertThat(run.code()).isZero();
        assertThat(run.out().strip()).matches("Comparand \\d+\\.\\d+\\.\\d+.*").isEqualTo(Version.tool());
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"bild, build", "chekc, check", "catalog, catalogue", "tarce, trace", "paln, plan", "strat, start"})
    void aMistypedCommandIsWrongUsageAndTheNearestIsNamed(String typed, String meant) {
        var run = CommandLineUse.run(typed, "somewhere");

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(typed, "comparand --help").containsPattern("\\b" + meant + "\\b");
    }

    @ParameterizedTest(name = "{0} {1} for {2}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "build, --otu=x, --out",
                "build, --finding=json, --findings",
                "check, --fnidings=json, --findings",
                "catalogue, --libary=x, --library"
            })
    void aMistypedOptionIsWrongUsageAndTheNearestIsNamed(String command, String typed, String meant) {
        var run = CommandLineUse.run(command, "somewhere", typed);

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains(typed.split("=", 2)[0], "comparand " + command + " --help")
                .containsPattern(meant + "\\b");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"check, LIBRARY", "build, DOSSIER", "trace, DOSSIER", "plan, DOSSIER", "start, DIR"})
    void aMissingArgumentIsWrongUsageAndNamed(String command, String parameter) {
        var run = CommandLineUse.run(command);

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(parameter, "comparand " + command + " --help");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"check", "build"})
    void anUnknownFormOfFindingsIsWrongUsageAndTheKnownOnesAreNamed(String command) {
        var run = CommandLineUse.run(command, "somewhere", "--findings", "xml");

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.err()).contains("xml", "text", "json");
    }

    @Test
    void anArgumentTooManyIsWrongUsage() {
        var run = CommandLineUse.run("check", "one", "two");

        assertThat(run.code()).isEqualTo(64);
        assertThat(run.err()).contains("two");
    }

    @Test
    void aFaultOfOurOwnIsAdmittedWithoutAStackTrace() {
        var err = new ByteArrayOutputStream();

        int code = runWithBrokenOutput(MainTest::aFaultOfOurs, err, "catalogue");

        assertThat(code).isEqualTo(70);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("a fault of the tool, not of your files", "the stream is broken", "report it")
                .doesNotContain("\tat ", "\n  ");
    }

    @Test
    void aFaultOfTheMachineIsAdmittedWithoutAStackTrace() {
        var err = new ByteArrayOutputStream();

        int code = runWithBrokenOutput(MainTest::aFaultOfTheMachine, err, "catalogue");

        assertThat(code).isEqualTo(70);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("a fault of the tool, not of your files")
                .doesNotContain("\tat ");
    }

    @Test
    void aFaultAfterTheOutputsAreWrittenDoesNotDenyThem() {
        var err = new ByteArrayOutputStream();

        int code = runWithBrokenOutput(
                MainTest::aFaultOfOurs,
                err,
                "build",
                "templates/blank/dossiers/example.yaml",
                "--out",
                folder.toString());

        assertThat(code).isEqualTo(70);
        assertThat(folder.resolve("example/results.json")).exists();
        assertThat(err.toString(StandardCharsets.UTF_8)).doesNotContain("Nothing was written");
    }

    @Test
    void whoLooksForAFaultOfOursMaySeeWhereItAroseByAProperty() {
        var err = new ByteArrayOutputStream();
        System.setProperty("comparand.debug", "yes");
        try {
            runWithBrokenOutput(MainTest::aFaultOfOurs, err, "catalogue");
        } finally {
            System.clearProperty("comparand.debug");
        }

        assertThat(err.toString(StandardCharsets.UTF_8)).contains("  comparand.app.CatalogueCommand.call");
    }

    @Test
    void theDayMayBeGivenFromOutside() {
        assertThat(Main.today(Map.of("SOURCE_DATE_EPOCH", "1795132800"))).isEqualTo(LocalDate.of(2026, 11, 20));
        assertThat(Main.today(Map.of("SOURCE_DATE_EPOCH", "1795219199"))).isEqualTo(LocalDate.of(2026, 11, 20));

        var before = LocalDate.now(ZoneOffset.UTC);
        var today = Main.today(Map.of("SOURCE_DATE_EPOCH", "yesterday"));
        assertThat(today).isBetween(before, LocalDate.now(ZoneOffset.UTC));
    }

    @Test
    void noPathIsTooOddToBeAnsweredWithoutAStackTrace() {
        for (var path : new String[] {"\0", "", " ", "/", "..", "-", "~", "a".repeat(5000)}) {
            for (var command : new String[] {"check", "build"}) {
                var run = CommandLineUse.run(command, path);
                assertThat(run.code()).as(command + " " + path).isIn(2, 64);
                assertThat(run.out() + run.err()).doesNotContain("\tat ").isNotBlank();
            }
        }
    }

    private static int runWithBrokenOutput(Runnable fault, ByteArrayOutputStream err, String... args) {
        var out = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8) {
            @Override
            public void println(@Nullable String text) {
                fault.run();
            }
        };
        return Main.run(args, out, new PrintStream(err, true, StandardCharsets.UTF_8), CommandLineUse.TODAY);
    }

    private static void aFaultOfOurs() {
        throw new IllegalStateException("the stream is broken");
    }

    private static void aFaultOfTheMachine() {
        throw new StackOverflowError("too deep");
    }

    /** The commands as the program declares them. */
    private static List<CommandSpec> commands() {
        return Stream.of(Main.class.getAnnotation(Command.class).subcommands())
                .map(CommandSpec::forAnnotatedObject)
                .toList();
    }
}
