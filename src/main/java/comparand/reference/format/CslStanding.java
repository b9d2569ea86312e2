package comparand.reference.format;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.model.library.SourceState;
import comparand.reference.Notice;
import java.util.Locale;

/**
 * What a registration agency says of the standing of a work: {@code updated-by}, a list of notices with {@code type},
 * {@code DOI} and {@code updated} (Crossref's metadata, from memory). It stays in the record as well.
 */
final class CslStanding {

    private CslStanding() {}

    static void read(Draft draft, JsonNode updates) {
        updates.forEach(update -> {
            var word = update.path("type").asText().toLowerCase(Locale.ROOT);
            var state = word.matches("retraction|withdrawal|removal")
                    ? SourceState.RETRACTED
                    : word.matches("expression[_-]of[_-]concern")
                            ? SourceState.CONCERN
                            : word.matches("correction|corrigendum|erratum|partial[_-]retraction")
                                    ? SourceState.CORRECTED
                                    : SourceState.CURRENT;
            if (state != SourceState.CURRENT) {
                var doi = Plain.text(update.path("DOI").asText());
                draft.notice(new Notice(
                        state,
                        word.replace('_', ' ') + (doi.isEmpty() ? "" : ", doi:" + doi),
                        CslDates.read(update.path("updated"))));
            }
        });
    }
}
