package comparand.read.proposal;

import comparand.metric.Catalogue;
import comparand.model.UnreadableRows;
import comparand.model.library.ColumnRole;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A study record proposed for raw files nobody has described yet. */
public final class StudyProposal {

    private StudyProposal() {}

    /**
     * The text of study.yaml: a valid record in which each assumption is a comment and each decision that only a person can
     * take is listed under {@code undecided:}, where it stops every run until it is settled.
     *
     * @param study the id of the study
     * @param files raw files, each with a name of its own
     * @throws UnreadableRows if one of them holds no table
     * @throws IOException if one of them cannot be opened
     */
    public static String of(String study, List<Path> files, Catalogue catalogue) throws IOException {
        var proposals = new ArrayList<FileProposal>();
        for (var file : files) {
            for (var table : RawTable.in(file)) {
                proposals.add(new FileProposal(table, catalogue));
            }
        }
        boolean clinical = proposals.stream().anyMatch(p -> p.holds(ColumnRole.CASE));
        var level = clinical ? "cases" : proposals.stream().anyMatch(p -> p.holds(ColumnRole.UNIT)) ? "units" : "runs";
        var lines = new ArrayList<String>();
        lines.add(
                "# Proposed from the raw files. Nothing here was asked of anybody: each assumption stands behind its line.");
        lines.add(
                "# Check each line, settle what stands under `undecided:`, and delete the comments you no longer need.");
        lines.add("study: " + study);
        lines.add("title: " + YamlWords.quoted("Study " + study) + "  # CHECK: as it is to be printed");
        lines.add("kind: %s  # assumed: %s"
                .formatted(
                        clinical ? "clinical" : "bench", clinical ? "a column holds cases" : "no column holds cases"));
        lines.add("unit-of-analysis: %s  # CHECK: units | runs | cases".formatted(level));
        lines.add("undecided:  # settle each, then delete its line; until then nothing is computed");
        lines.add("  - " + YamlWords.quoted("the title of the study"));
        lines.add("  - " + YamlWords.quoted("what counts as one independent result: units, runs or cases"));
        lines.add("files:");
        proposals.forEach(p -> lines.addAll(p.lines()));
        return String.join("\n", lines) + "\n";
    }

    /** A name for a study, from the name of a file. */
    public static String nameFor(Path file) {
        return ColumnProposals.slug(file.getFileName().toString().replaceAll("\\.[^.]*$", ""));
    }
}
