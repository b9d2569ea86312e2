package comparand.compose.figure;

import comparand.compose.results.ScreeningResults;
import comparand.compose.results.ScreeningText;
import comparand.compose.text.Run;
import comparand.compose.text.Words;
import comparand.document.chart.Diagram;
import comparand.document.chart.Diagram.Card;
import comparand.document.chart.Diagram.Step;
import comparand.document.result.ScreeningResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The way of the records from search to report, with the boxes of the PRISMA 2020 flow diagram (Page et al., BMJ
 * 2021;372:n71, figure 1). What was found in databases and elsewhere went through one screening here, so that there is one
 * way down and not two.
 */
final class ScreeningDiagram {

    private final Words words;
    private final ScreeningText text;
    private final ScreeningResult screening;

    private ScreeningDiagram(Words words, ScreeningResult screening) {
        this.words = words;
        this.text = new ScreeningText(words);
        this.screening = screening;
    }

    static Optional<Diagram> of(Run run) {
        return ScreeningResults.of(run).map(s -> new ScreeningDiagram(run.words(), s).diagram());
    }

    private Diagram diagram() {
        var flow = screening.flow();
        var steps = List.of(
                new Step(words.say("flow.phase.identification"), found(), left("flow.duplicates", flow.duplicates())),
                new Step(
                        words.say("flow.phase.screening"),
                        card("flow.screened", flow.screened()),
                        left("flow.excluded", flow.excluded())),
                new Step("", card("flow.sought", flow.sought()), left("flow.not-retrieved", flow.notRetrieved())),
                new Step("", card("flow.assessed", flow.assessed()), Optional.of(reasons())),
                new Step(
                        words.say("flow.phase.included"),
                        new Card(List.of(
                                text.count("flow.studies", flow.studies()),
                                text.count("flow.reports", flow.reports()))),
                        Optional.empty()));
        return new Diagram(
                "screening",
                words.say("figure.message.screening"),
                alternative(steps),
                steps,
                List.of(words.say("figure.note.screening"), screening.terms()));
    }

    private Card card(String what, int n) {
        return new Card(List.of(text.count(what, n)));
    }

    private Optional<Card> left(String what, int n) {
        return Optional.of(card(what, n));
    }

    /** The sum first, then search by search, where there are several. */
    private Card found() {
        var lines = new ArrayList<String>();
        lines.add(text.count("flow.identified", screening.flow().identified()));
        screening.searches().forEach(s -> lines.add(text.counted(text.place(s), s.records())));
        return new Card(lines);
    }

    private Card reasons() {
        var lines = new ArrayList<String>();
        lines.add(text.count("flow.left-out", screening.flow().excludedAfterReading()));
        screening.flow().reasons().forEach(r -> lines.add(text.counted(r.reason(), r.reports())));
        return new Card(lines);
    }

    /** Every box from top to bottom, each with what leaves there. */
    private String alternative(List<Step> steps) {
        var said = new ArrayList<String>();
        said.add(words.say("figure.message.screening"));
        for (var step : steps) {
            var boxes = Stream.concat(Stream.of(step.card()), step.leaves().stream())
                    .map(c -> String.join("; ", c.lines()))
                    .toList();
            said.add(words.say("figure.alt.box", "box", String.join(" → ", boxes)));
        }
        return String.join(" ", said);
    }
}
