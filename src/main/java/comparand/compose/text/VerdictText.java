package comparand.compose.text;

import comparand.metric.Catalogue;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Subject;

/** What was found of a condition, with its texts in the language of the document. */
final class VerdictText {

    private static final String QUANTITY = "quantity";
    private static final String LABELLED = ", labelled ";

    private final Words words;
    private final Terms terms;
    private final Catalogue catalogue;

    VerdictText(Words words, Catalogue catalogue) {
        this.words = words;
        this.terms = new Terms(words);
        this.catalogue = catalogue;
    }

    ConditionVerdict said(ConditionVerdict v) {
        return new ConditionVerdict(
                v.of(),
                v.id(),
                terms.named(v.name()),
                words.term("short", v.shortName()),
                v.role(),
                v.mark(),
                side(v, v.ours()),
                side(v, v.theirs()),
                terms.quantity(v.tolerance()),
                v.effect(),
                words.term("because", v.because()),
                v.latitude());
    }

    private String side(ConditionVerdict v, String text) {
        if (v.of() == Subject.CONDITION) {
            return terms.circumstance(catalogue.condition(v.id()), text);
        }
        if (v.of() == Subject.LABEL) {
            return label(text);
        }
        if (v.of() == Subject.UNIT) {
            return form(text);
        }
        return v.id().equals(QUANTITY) ? terms.named(text) : terms.variant(text);
    }

    private String label(String text) {
        int at = text.indexOf(LABELLED);
        return at < 0
                ? words.term("stated", text)
                : terms.quantity(text.substring(0, at)) + "," + terms.between("labelled")
                        + terms.quantity(text.substring(at + LABELLED.length()));
    }

    /** A unit and a printed quantity stay as printed; the form of a summary has a name. */
    private String form(String text) {
        return words.term("form", text);
    }
}
