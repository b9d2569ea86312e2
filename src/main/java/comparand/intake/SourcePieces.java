package comparand.intake;

import comparand.document.form.FormList.Word;
import comparand.intake.ConditionPiece.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Everything a source is made from but its values, in the order of its record. */
final class SourcePieces {

    /** The key that holds the values; what comes behind it in a record comes behind it in the file. */
    static final String VALUES = "values";

    private static final String GROUP = "The source";
    private static final String CITE = "How to cite it";
    private static final String STATUS = "Does it still stand?";

    static final Slot ID = Slot.text(
            GROUP,
            "source",
            "A name for the source?",
            "Small letters, digits and hyphens, such as ardley-2023. It becomes the name of the file.");

    static final String NAME_RULE = "use small letters, digits and single hyphens, as in ardley-2023";

    static final Slot DECIMAL = Slot.word(
            GROUP,
            "decimal sign",
            "Does the source print decimal commas?",
            "Empty for decimal points.",
            List.of(new Word("point", "1.5"), new Word("comma", "1,5")));

    private static final Slot FURTHER = Slot.text(
            ConditionPiece.GROUP,
            "conditions of all values",
            "Which conditions hold for every value of it?",
            "Names of conditions with commas between them, such as temperature, species; empty for none.");

    private static final Slot KIND = Slot.word(
            GROUP,
            "kind of source",
            "What kind of document is it?",
            "What the source is; a letter is what an author or maker answered.",
            List.of(
                    new Word("instructions-for-use", "the instructions the maker supplies"),
                    new Word("bench-paper", "a paper on tests without patients"),
                    new Word("clinical-paper", "a paper on patients"),
                    new Word("abstract", "an abstract of a meeting"),
                    new Word("preprint", "a paper before its review"),
                    new Word("standard", "a standard"),
                    new Word("registry-report", "a report of a register"),
                    new Word("letter", "what an author or a maker wrote on request"),
                    new Word("flyer", "advertising")));

    private static final List<Word> TYPES = List.of(
            new Word("article-journal", "an article in a journal"),
            new Word("article", "a preprint"),
            new Word("paper-conference", "a paper or abstract of a meeting"),
            new Word("pamphlet", "instructions for use, a flyer"),
            new Word("report", "a report"),
            new Word("standard", "a standard"),
            new Word("personal_communication", "a letter"));

    private static final Set<String> WITH_REVISION = Set.of("instructions-for-use", "standard");

    private static final Set<String> OF_PATIENTS =
            Set.of("clinical-paper", "abstract", "preprint", "registry-report", "letter");

    private final List<Piece> pieces = new ArrayList<>();

    SourcePieces(Scope scope) {
        pieces.add(TextPiece.needed("source", ID));
        pieces.add(TextPiece.needed("kind", KIND));
        pieces.add(TextPiece.of("decimal", DECIMAL));
        pieces.add(TextPiece.needed(
                "reference/type",
                Slot.suggested(
                        CITE,
                        "type of work",
                        "How is it cited: as what?",
                        "A type of CSL-JSON, an open format.",
                        TYPES)));
        pieces.add(TextPiece.needed(
                "reference/title", Slot.text(CITE, "title", "Its title?", "The whole title, as printed.")));
        pieces.add(
                new PeoplePiece(
                        "reference/author",
                        Slot.text(
                                CITE,
                                "authors",
                                "Its authors?",
                                "Family and given name with a comma, persons with a semicolon: Ardley, J.; Penrith, S. A body without a comma.")));
        cite("issued", "issued", "When was it issued?", "Year, year-month or year-month-day.", a -> true);
        var collection =
                Slot.text(CITE, "journal or collection", "In which journal or collection?", "Empty if in none.");
        pieces.add(TextPiece.of("reference/container-title", collection));
        Predicate<Answers> inCollection = a -> a.text(collection).isPresent();
        cite("volume", "volume", "Volume?", "Empty if it has none.", inCollection);
        cite("issue", "issue", "Issue?", "Empty if it has none.", inCollection);
        cite("page", "pages", "Pages?", "First and last page, such as 41-50.", inCollection);
        cite(
                "publisher",
                "publisher or maker",
                "Publisher, or the maker?",
                "For instructions for use the maker.",
                a -> true);
        cite("DOI", "DOI", "DOI?", "Without https://doi.org/ before it.", a -> true);
        cite("PMID", "PMID", "PubMed identifier?", "Digits only.", a -> true);
        Predicate<Answers> revised =
                a -> a.text(KIND).filter(WITH_REVISION::contains).isPresent();
        pieces.add(TextPiece.of(
                "document/revision",
                Slot.text(GROUP, "revision", "Which revision?", "Instructions for use must have it."),
                revised));
        pieces.add(TextPiece.of(
                "document/date",
                Slot.date(GROUP, "date of the revision", "Of which date?", "Year-month or year-month-day, as printed."),
                revised));
        pieces.add(TextPiece.of(
                "language",
                Slot.text(
                        GROUP,
                        "language",
                        "In which language, if not English?",
                        "Two letters, such as de; empty for English.")));
        pieces.add(TextPiece.needed(
                "funding",
                Slot.word(
                        GROUP,
                        "funding",
                        "Who paid for the work?",
                        "As the source says; not reported if it does not.",
                        List.of(
                                new Word("independent", "nobody who makes or sells the device"),
                                new Word("maker", "who makes or sells the device"),
                                new Word("mixed", "both"),
                                new Word("not reported", "the source does not say")))));
        status();
        cohort();
        pieces.add(new AskedPiece(FURTHER));
        scope.conditions()
                .forEach(c -> pieces.add(new ConditionPiece(
                        c, a -> ConditionPiece.isNamed(c, a.text(FURTHER)) ? Weight.USEFUL : Weight.NONE)));
        pieces.add(TextPiece.of(
                "remark",
                Slot.text("Remark", "remark", "Anything a successor should know?", "A remark for the library.")));
    }

