package comparand.reference.format;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Item types of CSL 1.0.2, and the types of registration agencies that DOI services return in their place (CrossRef
 * rest-api-doc, issue 187, names four of them; the others from the agency's list of types, from memory).
 */
final class CslTypes {

    private static final Set<String> KNOWN = Set.of(
            "article",
            "article-journal",
            "article-magazine",
            "article-newspaper",
            "bill",
            "book",
            "broadcast",
            "chapter",
            "classic",
            "collection",
            "dataset",
            "document",
            "entry",
            "entry-dictionary",
            "entry-encyclopedia",
            "event",
            "figure",
            "graphic",
            "hearing",
            "interview",
            "legal_case",
            "legislation",
            "manuscript",
            "map",
            "motion_picture",
            "musical_score",
            "pamphlet",
            "paper-conference",
            "patent",
            "performance",
            "periodical",
            "personal_communication",
            "post",
            "post-weblog",
            "regulation",
            "report",
            "review",
            "review-book",
            "software",
            "song",
            "speech",
            "standard",
            "thesis",
            "treaty",
            "webpage");

    private static final Map<String, String> OTHERS = Map.ofEntries(
            Map.entry("journal-article", "article-journal"),
            Map.entry("posted-content", "article"),
            Map.entry("preprint", "article"),
            Map.entry("proceedings-article", "paper-conference"),
            Map.entry("proceedings", "book"),
            Map.entry("proceedings-series", "book"),
            Map.entry("book-chapter", "chapter"),
            Map.entry("book-section", "chapter"),
            Map.entry("book-part", "chapter"),
            Map.entry("book-track", "chapter"),
            Map.entry("monograph", "book"),
            Map.entry("edited-book", "book"),
            Map.entry("reference-book", "book"),
            Map.entry("book-set", "book"),
            Map.entry("book-series", "book"),
            Map.entry("reference-entry", "entry-encyclopedia"),
            Map.entry("dissertation", "thesis"),
            Map.entry("report-component", "report"),
            Map.entry("report-series", "report"),
            Map.entry("peer-review", "review"),
            Map.entry("journal", "periodical"),
            Map.entry("journal-volume", "periodical"),
            Map.entry("journal-issue", "periodical"),
            Map.entry("database", "dataset"),
            Map.entry("component", "document"),
            Map.entry("grant", "document"),
            Map.entry("other", "document"));

    private CslTypes() {}

    static Optional<String> type(String word) {
        return KNOWN.contains(word) ? Optional.of(word) : Optional.ofNullable(OTHERS.get(word));
    }
}
