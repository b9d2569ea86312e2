package comparand.read.proposal;

import comparand.model.library.ColumnRole;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The proposed mapping of one column.
 *
 * @param mapping as it stands behind the heading, {@code {input: haemoglobin, unit: g/L}}
 * @param comment what was assumed and from what
 * @param role what it says of its row, if that
 * @param quantity the quantity it gives, if that
 * @param questions what its author has to decide
 */
record ColumnProposal(
        String heading,
        String mapping,
        String comment,
        Optional<ColumnRole> role,
        Optional<String> quantity,
        List<String> questions) {

    ColumnProposal {
        questions = List.copyOf(questions);
    }

    static ColumnProposal ignored(String heading, String comment) {
        return new ColumnProposal(heading, "{holds: ignored}", comment, Optional.empty(), Optional.empty(), List.of());
    }

    static ColumnProposal holding(
            String heading, ColumnRole role, String more, String comment, List<String> questions) {
        var word = role.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new ColumnProposal(
                heading, "{holds: " + word + more + "}", comment, Optional.of(role), Optional.empty(), questions);
    }

    /** The line under {@code columns:}, without indentation. */
    String line() {
        return YamlWords.quoted(heading) + ": " + mapping + "  # " + YamlWords.comment(comment);
    }
}
