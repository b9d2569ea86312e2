package comparand.reference.format;

import java.util.Map;
import java.util.Optional;

/** Entry types of BibTeX, and of its successor for online works, and types of CSL. */
final class BibtexTypes {

    private static final Map<String, String> READ = Map.ofEntries(
            Map.entry("article", "article-journal"),
            Map.entry("book", "book"),
            Map.entry("mvbook", "book"),
            Map.entry("collection", "book"),
            Map.entry("booklet", "pamphlet"),
            Map.entry("inbook", "chapter"),
            Map.entry("incollection", "chapter"),
            Map.entry("inproceedings", "paper-conference"),
            Map.entry("conference", "paper-conference"),
            Map.entry("proceedings", "book"),
            Map.entry("manual", "pamphlet"),
            Map.entry("techreport", "report"),
            Map.entry("report", "report"),
            Map.entry("mastersthesis", "thesis"),
            Map.entry("phdthesis", "thesis"),
            Map.entry("thesis", "thesis"),
            Map.entry("unpublished", "article"),
            Map.entry("preprint", "article"),
            Map.entry("misc", "document"),
            Map.entry("online", "webpage"),
            Map.entry("electronic", "webpage"),
            Map.entry("www", "webpage"),
            Map.entry("standard", "standard"),
            Map.entry("patent", "patent"),
            Map.entry("dataset", "dataset"),
            Map.entry("software", "software"),
            Map.entry("periodical", "periodical"));

    private static final Map<String, String> WRITTEN = Map.ofEntries(
            Map.entry("article-journal", "article"),
            Map.entry("article-magazine", "article"),
            Map.entry("article-newspaper", "article"),
            Map.entry("article", "unpublished"),
            Map.entry("book", "book"),
            Map.entry("chapter", "incollection"),
            Map.entry("paper-conference", "inproceedings"),
            Map.entry("pamphlet", "manual"),
            Map.entry("report", "techreport"),
            Map.entry("thesis", "phdthesis"),
            Map.entry("webpage", "online"),
            Map.entry("standard", "standard"),
            Map.entry("patent", "patent"),
            Map.entry("dataset", "dataset"),
            Map.entry("software", "software"),
            Map.entry("periodical", "periodical"));

    private BibtexTypes() {}

    static Optional<String> type(String entry) {
        return Optional.ofNullable(READ.get(entry));
    }

    static String entry(String type) {
        return WRITTEN.getOrDefault(type, "misc");
    }

    /** The field for what a work stands in. */
    static String container(String type) {
        return switch (entry(type)) {
            case "incollection", "inproceedings" -> "booktitle";
            default -> "journal";
        };
    }

    /** The field for who brought it out. */
    static String publisher(String type) {
        return switch (entry(type)) {
            case "techreport" -> "institution";
            case "phdthesis" -> "school";
            case "manual", "standard" -> "organization";
            default -> "publisher";
        };
    }
}
