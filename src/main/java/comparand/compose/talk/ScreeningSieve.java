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

    /** Letters of reasons that stand below a gap between two boxes. */
    private static final int MOST = 150;

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

    /** As many reasons as there is room for; all of them stand in the workbook. */
    private String reasons() {
        var left = text.count("flow.left-out", flow.excludedAfterReading());
        var named = new ArrayList<String>();
        int length = 0;
        for (var r : flow.reasons()) {
            length += r.reason().length();
            if (length > MOST) {
                named.add(words.say("flow.more-reasons"));
                break;
            }
            named.add(words.say("talk.sieve.reason", "reason", r.reason(), "n", String.valueOf(r.reports())));
        }
        return named.isEmpty()
                ? left
                : words.say("flow.left-out-list", "left", left, "reasons", String.join("; ", named));
    }
}
