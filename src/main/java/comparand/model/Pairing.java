package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

/**
 * Two comparands side by side, with what was found condition by condition.
 *
 * @param ours the side a difference is counted from: local against published, a device against the present one
 */
public record Pairing(
        Purpose purpose, Comparand ours, Comparand theirs, Standing standing, List<ConditionVerdict> verdicts) {

    /** Why the two are set side by side. */
    public enum Purpose {
        /** A local result and a published value of the same device. */
        LOCAL_AGAINST_PUBLISHED,
        /** Local results of a device and of the device in use today. */
        AGAINST_PRESENT_DEVICE,
        /** The same within one centre that used both. */
        WITHIN_CENTRE,
        /** Nominal figures of a device and of the device in use today. */
        STATED_AGAINST_PRESENT_DEVICE
    }

    public Pairing {
        requireNonNull(purpose, "purpose");
        requireNonNull(ours, "ours");
        requireNonNull(theirs, "theirs");
        requireNonNull(standing, "standing");
        verdicts = List.copyOf(verdicts);
    }

    /**
     * Whether its p is adjusted for the number of comparisons: a device against the one in use today, on metrics other than
     * the primary one. Comparisons with published values answer another question, and each source stands alone.
     */
    public boolean isOfFamily(Optional<String> primary) {
        return purpose == Purpose.AGAINST_PRESENT_DEVICE
                && !primary.equals(Optional.of(ours.metric().id()));
    }

    public String id() {
        return ours.id() + " | " + theirs.id();
    }
}
