package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** What changed between two runs of one dossier, and what that did to the answers. */
@Says("What changed between two runs of one dossier")
public record LedgerResult(
        @Says("comparand-changes- and the version of this format")
        String format,

        @Says("Name of the dossier") String dossier,
        @Says("Title printed on every output") String title,
        @Says("The question") String question,

        @Says("Whether devices, people and numbers are invented")
        boolean inventedData,

        @Says("The earlier run") RunOfLedger before,
        @Says("The later run") RunOfLedger after,

        @Says("By group (tool, question, rule, source, value, aside, local, price), then by name; numbered from 1")
        List<ChangeEntry> changes,

        @Says("What was left alone, one sentence a group") List<String> leftAlone,

        @Says(
                "Answers that are not the same: another, gone, new, reasons, numbers, words, adjusted; within each in the order of the later run")
        List<AnswerEntry> answers,

        @Says("How many answers are the same in every number")
        int same,

        @Says("Files that are not the same bytes in both runs, by name")
        List<FileEntry> files) {

    /** This version. */
    public static final String FORMAT = "comparand-changes-1";

    /** How many answers changed in a way. */
    public int count(String kind) {
        return (int) answers.stream().filter(a -> a.kind().equals(kind)).count();
    }

    /** One of the two runs. */
    public record RunOfLedger(
            @Says("The day the report speaks of") String asOf,
            @Says("draft or released") String state,
            @Says("Name and version of the tool") String tool,

            @Says("SHA-256 over the names and fingerprints of all inputs")
            String fingerprint,

            @Says("Number of answers") int answers) {}

    /** One change of what the answers rest on. */
    public record ChangeEntry(
            @Says("Number by which answers refer to it") int number,

            @Says("tool, question, rule, source, value, aside, local or price")
            String group,

            @Says("What changed") String what,
            @Says("How it stood in the earlier run") String before,
            @Says("How it stands in the later run") String after,
            @Says("Why and when, as far as it is recorded") String why,
            @Says("What it did to the answers") String effect) {}

    /** One answer that is not the same. */
    public record AnswerEntry(
            @Says("another: another verdict, standing or kind of answer; gone; new; reasons: still shown and not"
                    + " compared, for other reasons; numbers: the same verdict with other numbers; words: the same in"
                    + " other words; adjusted: nothing but p adjusted for the number of comparisons")
            String kind,

            @Says("Name of the pair") String pair,
            @Says("What it answers, in words") String what,
            @Says("The answer of the earlier run") String before,
            @Says("The answer of the later run") String after,
            @Says("Numbers of the changes it comes from") List<Integer> causes,
            @Says("The causes in words") String because) {}

    /** One file that is not the same. */
    public record FileEntry(
            @Says("Its path within the library") String file,

            @Says("SHA-256 in the earlier run; absent where it was not read")
            Optional<String> before,

            @Says("SHA-256 in the later run; absent where it is not read")
            Optional<String> after,

            @Says("Numbers of the changes that came with it")
            List<Integer> changes) {}
}
