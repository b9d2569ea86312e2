package comparand.privacy;

import comparand.app.CommandLineUse;
import java.nio.file.Path;
import java.util.List;

/** Every command that reads or writes, run one after the other on a copy of the demo. */
final class EveryCommand {

    private EveryCommand() {}

    /** The command lines, in an order in which each finds what it needs. */
    static List<List<String>> lines(Path library, Path out) {
        var dossier = library.resolve("dossiers/small-oxygenators.yaml").toString();
        var built = out.resolve("built").toString();
        var before = out.resolve("before").toString();
        var form = out.resolve("form.xlsx").toString();
        var second = out.resolve("second.xlsx").toString();
        var lib = library.toString();
        return List.of(
                List.of("check", lib),
                List.of("build", dossier, "--for", "all", "--out", built),
                List.of(
                        "build",
                        dossier,
                        "--for",
                        "evidence",
                        "--over",
                        library.resolve("dated/2026-10").toString(),
                        "--out",
                        before),
                List.of(
                        "changes",
                        before + "/small-oxygenators",
                        built + "/small-oxygenators",
                        "--out",
                        out.resolve("changes.pdf").toString()),
                List.of("trace", dossier, "B13"),
                List.of("plan", dossier),
                List.of("requests", dossier, "--out", out.resolve("letters").toString()),
                List.of("catalogue", "pressure-drop"),
                List.of("start", out.resolve("begun").toString()),
                List.of(
                        "start",
                        out.resolve("guessed").toString(),
                        "--from",
                        library.resolve("studies/three-hospitals/norrisgate-cases.csv")
                                .toString()),
                List.of("intake", "make", lib, "--source", "ardley-2023", "--out", form),
                List.of("intake", "take", form, "--library", lib, "--dry-run"),
                List.of("second", "form", lib, "--source", "bonvale-2022", "--out", second),
                List.of(
                        "second",
                        "compare",
                        second,
                        "--library",
                        lib), // an empty form, which it says and does not take
                List.of("references", "check", lib),
                List.of("references", "export", lib, "--format", "vancouver"),
                List.of(
                        "references",
                        "import",
                        library.resolve("references/abstracts.bib").toString(),
                        "--library",
                        lib));
    }

    public static void main(String[] arguments) {
        CommandLineUse.offline();
        for (var line : lines(Path.of(arguments[0]), Path.of(arguments[1]))) {
            var run = CommandLineUse.run(line.toArray(String[]::new));
            System.out.println("did " + String.join(" ", line.subList(0, 2)) + ": " + run.code());
            if (run.code() != 0) {
                System.out.println(run.err());
            }
        }
    }
}
