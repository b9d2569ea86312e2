package comparand.reference;

import comparand.model.library.PartialDate;
import comparand.model.library.SourceState;
import java.util.Comparator;
import java.util.Optional;

/**
 * That a work was corrected, doubted or withdrawn.
 *
 * @param text where it says so, as it may be quoted; may be empty
 */
public record Notice(SourceState state, String text, Optional<PartialDate> since) {

    /** The gravest first. */
    public static final Comparator<Notice> GRAVEST = Comparator.comparingInt(n -> rank(n.state));

    public Notice {
        rank(state);
    }

    private static int rank(SourceState state) {
        return switch (state) {
            case RETRACTED -> 0;
            case CONCERN -> 1;
            case CORRECTED -> 2;
            case CURRENT, SUPERSEDED, PREPRINT ->
                throw new IllegalArgumentException("no notice makes a source " + state);
        };
    }

    /** Its one word in a record. */
    public String word() {
        return switch (state) {
            case RETRACTED -> "retracted";
            case CONCERN -> "concern";
            default -> "corrected";
        };
    }
}
