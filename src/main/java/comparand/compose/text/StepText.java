package comparand.compose.text;

import comparand.model.Step;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The facts of a step, with names, words and quantities in the language of the document; quotations stay as they are. */
final class StepText {

    private static final String AND = " and ";

    private final Words words;
    private final Terms terms;

    StepText(Words words) {
        this.words = words;
        this.terms = new Terms(words);
    }

    Step said(Step step) {
        var facts = new TreeMap<String, String>();
        step.facts().forEach((name, text) -> facts.put(name, said(step.kind(), name, text)));
        return new Step(step.kind(), step.formula(), facts);
    }

    private String said(Step.Kind kind, String name, String text) {
        return switch (name) {
            case "place" -> terms.place(text);
            case "quote" -> words.term("stated", text);
            case "level" -> words.term("level", text);
            case "kind" -> words.term("spread", text);
            case "aspect", "condition", "over", "inputs" -> terms.phrases(text);
            case "part" -> terms.variant(text);
            case "amount", "full", "pressure" -> terms.quantity(text);
            case "at" -> terms.phrases(text);
            case "was" -> terms.quantity(text);
            case "between" -> text.replace(AND, terms.between("and"));
            case "axis" -> text.replace(" at ", terms.between("at"));
            case "members" -> words.term("stated", text);
            case "se" -> text.equals("none") ? words.say("none") : text;
            case "result" -> text.replace(" to ", terms.between("to"));
            case "source" -> kind == Step.Kind.PARTS ? terms.place(text) : text;
            case "from", "to" ->
                kind == Step.Kind.VARIANT ? terms.variant(text) : kind == Step.Kind.UNIT ? text : terms.quantity(text);
            default -> text;
        };
    }

    /** The words within a formula, and the decimal signs of its constants. */
    String formula(String letters) {
        var text = terms.signed(letters);
        for (var word : words.named("formula")) {
            text = Pattern.compile("(?<![\\p{L}_])" + Pattern.quote(word) + "(?![\\p{L}_])")
                    .matcher(text)
                    .replaceAll(Matcher.quoteReplacement(words.term("formula", word)));
        }
        return text;
    }
}
