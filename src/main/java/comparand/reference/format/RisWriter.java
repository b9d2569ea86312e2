package comparand.reference.format;

import comparand.reference.Field;
import comparand.reference.Reference;
import java.util.Collection;
import java.util.regex.Pattern;

/** References as RIS, one line a tag, lines ended by carriage return and line feed as the specification asks. */
final class RisWriter {

    static final String PUBMED = "PubMed";

    private static final String END = "\r\n";
    private static final Pattern RANGE = Pattern.compile("([^-]+)-([^-]+)");

    private final StringBuilder out = new StringBuilder();
    private final Reference reference;

    private RisWriter(Reference reference) {
        this.reference = reference;
    }

    static String text(Collection<Reference> references) {
        var out = new StringBuilder();
        references.forEach(r -> out.append(new RisWriter(r).record()));
        return out.toString();
    }

    private String record() {
        var type = reference.type();
        boolean isWhole = RisTypes.isWhole(type);
        var unknown = reference.kept(ReferenceFormat.RIS.word(), "TY");
        line("TY", type.equals("document") && !unknown.isEmpty() ? unknown.get(0) : RisTypes.word(type));
        line("TI", reference.title());
        reference.authors().forEach(a -> line("AU", CommaName.text(a)));
        reference.editors().forEach(a -> line("ED", CommaName.text(a)));
        date();
        line(isWhole ? "T2" : "T3", Field.COLLECTION_TITLE);
        if (!isWhole) {
            line("T2", Field.CONTAINER_TITLE);
            line("J2", Field.CONTAINER_TITLE_SHORT);
        }
        line("VL", Field.VOLUME);
        line("IS", RisTypes.isNumbered(type) ? Field.NUMBER : Field.ISSUE);
        reference.field(Field.PAGE).ifPresent(this::pages);
        line("ET", Field.EDITION);
        line("PB", Field.PUBLISHER);
        line("CY", Field.PUBLISHER_PLACE);
        line("LA", Field.LANGUAGE);
        line("SN", Field.ISSN);
        line("SN", Field.ISBN);
        line("DO", Field.DOI);
        reference.field(Field.PMID).ifPresent(p -> {
            line("AN", p);
            line("DB", PUBMED);
        });
        line("C2", Field.PMCID);
        line("UR", Field.URL);
        reference.notice().ifPresent(n -> line("N1", StatusNote.of(n)));
        reference.kept().stream()
                .filter(k -> k.format().equals(ReferenceFormat.RIS.word()))
                .filter(k -> k.tag().matches("[A-Z][A-Z0-9]") && !k.tag().matches("TY|ER|PY|Y1|DA"))
                .forEach(k -> k.texts().forEach(t -> line(k.tag(), t)));
        return out.append("ER  - ").append(END).append(END).toString();
    }

    /** What a file said of the date in its own way is given back that way. */
    private void date() {
        var format = ReferenceFormat.RIS.word();
        var year = reference.kept(format, "PY").stream().findFirst();
        var first = reference.kept(format, "Y1").stream().findFirst();
        var day = reference.kept(format, "DA").stream().findFirst();
        year.ifPresent(y -> line("PY", y));
        first.ifPresent(y -> line("Y1", y));
        if (year.isEmpty() && first.isEmpty()) {
            reference.year().ifPresent(y -> line("PY", Integer.toString(y)));
        }
        day.or(() -> reference.issued().filter(d -> d.text().length() > 4).map(RisDates::text))
                .ifPresent(d -> line("DA", d));
    }

    private void pages(String page) {
        var range = RANGE.matcher(page);
        if (range.matches()) {
            line("SP", range.group(1));
            line("EP", range.group(2));
        } else {
            line("SP", page);
        }
    }

    private void line(String tag, Field field) {
        reference.field(field).ifPresent(text -> line(tag, text));
    }

    private void line(String tag, String text) {
        out.append(tag).append("  - ").append(text).append(END);
    }
}
