package comparand.reference.format;

import comparand.model.library.SourceState;
import comparand.reference.Notice;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What MEDLINE says of the standing of a work: the tags that cite a notice about it ("Comments/Corrections" of the field
 * descriptions; RRI from memory) and the publication type of a retracted work. The tags stay in the record, so that an export
 * has them again.
 */
final class MedlineStanding {

    private static final Map<String, SourceState> TAGS = new LinkedHashMap<>();
    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    static {
        tag("RIN", SourceState.RETRACTED, "Retraction in");
        tag("RRI", SourceState.RETRACTED, "Retracted and republished in");
        tag("ECI", SourceState.CONCERN, "Expression of concern in");
        tag("EIN", SourceState.CORRECTED, "Erratum in");
        tag("CRI", SourceState.CORRECTED, "Corrected and republished in");
        tag("PRIN", SourceState.CORRECTED, "Partial retraction in");
    }

    private MedlineStanding() {}

    private static void tag(String tag, SourceState state, String words) {
        TAGS.put(tag, state);
        WORDS.put(tag, words);
    }

    static void read(Draft draft, TaggedRecord tags) {
        var retracted = tags.left().stream()
                .filter(t -> t.tag().equals("PT") && t.text().strip().equalsIgnoreCase(MedlineWriter.RETRACTED))
                .findFirst();
        retracted.ifPresent(tags::remove);
        for (var tagged : tags.left()) {
            var state = TAGS.get(tagged.tag());
            if (state != null && !tagged.text().isBlank()) {
                var citation = Plain.text(tagged.text());
                draft.notice(
                        new Notice(state, WORDS.get(tagged.tag()) + ": " + citation, MedlineDates.within(citation)));
            }
        }
        boolean cited = tags.left().stream().anyMatch(t -> TAGS.get(t.tag()) == SourceState.RETRACTED);
        boolean said = tags.left().stream()
                .filter(t -> t.tag().equals("GN"))
                .anyMatch(t -> StatusNote.read(t.text()).isPresent());
        if (retracted.isPresent() && !cited && !said) {
            draft.notice(
                    new Notice(SourceState.RETRACTED, "PubMed lists it as a retracted publication", Optional.empty()));
        }
    }
}
