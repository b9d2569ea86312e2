package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.metric.Metric;
import comparand.model.Comparison;
import java.util.List;

/** What the floor asks of a slide, each with the backup slide that answers it. */
final class FloorQuestions {

    private final Run run;

    FloorQuestions(Run run) {
        this.run = run;
    }

    /** Of a slide about one metric. */
    List<Asked> of(Metric metric) {
        return List.of(
                new Asked(say("talk.ask.flow"), BackupSlides.CONDITIONS),
                new Asked(say("talk.ask.units"), BackupSlides.HOSPITALS),
                new Asked(say("talk.ask.who"), BackupSlides.trail(metric)),
                new Asked(say("talk.ask.table"), BackupSlides.table(metric)));
    }

    /** Where the numbers of each metric of some pairs come from. */
    List<Asked> trails(List<Comparison> pairs) {
        return pairs.stream()
                .map(c -> c.pairing().ours().metric())
                .distinct()
                .map(m -> new Asked(
                        say(
                                "talk.ask.trail",
                                "metric",
                                ConditionLine.upperFirst(run.terms().metric(m))),
                        BackupSlides.trail(m)))
                .toList();
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
