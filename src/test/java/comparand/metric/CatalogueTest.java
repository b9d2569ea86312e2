package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A metric enters the catalogue with a source and, if it has a formula, with worked values that come out. */
class CatalogueTest {

    @TestFactory
    Stream<DynamicTest> everyWorkedValueIsReproducedToItsPrintedDigits() {
        return Catalogue.shipped().all().stream()
                .flatMap(m -> m.worked().stream()
                        .map(w -> dynamicTest(m.id() + " is " + w.result() + " (" + w.citation() + ")", () -> {
                            double computed = computed(m, w);
                            assertThat(computed)
                                    .isCloseTo(
                                            w.result().in(m.unit()),
                                            within(w.result().halfUnitIn(m.unit()) * (1 + 1e-9)));
                        })));
    }

    @TestFactory
    Stream<DynamicTest> everyMetricIsWhole() {
        return Catalogue.shipped().all().stream()
                .map(m -> dynamicTest(m.id(), () -> {
                    assertThat(m.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
                    assertThat(m.citations()).isNotEmpty();
                    assertThat(m.derivations().isEmpty()).isEqualTo(m.worked().isEmpty());
                    assertThat(m.possible().low())
                            .isLessThanOrEqualTo(m.plausible().low());
                    assertThat(m.possible().high())
                            .isGreaterThanOrEqualTo(m.plausible().high());
                    assertThat(m.conditions().stream().map(u -> u.condition().id()))
                            .doesNotHaveDuplicates();
                    m.derivations().stream()
                            .filter(d -> !d.inputs().isEmpty())
                            .forEach(d -> assertThat(d.inputs().stream().map(Input::symbol))
                                    .allSatisfy(s -> assertThat(d.formula()).contains(s)));
                    if (m.nature() == Nature.MEASURED && m.better() != Better.NEITHER) {
                        assertThat(m.conditions())
                                .as("a device metric that is measured depends on something")
                                .anyMatch(u -> u.role() == Role.DECIDES);
                    }
                    m.conditions().forEach(u -> {
                        boolean claims = u.influence().more() == Effect.RAISES
                                || u.influence().more() == Effect.LOWERS
                                || !u.influence().instead().isEmpty();
                        assertThat(claims && u.influence().because().isBlank())
                                .as(u.condition().id() + ": a direction has a reason")
                                .isFalse();
                        assertThat(u.condition().words())
                                .containsAll(u.influence().instead().keySet());
                    });
                }));
    }

    @Test
    void theBenchPartOfTheDemoIsCovered() {
        assertThat(Catalogue.shipped().ids())
                .contains(
                        "pressure-drop",
                        "resistance",
                        "performance-factor",
                        "oxygen-transfer",
                        "carbon-dioxide-transfer",
                        "oxygen-transfer-per-membrane-area",
                        "carbon-dioxide-transfer-per-membrane-area",
                        "normalised-index-of-haemolysis",
                        "priming-volume",
                        "membrane-area",
                        "bubble-count-reduction",
                        "bubble-volume-reduction");
    }

    @Test
    void oneQuantityHasOneUnitDimensionWhereverFormulasAskForIt() {
        var seen = new HashMap<String, Input>();
        Catalogue.shipped().all().stream()
                .flatMap(m -> m.derivations().stream())
                .flatMap(d -> d.inputs().stream())
                .forEach(i -> {
                    var first = seen.putIfAbsent(i.id(), i);
                    if (first != null) {
                        assertThat(i.unit().convertsTo(first.unit())).as(i.id()).isTrue();
                    }
                    Catalogue.shipped()
                            .condition(i.id())
                            .flatMap(Condition::unit)
                            .ifPresent(u -> assertThat(i.unit().convertsTo(u))
                                    .as(i.id())
                                    .isTrue());
                    Catalogue.shipped()
                            .find(i.id())
                            .ifPresent(m -> assertThat(m.unit().convertsTo(i.unit()))
                                    .as(i.id())
                                    .isTrue());
                });
    }

    @TestFactory
    Stream<DynamicTest> everyVariantConversionThereAndBackIsTheSame() {
        return Catalogue.shipped().all().stream()
                .flatMap(m -> m.definition().stream())
                .flatMap(a -> a.fold(c -> c.conversions().stream().map(v -> there(c, v)), p -> Stream.empty()));
    }

    private static DynamicTest there(Aspect.Choice choice, VariantConversion conversion) {
        return dynamicTest(choice.id() + ": " + conversion.from() + " to " + conversion.to(), () -> {
            var back = choice.conversion(conversion.to(), conversion.from());
            assertThat(back).as("there is a way back").isPresent();
            var numbers = new HashMap<String, Double>();
            conversion.needs().forEach(i -> numbers.put(i.id(), 30.0));
            numbers.put(VariantConversion.VALUE, 7.5);
            double there = conversion.computation().of(new Inputs(numbers, Definition.NONE));
            numbers.put(VariantConversion.VALUE, there);
            assertThat(back.get().computation().of(new Inputs(numbers, Definition.NONE)))
                    .isCloseTo(7.5, within(1e-12));
            numbers.put(VariantConversion.VALUE, 15.0);
            assertThat(conversion.computation().of(new Inputs(numbers, Definition.NONE)))
                    .as("variants are proportional")
                    .isCloseTo(2 * there, within(1e-12));
        });
    }

    @Test
    void aCardThatIsNotWholeIsRefused() {
        assertThatThrownBy(() -> Metric.named("m", "m").symbol("m").meaning("m").build())
                .hasMessageContaining("citation");
        assertThatThrownBy(() -> Metric.named("m", "m")
                        .cites(Citation.commonPractice("x"))
                        .build())
                .hasMessageContaining("symbol");
        assertThatThrownBy(() -> Metric.named("m", "m")
                        .symbol("m")
                        .meaning("m")
                        .cites(Citation.commonPractice("x"))
                        .derived(new Derivation(
                                "a",
                                List.of(Input.of("a", "a", "a", "1")),
                                Definition.NONE,
                                Citation.derived("x"),
                                in -> 1))
                        .build())
                .hasMessageContaining("worked value");
        assertThatThrownBy(() -> Metric.named("m", "m")
                        .symbol("m")
                        .meaning("m")
                        .cites(Citation.commonPractice("x"))
                        .interpolatesOver(Conditions.BLOOD_FLOW)
                        .build())
                .hasMessageContaining("blood-flow");
    }

    /** By the way whose variant is worked, and among several by the one that takes the most of what is given. */
    private static double computed(Metric metric, WorkedValue worked) {
        var definition = new TreeMap<>(metric.standardDefinition().aspects());
        definition.putAll(worked.definition().aspects());
        var wanted = new Definition(definition);
        var way = metric.derivations().stream()
                .filter(d -> d.gives().aspects().entrySet().stream()
                        .allMatch(e -> e.getValue().equals(definition.get(e.getKey()))))
                .filter(d -> d.inputs().stream().allMatch(i -> worked.inputs().containsKey(i.id())))
                .max(Comparator.comparingInt(d -> d.inputs().size()))
                .orElseThrow();
        int n = worked.inputs().keySet().stream()
                .mapToInt(id -> worked.rows(id).size())
                .max()
                .orElse(1);
        var rows = new ArrayList<Map<String, Double>>();
        for (int row = 0; row < n; row++) {
            var numbers = new HashMap<String, Double>();
            for (var input : way.inputs()) {
                numbers.put(input.id(), worked.rows(input.id()).get(row).in(input.unit()));
            }
            rows.add(numbers);
        }
        return Computed.gathered(way, rows, wanted);
    }
}
