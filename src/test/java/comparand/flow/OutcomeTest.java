package comparand.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.diag.Diagnostic;
import comparand.diag.Severity;
import comparand.diag.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The laws by which stages are joined: no finding is lost, and nothing goes on behind a STOP. */
class OutcomeTest {

    @Property
    void aValueIsHandedOnOnlyIfNoFindingStops(@ForAll int value, @ForAll("lists") List<Diagnostic> findings) {
        var outcome = Outcome.of(value, findings);

        boolean stops = findings.stream().anyMatch(Diagnostic::stops);
        assertThat(value(outcome)).isEqualTo(stops ? Optional.empty() : Optional.of(value));
        assertThat(outcome.findings()).isEqualTo(findings);
    }

    @Property
    void findingsOfBothStagesAreGatheredInTheOrderTheyWereMade(
            @ForAll int value,
            @ForAll("listsThatGoOn") List<Diagnostic> earlier,
            @ForAll("lists") List<Diagnostic> later) {
        var joined = Outcome.of(value, earlier).then(v -> Outcome.of(v, later));

        assertThat(joined.findings())
                .isEqualTo(Stream.concat(earlier.stream(), later.stream()).toList());
    }

    @Property
    void behindAStopNoStageRuns(@ForAll("listsThatStop") List<Diagnostic> findings) {
        var ran = new ArrayList<String>();
        Outcome<Integer> stopped = Outcome.stopped(findings);

        var then = stopped.then(v -> {
            ran.add("then");
            return Outcome.of(v);
        });
        var map = stopped.map(v -> {
            ran.add("map");
            return v;
        });

        assertThat(ran).isEmpty();
        assertThat(then.findings()).isEqualTo(findings);
        assertThat(map.findings()).isEqualTo(findings);
        assertThat(value(then)).isEmpty();
        assertThat(value(map)).isEmpty();
    }

    @Property
    void aStopOfALaterStageTakesTheValueAndKeepsWhatWasSaid(
            @ForAll("listsThatGoOn") List<Diagnostic> earlier, @ForAll("listsThatStop") List<Diagnostic> later) {
        Outcome<Integer> joined = Outcome.of(1, earlier).then(v -> Outcome.stopped(later));

        assertThat(value(joined)).isEmpty();
        assertThat(joined.findings()).containsAll(earlier).endsWith(later.toArray(Diagnostic[]::new));
    }

    @Property
    void aStageWithNothingToDoChangesNothing(@ForAll("outcomes") Outcome<Integer> outcome) {
        assertThat(outcome.then(Outcome::of)).isEqualTo(outcome);
        assertThat(outcome.map(Function.identity())).isEqualTo(outcome);
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void aPlainValueHandedOnIsTheNextStageAlone(@ForAll int value, @ForAll("stages") Stage<Integer, Integer> next) {
        assertThat(Outcome.of(value).then(next::run)).isEqualTo(next.run(value));
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void howStagesAreBracketedMakesNoDifference(
            @ForAll("outcomes") Outcome<Integer> outcome,
            @ForAll("stages") Stage<Integer, Integer> second,
            @ForAll("stages") Stage<Integer, Integer> third) {
        var oneByOne = outcome.then(second::run).then(third::run);
        var together = outcome.then(v -> second.run(v).then(third::run));

        assertThat(oneByOne).isEqualTo(together);
        assertThat(outcome.then(second.then(third)::run)).isEqualTo(oneByOne);
    }

    @Property
    void mappingTwiceIsMappingByBoth(@ForAll("outcomes") Outcome<Integer> outcome) {
        Function<Integer, Long> half = v -> v / 2L;
        Function<Long, String> text = String::valueOf;

        assertThat(outcome.map(half).map(text)).isEqualTo(outcome.map(half.andThen(text)));
    }

    @Property
    void mappingIsGoingOnWithAPlainValue(@ForAll("outcomes") Outcome<Integer> outcome) {
        assertThat(outcome.map(v -> v + "!")).isEqualTo(outcome.then(v -> Outcome.of(v + "!")));
    }

    @Property
    void foldingTakesOneWayAndHandsOverAllFindings(@ForAll("outcomes") Outcome<Integer> outcome) {
        var seen = outcome.fold((v, findings) -> findings, findings -> findings);

        assertThat(seen).isEqualTo(outcome.findings());
        assertThat(outcome.<Boolean>fold((v, f) -> true, f -> false))
                .isEqualTo(outcome.findings().stream().noneMatch(Diagnostic::stops));
    }

    @Example
    void aStopCannotBeCarriedAlongWithAValue() {
        assertThatThrownBy(() -> new Outcome.Done<>(1, List.of(finding(Severity.STOP, 1))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void nothingStopsWithoutAReason(@ForAll("listsThatGoOn") List<Diagnostic> findings) {
        assertThatThrownBy(() -> Outcome.stopped(findings)).isInstanceOf(IllegalArgumentException.class);
    }

    @Example
    void findingsAddedToTheListAfterwardsDoNotGetIn() {
        var findings = new ArrayList<>(List.of(finding(Severity.NOTE, 1)));
        var outcome = Outcome.of(1, findings);

        findings.add(finding(Severity.STOP, 2));

        assertThat(outcome.findings()).hasSize(1);
        assertThat(value(outcome)).contains(1);
    }

    @Provide
    Arbitrary<Outcome<Integer>> outcomes() {
        return Combinators.combine(Arbitraries.integers(), lists()).as(Outcome::of);
    }

    /** Stages that add to the number and say something, or stop. */
    @Provide
    Arbitrary<Stage<Integer, Integer>> stages() {
        return Combinators.combine(Arbitraries.integers().between(-9, 9), lists())
                .as((add, findings) -> input -> Outcome.of(input + add, findings));
    }

    @Provide
    Arbitrary<List<Diagnostic>> lists() {
        return Arbitraries.oneOf(listsThatGoOn(), listsThatStop());
    }

    @Provide
    Arbitrary<List<Diagnostic>> listsThatGoOn() {
        return findings(Severity.HOLD, Severity.NOTE).list().ofMaxSize(4);
    }

    @Provide
    Arbitrary<List<Diagnostic>> listsThatStop() {
        return Combinators.combine(listsThatGoOn(), findings(Severity.STOP), listsThatGoOn())
                .as((before, stop, after) -> Stream.of(before, List.of(stop), after)
                        .flatMap(List::stream)
                        .toList());
    }

    private static Arbitrary<Diagnostic> findings(Severity... severities) {
        return Combinators.combine(
                        Arbitraries.of(severities), Arbitraries.integers().between(1, 99))
                .as(OutcomeTest::finding);
    }

    private static Diagnostic finding(Severity severity, int line) {
        return new Diagnostic(severity, "a-code", new Span("a.yaml", line, 1, 1), "m", "w", "f");
    }

    private static <T> Optional<T> value(Outcome<T> outcome) {
        return outcome.fold((v, findings) -> Optional.of(v), findings -> Optional.empty());
    }
}
