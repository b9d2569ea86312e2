package comparand.compose.table;

import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.library.QuestionRecord;

/** What is asked, the margin that was set beforehand, and why that one. */
public final class QuestionLead {

    private QuestionLead() {}

    /** As a paragraph. */
    public static String of(Run run, QuestionRecord question, Metric metric) {
        var words = run.words();
        var better = words.say("better." + run.better(question, metric).name());
        return question.margin().flatMap(m -> m.value().amount()).isPresent()
                ? words.say(
                        "margin-line",
                        "asks",
                        question.asks().value(),
                        "margin",
                        run.terms()
                                .quantity(
                                        question.margin().orElseThrow().value().toString())
                                .replace(' ', '\u00a0'),
                        "reason",
                        question.reason().map(Located::value).orElse(words.say("no-reason")),
                        "better",
                        better)
                : words.say("margin-line.none", "asks", question.asks().value(), "better", better);
    }
}
