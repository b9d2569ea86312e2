package comparand.check;

import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What it checks: a word of judgement in the texts of a dossier, which are printed on every output.
 *
 * <p>Why it matters: a title that says "superior" says more than any interval below it.
 *
 * <p>What to write instead: what was asked, without the answer.
 */
final class VerdictWord implements Rule {

    @Override
    public String code() {
        return "verdict-word";
    }

    private static final Pattern JUDGEMENT = Pattern.compile(
            "(?i)\\b(prove[sdn]?|(superior|inferior)(ity)?(?! vena)|equivalen(t|ce)|identical(ly)?|outperform(s|ed)?"
                    + "|no effects?|negative results?|trends?|significan(t|tly|ce))\\b");

    @Override
    public void check(Context library, Findings findings) {
        for (var dossier : library.dossiers()) {
            Stream.concat(
                            Stream.of(dossier.title(), dossier.question(), dossier.decision()),
                            dossier.questions().stream()
                                    .flatMap(q -> Stream.concat(Stream.of(q.asks()), q.reason().stream())))
                    .forEach(text -> {
                        var m = JUDGEMENT.matcher(text.value());
                        if (m.find()) {
                            findings.note(
                                    text.span(),
                                    "\"%s\" is a word of judgement in a text that is printed on every output"
                                            .formatted(m.group()),
                                    "it says more than the intervals below it can",
                                    "write what is asked, without the answer");
                        }
                    });
        }
    }
}
