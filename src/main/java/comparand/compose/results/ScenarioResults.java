package comparand.compose.results;

import comparand.compose.text.AnswerText;
import comparand.compose.text.Run;
import comparand.document.result.ScenarioResult;
import comparand.document.result.ScenarioResult.ChangeResult;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.ScenarioOutcome;
import comparand.model.ScenarioOutcome.Change;
import comparand.model.ScenarioOutcome.TogetherChange;
import comparand.model.SourcesTogether;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What changes under each scenario, as data. */
public final class ScenarioResults {

    private final Run run;

    public ScenarioResults(Run run) {
        this.run = run;
    }

    public List<ScenarioResult> results() {
        return run.compared().scenarios().stream().map(this::of).toList();
    }

    private ScenarioResult of(ScenarioOutcome outcome) {
        int leftOut = (int)
                outcome.changes().stream().filter(c -> c.after().isEmpty()).count();
        var changes = new ArrayList<ChangeResult>();
        outcome.changes().forEach(c -> changes.add(of(c)));
        outcome.together().forEach(c -> changes.add(of(c)));
        return new ScenarioResult(
                outcome.scenario().suppose().value(),
                outcome.scenario().because().value(),
                outcome.compared() - leftOut,
                outcome.changes().size() - leftOut,
                leftOut,
                changes);
    }

    private ChangeResult of(Change change) {
        var pairing = change.before().pairing();
        return new ChangeResult(
                pairing.ours().metric().id(),
                pairing.ours().id(),
                List.of(pairing.theirs().id()),
                beside(pairing.theirs()),
                shown(change.before()),
                run.answers().of(change.before()),
                change.after().flatMap(this::shown),
                change.after().map(run.answers()::of));
    }

    private ChangeResult of(TogetherChange change) {
        return new ChangeResult(
                change.before().ours().metric().id(),
                change.before().ours().id(),
                change.before().each().stream()
                        .map(c -> c.pairing().theirs().id())
                        .toList(),
                change.before().each().stream()
                        .map(c -> beside(c.pairing().theirs()))
                        .collect(Collectors.joining(", ")),
                shown(change.before()),
                run.together().of(change.before()).get(0),
                change.after().flatMap(this::shown),
                change.after().map(t -> run.together().of(t).get(0)));
    }

    private String beside(Comparand theirs) {
        return theirs.isLocal()
                ? run.names().brief(theirs.device())
                : run.names().locator(theirs);
    }

    private Optional<String> shown(Comparison comparison) {
        return AnswerText.tested(comparison.answer())
                .map(t -> run.figures().difference(comparison.pairing().ours().metric(), t));
    }

    private Optional<String> shown(SourcesTogether together) {
        return together.fold(
                two -> Optional.empty(), several -> Optional.of(run.together().difference(several)));
    }
}
