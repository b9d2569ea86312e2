package comparand.manual;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeMap;

/** Every text of the documents by its key, for who wants another in its place. */
final class TextsPage {

    static final String PATH = "texts.html";

    private TextsPage() {}

    static Page page() {
        var groups = new LinkedHashMap<String, List<List<String>>>();
        new TreeMap<>(WordPages.words())
                .forEach((key, text) -> groups.computeIfAbsent(
                                key.toString().replaceAll("[.].*", ""), g -> new ArrayList<>())
                        .add(Html.cells(Html.code(key.toString()), Html.text(text.toString()))));
        var out = new Html();
        out.p(
                "`wording:` of a template puts a text of yours in the place of any of these, by its key. A word in braces is put in by"
                        + " the run; use no others than the text has. Which keys a document asks for, it shows by its own sentences.");
        out.pre("wording:\n  verdict.NOT_SETTLED: \"open: up to {high} {unit} higher or {low} {unit} lower\"");
        groups.forEach((group, rows) ->
                out.h2(group, "group-" + Html.anchor(group)).table("Texts of " + group, List.of("Key", "Text"), rows));
        return new Page(
                PATH,
                PATH,
                "Texts",
                "Every text of the documents, by its key.",
                out.toString(),
                List.of(new Page.Term("wording", "")));
    }
}
