package comparand.write.html;

import java.util.List;
import java.util.stream.Collectors;

/** The scripts of the page, joined into one; without them it is complete, with them it can be explored. */
final class Scripts {

    private static final String FOLDER = "scripts/";

    /** In this order: a file uses what stands in those before it; the last starts the page. */
    private static final List<String> FILES = List.of(
            "rounding.js",
            "words.js",
            "verdict.js",
            "margins.js",
            "holm.js",
            "tolerance.js",
            "standing.js",
            "sentences.js",
            "judging.js",
            "question-lines.js",
            "fragment.js",
            "differences.js",
            "earlier.js",
            "csv.js",
            "copied-row.js",
            "elements.js",
            "dialogs.js",
            "why-dialog.js",
            "strip.js",
            "pair-rows.js",
            "grid-rows.js",
            "tables.js",
            "long-tables.js",
            "margin-control.js",
            "tolerance-control.js",
            "view-control.js",
            "evidence-control.js",
            "banner.js",
            "earlier-view.js",
            "question-sections.js",
            "ladders.js",
            "explorer.js",
            "start.js");

    private Scripts() {}

    static String joined() {
        return joined(FILES);
    }

    /** @throws IllegalStateException if the program lacks one of them, or it could not stand within a script element */
    static String joined(List<String> files) {
        return files.stream().map(Scripts::text).collect(Collectors.joining());
    }

    private static String text(String name) {
        var text = Resources.text(FOLDER + name);
        // HTML Living Standard 4.12.1.3: what a script element may not hold
        if (text.matches("(?is).*(<!--|<script|</script).*")) {
            throw new IllegalStateException(name + " would end its script element");
        }
        return text;
    }
}
