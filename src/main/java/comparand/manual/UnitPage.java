package comparand.manual;

import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import comparand.unit.UnitRow;
import java.util.ArrayList;
import java.util.List;

/** Every unit that can be written, and every spelling. */
final class UnitPage {

    static final String PATH = "units.html";

    private UnitPage() {}

    static Page page() {
        var out = new Html();
        var terms = new ArrayList<Page.Term>();
        out.p(
                "Write a unit as the source prints it. What is read is the whole of the table below, with prefixes where they are"
                        + " allowed, multiplied by `·` or `.`, divided by `/`, raised by a digit or a superscript: `mL/min/m²`, `mmHg·min/L`,"
                        + " `mg/100 L`, `×10⁹/L`. Factors are exact. A bare number is written without a unit, in a mapping as `\"1\"`.");
        out.h2("Spellings of the trade");
        out.table(
                "Spellings of the trade",
                List.of("Spelling", "Read as", "Dimension"),
                TradeSpelling.spellings().entrySet().stream()
                        .map(e -> {
                            var id = "spelling-" + code(e.getKey());
                            e.getValue().forEach(s -> terms.add(new Page.Term(s, id)));
                            return Html.cells(
                                    "<span id=\"%s\">%s</span>"
                                            .formatted(
                                                    id,
                                                    String.join(
                                                            ", ",
                                                            e.getValue().stream()
                                                                    .map(Html::code)
                                                                    .toList())),
                                    Html.code(e.getKey()),
                                    Html.text(Unit.of(e.getValue().get(0))
                                            .dimension()
                                            .toString()));
                        })
                        .toList());
        out.h2("Units");
        out.p("Codes of UCUM, an open standard of units; letters are as written, since `Mg` is no `mg`.");
        out.table(
                "Units",
                List.of("Code", "Is", "Takes prefixes"),
                UnitRow.all().stream()
                        .map(r -> {
                            terms.add(new Page.Term(r.code(), "unit-" + code(r.code())));
                            return Html.cells(
                                    "<code id=\"unit-%s\">%s</code>".formatted(code(r.code()), Html.text(r.code())),
                                    r.equals().isEmpty() ? "a base unit" : Html.text(r.equals()),
                                    r.takesPrefixes() ? "yes" : "no");
                        })
                        .toList());
        out.h2("Prefixes");
        out.p(String.join(
                        ", ",
                        UnitRow.prefixes().stream().map(p -> "`" + p + "`").toList()) + "; `µ` is read as `u`.");
        return new Page(
                PATH, PATH, "Units", "Every unit and every spelling of it that is read.", out.toString(), terms);
    }

    /** An anchor that tells {@code l} from {@code L}, and signs from each other. */
    private static String code(String code) {
        var out = new StringBuilder();
        code.codePoints()
                .forEach(c -> out.append(
                        Character.isLowerCase(c) || Character.isDigit(c)
                                ? Character.toString(c)
                                : "-" + Integer.toHexString(c)));
        return out.toString();
    }
}
