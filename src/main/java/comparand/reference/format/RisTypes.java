package comparand.reference.format;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Types of RIS and of CSL. Several of RIS are one in CSL; the first of each is what is written. */
final class RisTypes {

    private static final Map<String, String> READ = Map.ofEntries(
            Map.entry("JOUR", "article-journal"),
            Map.entry("EJOUR", "article-journal"),
            Map.entry("JFULL", "periodical"),
            Map.entry("INPR", "article-journal"),
            Map.entry("MGZN", "article-magazine"),
            Map.entry("NEWS", "article-newspaper"),
            Map.entry("UNPB", "article"),
            Map.entry("UNPD", "article"),
            Map.entry("PREPRINT", "article"),
            Map.entry("MANSCPT", "manuscript"),
            Map.entry("BOOK", "book"),
            Map.entry("WHOLE", "book"),
            Map.entry("EBOOK", "book"),
            Map.entry("EDBOOK", "book"),
            Map.entry("CHAP", "chapter"),
            Map.entry("ECHAP", "chapter"),
            Map.entry("SER", "chapter"),
            Map.entry("CONF", "paper-conference"),
            Map.entry("CPAPER", "paper-conference"),
            Map.entry("ABST", "paper-conference"),
            Map.entry("RPRT", "report"),
            Map.entry("GOVDOC", "report"),
            Map.entry("STAND", "standard"),
            Map.entry("THES", "thesis"),
            Map.entry("PAMP", "pamphlet"),
            Map.entry("PAT", "patent"),
            Map.entry("ELEC", "webpage"),
            Map.entry("WEB", "webpage"),
            Map.entry("ICOMM", "webpage"),
            Map.entry("BLOG", "post-weblog"),
            Map.entry("DATA", "dataset"),
            Map.entry("DBASE", "dataset"),
            Map.entry("AGGR", "dataset"),
            Map.entry("COMP", "software"),
            Map.entry("ENCYC", "entry-encyclopedia"),
            Map.entry("DICT", "entry-dictionary"),
            Map.entry("PCOMM", "personal_communication"),
            Map.entry("SLIDE", "speech"),
            Map.entry("HEAR", "hearing"),
            Map.entry("CASE", "legal_case"),
            Map.entry("BILL", "bill"),
            Map.entry("UNBILL", "bill"),
            Map.entry("STAT", "legislation"),
            Map.entry("LEGAL", "legislation"),
            Map.entry("MAP", "map"),
            Map.entry("FIGURE", "figure"),
            Map.entry("CHART", "figure"),
            Map.entry("VIDEO", "motion_picture"),
            Map.entry("MPCT", "motion_picture"),
            Map.entry("ADVS", "motion_picture"),
            Map.entry("SOUND", "song"),
            Map.entry("MUSIC", "musical_score"),
            Map.entry("ART", "graphic"),
            Map.entry("CTLG", "book"),
            Map.entry("GEN", "document"));

    private static final Map<String, String> WRITTEN = Map.ofEntries(
            Map.entry("article-journal", "JOUR"),
            Map.entry("article-magazine", "MGZN"),
            Map.entry("article-newspaper", "NEWS"),
            Map.entry("article", "UNPB"),
            Map.entry("manuscript", "MANSCPT"),
            Map.entry("book", "BOOK"),
            Map.entry("chapter", "CHAP"),
            Map.entry("paper-conference", "CPAPER"),
            Map.entry("report", "RPRT"),
            Map.entry("standard", "STAND"),
            Map.entry("thesis", "THES"),
            Map.entry("pamphlet", "PAMP"),
            Map.entry("patent", "PAT"),
            Map.entry("webpage", "ELEC"),
            Map.entry("post-weblog", "BLOG"),
            Map.entry("dataset", "DATA"),
            Map.entry("software", "COMP"),
            Map.entry("periodical", "JFULL"),
            Map.entry("entry-encyclopedia", "ENCYC"),
            Map.entry("entry-dictionary", "DICT"),
            Map.entry("personal_communication", "PCOMM"),
            Map.entry("speech", "SLIDE"),
            Map.entry("hearing", "HEAR"),
            Map.entry("legal_case", "CASE"),
            Map.entry("bill", "BILL"),
            Map.entry("legislation", "STAT"),
            Map.entry("map", "MAP"),
            Map.entry("figure", "FIGURE"),
            Map.entry("motion_picture", "VIDEO"),
            Map.entry("song", "SOUND"),
            Map.entry("musical_score", "MUSIC"),
            Map.entry("graphic", "ART"));

    /** What stands in nothing larger: its second title is that of a series. */
    private static final Set<String> WHOLE =
            Set.of("book", "report", "thesis", "pamphlet", "standard", "patent", "software", "dataset", "map");

    private RisTypes() {}

    static Optional<String> type(String word) {
        return Optional.ofNullable(READ.get(word.toUpperCase(java.util.Locale.ROOT)));
    }

    static String word(String type) {
        return WRITTEN.getOrDefault(type, "GEN");
    }

    static boolean isWhole(String type) {
        return WHOLE.contains(type);
    }

    /** Works with a number of their own, where articles have that of an issue. */
    static boolean isNumbered(String type) {
        return type.equals("report") || type.equals("standard") || type.equals("patent");
    }
}
