package comparand.compose.talk;

import comparand.compose.results.ScreeningText;
import comparand.compose.text.Words;
import comparand.document.result.ScreeningResult;
import comparand.document.talk.Part;
import comparand.document.talk.Part.Box;
import java.util.ArrayList;
import java.util.List;

/** The flow from search to report in boxes from left to right, as the talk shows its own rows of data. */
final class ScreeningSieve {

    private final Words words;
    private final ScreeningText text;
    private final ScreeningResult.FlowResult flow;

    ScreeningSieve(Words words, ScreeningResult screening) {
        this.words = words;
        this.text = new ScreeningText(words);
        this.flow = screening.flow();
    }

    Part part() {
        return new Part.Sieve(List.of(
                box("flow.identified", flow.identified(), left("flow.duplicates", flow.duplicates())),
                box("flow.screened", flow.screened(), left("flow.excluded", flow.excluded())),
                box("flow.sought", flow.sought(), left("flow.not-retrieved", flow.notRetrieved())),
                box("flow.assessed", flow.assessed(), reasons()),
                new Box(
                        String.valueOf(flow.reports()),
                        words.say("flow.reports") + "\n" + text.count("flow.studies", flow.studies()),
                        "")));
    }

    private Box box(String what, int n, String dropped) {
        return new Box(String.valueOf(n), words.say(what), dropped);
    }

    private String left(String what, int n) {
        return text.count(what, n);
    }

    private String reasons() {
        var said = new ArrayList<String>();
        said.add(text.count("flow.left-out", flow.excludedAfterReading()));
        flow.reasons().forEach(r -> said.add(text.counted(r.reason(), r.reports())));
        return String.join("\n", said);
    }
}
