package comparand.reference.format;

import comparand.model.library.SourceState;
import comparand.reference.Field;
import comparand.reference.Languages;
import comparand.reference.Name;
import comparand.reference.Reference;
import java.util.Collection;
import java.util.Map;

/** References in the display format of MEDLINE, long texts broken at blanks and gone on with behind six of them. */
final class MedlineWriter {

    static final String ARTICLE = "Journal Article";
    static final String PREPRINT = "Preprint";
    static final String CONGRESS = "Congress";
    static final String BOOK = "Book";
    static final String CHAPTER = "Book Chapter";
    static final String RETRACTED = "Retracted Publication";

    private static final Map<String, String> KINDS = Map.of(
            "article-journal",
            ARTICLE,
            "article",
            PREPRINT,
            "paper-conference",
            CONGRESS,
            "book",
            BOOK,
            "chapter",
            CHAPTER);

    private static final String FORMAT = ReferenceFormat.NBIB.word();
    private static final int WIDEST = 88;
    private static final String INDENT = " ".repeat(6);

    private final StringBuilder out = new StringBuilder();
    private final Reference reference;

    private MedlineWriter(Reference reference) {
        this.reference = reference;
    }

    static String text(Collection<Reference> references) {
        var out = new StringBuilder();
        references.forEach(r -> out.append(new MedlineWriter(r).record()).append('\n'));
        return out.toString();
    }

    private String record() {
        boolean isBook = reference.type().equals("book");
        boolean isChapter = reference.type().equals("chapter");
        line("PMID", Field.PMID);
        if (reference.kept(FORMAT, "IS").stream().noneMatch(k -> k.startsWith(field(Field.ISSN)))) {
            line("IS", Field.ISSN);
        }
        line("ISBN", Field.ISBN);
        line("VI", Field.VOLUME);
        line("IP", Field.ISSUE);
        if (reference.kept(FORMAT, "DP").isEmpty()) {
            reference.issued().ifPresent(d -> line("DP", MedlineDates.text(d)));
        }
        line(isBook ? "BTI" : "TI", stopped(reference.title()));
        if (isChapter) {
            reference.field(Field.CONTAINER_TITLE).ifPresent(t -> line("BTI", stopped(t)));
        }
        reference.field(Field.COLLECTION_TITLE).ifPresent(t -> line("CTI", stopped(t)));
        line("PG", Field.PAGE);
        reference.field(Field.DOI).ifPresent(d -> line("LID", d + " [doi]"));
        reference.authors().forEach(a -> name(a, "FAU", "AU"));
        reference.editors().forEach(e -> name(e, "FED", "ED"));
        reference.field(Field.LANGUAGE).ifPresent(l -> line("LA", Languages.three(l)));
        kinds();
        line("EN", Field.EDITION);
        line("PB", Field.PUBLISHER);
        line("PL", Field.PUBLISHER_PLACE);
        if (!isBook && !isChapter) {
            line("JT", Field.CONTAINER_TITLE);
            line("TA", Field.CONTAINER_TITLE_SHORT);
        }
        line("PMC", Field.PMCID);
        reference.notice().ifPresent(n -> line("GN", StatusNote.of(n)));
        reference.kept().stream()
                .filter(k -> k.format().equals(FORMAT) && k.tag().matches("[A-Z][A-Z0-9]{1,3}"))
                .forEach(k -> k.texts().forEach(t -> line(k.tag(), t)));
        return out.toString();
    }

    private String field(Field field) {
        return reference.field(field).orElse("?");
    }

    private void kinds() {
        var kind = KINDS.get(reference.type());
        if (kind != null) {
            line("PT", kind);
        }
        if (reference.notice().filter(n -> n.state() == SourceState.RETRACTED).isPresent()) {
            line("PT", RETRACTED);
        }
    }

    private static String stopped(String title) {
        return title.matches(".*[?!]") ? title : title + ".";
    }

    private void name(Name name, String full, String brief) {
        if (name.isBody()) {
            line("CN", name.literal());
        } else {
            line(full, MedlineName.fullText(name));
            line(brief, name.brief());
        }
    }

    private void line(String tag, Field field) {
        reference.field(field).ifPresent(t -> line(tag, t));
    }

    private void line(String tag, String text) {
        out.append(tag).append(" ".repeat(4 - tag.length())).append("- ");
        int column = INDENT.length();
        boolean first = true;
        for (var word : text.split(" ", -1)) {
            if (!first && column + 1 + word.length() > WIDEST) {
                out.append('\n').append(INDENT);
                column = INDENT.length();
            } else if (!first) {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
            first = false;
        }
        out.append('\n');
    }
}
