package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.PrintedFinding;
import org.junit.jupiter.api.Test;

/** References as text, and commands about references used wrongly. */
class ReferencesExportCommandTest {

    @Test
    void vancouverTextSaysWhatIsWithdrawn() {
        var run = CommandLineUse.run(
                "references", "export", "evidence", "--format", "vancouver", "--source", "farrow-2019,bonvale-2022");

        assertThat(run.out().lines())
                .containsExactly(
                        "Invented data: these works do not exist.",
                        "1. Bonvale R, Tarn E. Removal of gas bubbles by two oxygenators with integral filters. Invented Archives of"
                                + " Circulatory Support. 2022;5:112–9.",
                        "2. Farrow D. Minimal haemolysis with a plasma-tight membrane. Invented Archives of Circulatory Support."
                                + " 2019;2:9–14. [retracted 2022-05: notice of 2022-05: raw data could not be produced]");
    }

    @Test
    void wrongUseIsSaid() {
        assertThat(CommandLineUse.run("references", "export", "evidence", "--format", "word")
                        .code())
                .isEqualTo(Exit.USAGE);
        assertThat(CommandLineUse.run("references", "import", "x.ris").code()).isEqualTo(Exit.USAGE);
        assertThat(PrintedFinding.in(CommandLineUse.run(
                                        "references", "export", "evidence", "--format", "ris", "--source", "farow-2019")
                                .err())
                        .get(0)
                        .fix())
                .contains("farrow-2019");
        assertThat(CommandLineUse.run(
                                "references",
                                "export",
                                "evidence",
                                "--format",
                                "ris",
                                "--out",
                                "evidence/sources/x.ris")
                        .code())
                .isEqualTo(Exit.STOPPED);
        assertThat(CommandLineUse.run("references").out()).contains("import", "export", "check");
    }
}
