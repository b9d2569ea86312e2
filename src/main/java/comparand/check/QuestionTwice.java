package comparand.check;

import comparand.model.library.QuestionRecord;
import java.util.HashSet;

/**
 * What it checks: a dossier that asks about one metric twice.
 *
 * <p>Why it matters: two margins for one metric give two answers.
 *
 * <p>What to write instead: one question per metric.
 */
final class QuestionTwice implements Rule {

    @Override
    public String code() {
        return "question-twice";
    }

    @Override
    public void check(Context library, Findings findings) {
        for (var dossier : library.dossiers()) {
            var seen = new HashSet<String>();
            dossier.questions().stream()
                    .map(QuestionRecord::metric)
                    .filter(m -> !seen.add(m.value()))
                    .forEach(m -> findings.stop(
                            m.span(),
                            "there is a question on `%s` already".formatted(m.value()),
                            "two margins for one metric would give two answers",
                            "keep one of the two"));
        }
    }
}