    private void cite(String key, String heading, String question, String help, Predicate<Answers> matters) {
        pieces.add(TextPiece.of("reference/" + key, Slot.text(CITE, heading, question, help), matters));
    }

    private void status() {
        var state = Slot.word(
                STATUS,
                "status",
                "Does it still stand?",
                "Whether it was corrected, questioned, withdrawn or replaced.",
                List.of(
                        new Word("current", "it stands"),
                        new Word("corrected", "a correction was published"),
                        new Word("concern", "an expression of concern was published"),
                        new Word("retracted", "it was withdrawn"),
                        new Word("superseded", "a later revision takes its place"),
                        new Word("preprint", "it is a preprint")));
        Predicate<Answers> notCurrent =
                a -> a.text(state).filter(s -> !s.equals("current")).isPresent();
        pieces.add(TextPiece.needed("status/state", state));
        pieces.add(TextPiece.needed(
                "status/checked",
                Slot.date(
                        STATUS,
                        "status checked on",
                        "When did you last look?",
                        "The day corrections were last looked for.")));
        pieces.add(TextPiece.of(
                "status/since",
                Slot.date(STATUS, "since", "Since when?", "When the correction or retraction was published."),
                notCurrent));
        pieces.add(TextPiece.of(
                "status/notice",
                Slot.text(STATUS, "notice", "What does the notice say?", "The notice, as it may be quoted."),
                notCurrent));
        pieces.add(TextPiece.of(
                "status/by",
                Slot.text(STATUS, "replaced by", "Which source takes its place?", "Its name in this library."),
                notCurrent));
        pieces.add(TextPiece.of(
                "same-study-as",
                Slot.text(
                        STATUS,
                        "same study as",
                        "Does it report patients or runs that another source reports? Which?",
                        "The name of that source; empty if it does not.")));
    }

    private void cohort() {
        var group = "Its patients";
        Predicate<Answers> ofPatients =
                a -> a.text(KIND).filter(OF_PATIENTS::contains).isPresent();
        var centres = Slot.text(
                group,
                "hospitals",
                "In which hospitals were its patients treated?",
                "As the source names them, with ; between them; one name for each in the whole library. Empty if not said.");
        Predicate<Answers> named = ofPatients.and(a -> a.text(centres).isPresent());
        pieces.add(new ListPiece("cohort/centres", centres, ofPatients));
        pieces.add(new TextPiece(
                "cohort/from",
                Slot.date(group, "patients from", "When was the first treated?", "Year, year-month or year-month-day."),
                true,
                named));
        pieces.add(new TextPiece(
                "cohort/to",
                Slot.date(group, "patients to", "When was the last treated?", "Year, year-month or year-month-day."),
                true,
                named));
        pieces.add(TextPiece.of(
                "cohort/independent",
                Slot.text(
                        group,
                        "other patients because",
                        "Are they others than those of a source with the same hospital, device and time? Why?",
                        "The reason, such as: other ward. Empty if there is no such source."),
                named));
    }

    /** Whether a text can name a source, and its file. */
    static boolean isName(String text) {
        return text.matches("[a-z0-9]++(?:-[a-z0-9]++)*+");
    }

    List<Piece> all() {
        return List.copyOf(pieces);
    }
}
