package comparand.compose.brief;

import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.result.RequestResult;
import comparand.document.result.RequestResult.ItemResult;
import comparand.document.result.ResultSet;
import comparand.document.result.SourceResult;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Letters to makers and authors for what their documents do not say: one a recipient, each fact once. */
public final class Letters {

    /** The folder they are written to. */
    public static final String FOLDER = "requests/";

    private final Run run;
    private final Edition edition;
    private final ResultSet results;
    private final Look look;

    public Letters(Run run, Edition edition, ResultSet results, Look look) {
        this.run = run;
        this.edition = edition;
        this.results = results;
        this.look = look;
    }

    public List<Document> documents() {
        return results.requests().stream().map(this::letter).toList();
    }

    private Document letter(RequestResult request) {
        var dossier = run.dossier();
        var blocks = new ArrayList<Block>();
        body(blocks, say("letter.from", "by", dossier.preparedBy().value()));
        body(blocks, say("letter.to", "to", request.to()));
        body(blocks, say("letter.date", "date", dossier.asOf().value().toString()));
        edition.marks().forEach(m -> body(blocks, say("letter.says.mark", "mark", m)));
        body(
                blocks,
                say(
                        "letter.opening",
                        "title",
                        dossier.title().value(),
                        "question",
                        dossier.question().value()));
        body(blocks, say("letter.says.documents", "documents", documents(request)));
        dossier.interests()
                .map(Located::value)
                .ifPresent(i -> body(blocks, say("letter.says.interests", "interests", i)));
        body(blocks, say("letter.says.ask"));
        for (int i = 0; i < request.items().size(); i++) {
            item(blocks, i + 1, request.items().get(i));
        }
        body(blocks, say("letter.says.form"));
        body(blocks, say("letter.when"));
        body(blocks, say("letter.answer"));
        body(blocks, say("letter.close", "by", dossier.preparedBy().value()));
        blocks.add(new Paragraph(edition.imprint(" · "), Style.SMALL));
        edition.cautions().forEach(c -> blocks.add(new Paragraph(c, Style.SMALL)));
        return new Document(
                FOLDER + request.id(),
                Document.Form.LETTER,
                edition,
                look,
                List.of(new Section(
                        "letter", say("letter.subject", "title", dossier.title().value()), blocks)));
    }

    private String documents(RequestResult request) {
        return results.sources().stream()
                .filter(s -> request.sources().contains(s.number()))
                .map(Letters::named)
                .collect(Collectors.joining("; "));
    }

    private static String named(SourceResult source) {
        var reference = source.reference().replaceFirst("\\.$", "");
        return source.revision().map(r -> reference + ", " + r).orElse(reference);
    }

    private void item(List<Block> blocks, int number, ItemResult item) {
        blocks.add(new Heading(say("letter.item", "number", String.valueOf(number), "subject", item.subject())));
        if (!item.printed().isEmpty()) {
            body(blocks, say("letter.printed", "printed", item.printed(), "place", item.place()));
        } else if (!item.place().isEmpty()) {
            body(blocks, say("letter.place", "place", item.place()));
        }
        if (!item.quote().isEmpty()) {
            body(blocks, say("letter.quote", "quote", item.quote()));
        }
        item.wanted()
                .forEach(w -> blocks.add(
                        new Paragraph(say("letter.wanted", "what", w.what(), "form", w.form()), Style.POINT)));
        body(blocks, say("letter.why", "why", item.why()));
    }

    private static void body(List<Block> blocks, String text) {
        blocks.add(new Paragraph(text, Style.BODY));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
