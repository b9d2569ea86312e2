package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.LedgerResult.RunOfLedger;

/** One of the two runs in a line: day, tool, fingerprint of its inputs, number of answers. */
final class RunLine {

    private static final int SHOWN = 8;

    private RunLine() {}

    /**
     * A line.
     *
     * @param name what the run is called beside the other
     */
    static String of(Words words, String name, RunOfLedger run) {
        return name + ": "
                + words.say(
                        "ledger.run",
                        "day",
                        run.asOf(),
                        "tool",
                        run.tool(),
                        "print",
                        print(run.fingerprint()),
                        "n",
                        String.valueOf(run.answers()));
    }

    /** As much of the fingerprint as tells two apart. */
    static String print(String fingerprint) {
        return fingerprint.substring(0, Math.min(SHOWN, fingerprint.length()));
    }
}
