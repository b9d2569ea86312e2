package comparand.compose.page;

import comparand.compose.results.AnswerKind;
import comparand.compose.text.AnswerText;
import comparand.compose.text.Cells;
import comparand.compose.text.Kebab;
import comparand.compose.text.Remarks;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.diag.Located;
import comparand.document.exploration.PairShown;
import comparand.document.exploration.PairShown.AnswerShown;
import comparand.document.exploration.PairShown.Beside;
import comparand.document.exploration.PairShown.ConditionShown;
import comparand.document.exploration.PairShown.Reading;
import comparand.metric.Role;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Latitude;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.Standing;
import comparand.stat.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pairs with what it takes to judge them under other margins and tolerances. */
final class Pairs {

    private final Run run;
    private final Cells cells;
    private final Ladders ladders;

    Pairs(Run run, Cells cells, Ladders ladders) {
        this.run = run;
        this.cells = cells;
        this.ladders = ladders;
    }

    /** In the order of the rows of the tables. */
    List<PairShown> of(List<Comparison> comparisons) {
        var pairs = new ArrayList<PairShown>();
        comparisons.forEach(c -> pairs.add(pair(pairs.size(), c)));
        return pairs;
    }

    private PairShown pair(int row, Comparison c) {
        var pairing = c.pairing();
        var ours = pairing.ours();
        var theirs = pairing.theirs();
        var step = cells.step(ours);
        return new PairShown(
                pairing.id(),
                row,
                Kebab.of(pairing.purpose()),
                ours.device(),
                run.names().brief(ours.device()),
                step.equals(cells.none()) ? "" : step.shown(),
                cells.against(pairing),
                Explored.source(theirs),
                SummaryText.isRead(theirs),
                pairing.isOfFamily(run.dossier().primary().map(Located::value)),
                ladders.name(ours),
                ladders.name(theirs),
                run.names().locator(ours),
                run.names().locator(theirs),
                pairing.verdicts().stream()
                        .anyMatch(v -> v.of() == ConditionVerdict.Subject.UNIT && v.mark() == Mark.MADE_SAME),
                cells.brief(ours),
                beside(theirs),
                run.conditions().said(pairing).stream().map(Pairs::condition).toList(),
                run.remarks().centres().means(pairing).stream().toList(),
                answer(c));
    }

    private Beside beside(Comparand theirs) {
        return new Beside(
                cells.briefBeside(theirs, Standing.SAME),
                cells.briefBeside(theirs, Standing.CONDITIONS_DIFFER),
                cells.briefBeside(theirs, Standing.NOT_REPORTED),
                cells.briefBeside(theirs, Standing.DIFFERENT_QUANTITY));
    }

    private static ConditionShown condition(ConditionVerdict v) {
        return new ConditionShown(
                Kebab.of(v.of()),
                v.id(),
                v.name(),
                v.shortName(),
                v.role() == Role.QUALIFIES ? "qualifies" : "decides",
                v.mark().name(),
                v.ours(),
                v.theirs(),
                v.tolerance(),
                Kebab.of(v.latitude().map(Latitude::beyond).orElse(v.effect())),
                v.because(),
                v.latitude().map(Latitude::ours).map(Pairs::ends),
                v.latitude().map(Latitude::theirs).map(Pairs::ends),
                v.latitude().map(l -> l.within() == Mark.MADE_SAME).orElse(v.mark() == Mark.MADE_SAME));
    }

    private static List<Double> ends(Interval i) {
        return List.of(i.low(), i.high());
    }

    private AnswerShown answer(Comparison c) {
        var answer = c.ifCompared();
        var metric = c.pairing().ours().metric();
        var tested = AnswerText.tested(answer);
        return new AnswerShown(
                AnswerKind.of(answer),
                run.answers().frame(c),
                answer instanceof Answer.EitherReading ? run.answers().frameOfBoth() : "",
                readings(answer),
                tested.map(t -> run.figures().ofDifference(metric, t.interval()))
                        .orElse(0),
                cells.difference(c.pairing(), answer).orElse(""),
                Optional.of(Remarks.wide(c.pairing())).filter(Double::isFinite),
                run.remarks().ofFigures(c, answer),
                run.remarks().volumeBasis(c.pairing()).stream().toList(),
                run.remarks().ifCompared(c.pairing()));
    }

    private static List<Reading> readings(Answer answer) {
        if (answer instanceof Answer.EitherReading e) {
            return List.of(reading(e.asSd()), reading(e.asSe()));
        }
        if (answer instanceof Answer.Nominal n) {
            return List.of(new Reading(n.difference(), n.difference(), n.difference(), Optional.empty()));
        }
        return AnswerText.tested(answer).map(Pairs::reading).stream().toList();
    }

    private static Reading reading(Answer.Tested t) {
        return new Reading(
                t.difference().value(),
                t.interval().low(),
                t.interval().high(),
                Optional.of(t.difference().p()));
    }
}
