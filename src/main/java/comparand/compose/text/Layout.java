package comparand.compose.text;

import comparand.diag.Located;
import comparand.document.Look;
import comparand.model.template.LookRecord;
import comparand.model.template.Templates;
import java.util.Optional;

/** How a document is to look, from its template. */
public final class Layout {

    private Layout() {}

    /** The look a template asks for, the tool's own where it asks for nothing. */
    public static Look of(Optional<LookRecord> asked, Optional<Located<String>> slides, Templates templates) {
        var plain = Look.PLAIN;
        return new Look(
                asked.flatMap(LookRecord::house).map(Located::value).orElse(plain.house()),
                asked.flatMap(LookRecord::paper)
                        .map(p -> switch (p.value()) {
                            case A4 -> Look.Paper.A4;
                            case LETTER -> Look.Paper.LETTER;
                        })
                        .orElse(plain.paper()),
                asked.flatMap(LookRecord::face).map(Located::value).orElse(plain.face()),
                asked.flatMap(LookRecord::fonts)
                        .map(f -> new Look.Fonts(content(f.regular(), templates), content(f.strong(), templates))),
                slides.map(s -> content(s, templates)));
    }

    private static Look.Content content(Located<String> name, Templates templates) {
        return new Look.Content(
                name.value(),
                templates
                        .file(name.value())
                        .orElseThrow(() -> new IllegalArgumentException("nobody read " + name.value())));
    }
}
