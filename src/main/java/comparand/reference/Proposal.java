package comparand.reference;

import comparand.diag.Span;
import comparand.document.record.Entry;
import comparand.model.library.SourceKind;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What an import would do with one reference.
 *
 * @param id the name the source would have
 * @param held why it is not written unless the person says so; empty if it would be written
 */
public record Proposal(String id, Found found, KindGuess kind, Optional<Held> held) {

    /**
     * Why a reference is held back.
     *
     * @param id of the source, of the library or of this import, that it repeats or speaks of; empty if there is none
     * @param reason as a clause
     */
    public record Held(String id, boolean isNotice, String reason) {}

    public boolean isHeld() {
        return held.isPresent();
    }

    public Span at() {
        return found.at();
    }

    /** Whether its record will lack the revision that instructions for use must have. */
    public boolean lacksRevision() {
        return kind.kind() == SourceKind.INSTRUCTIONS_FOR_USE
                && SourceTree.revision(found.reference()).isEmpty();
    }

    /** The record, in the order of keys in which records are written. */
    public Entry.Fields record(LocalDate today) {
        return new SourceTree(this, today).record();
    }

    /** What would be written, or why nothing is, as one sentence. */
    public String sentence(LocalDate today) {
        var reference = found.reference();
        if (held.isPresent()) {
            var why = held.get();
            return "%s is held back: %s (%s); `--also %s` writes it all the same"
                    .formatted(
                            reference.brief(),
                            why.isNotice()
                                    ? "it is a notice about " + (why.id().isEmpty() ? "another work" : why.id())
                                    : "it seems to be " + why.id(),
                            why.reason(),
                            id);
        }
        return "%s is %s; taken as %s, because %s; status %s, checked %s; funding not reported"
                .formatted(id, reference.brief(), kind.word(), kind.reason(), status(), today);
    }

    private String status() {
        return state()
                + found.reference()
                        .notice()
                        .flatMap(Notice::since)
                        .map(d -> " (" + d + ")")
                        .orElse("");
    }

    /** A preprint is current until an article takes its place, which a person says. */
    String state() {
        return found.reference().notice().map(Notice::word).orElse("current");
    }
}
