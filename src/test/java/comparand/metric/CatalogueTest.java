package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.HashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** All metrics a library may speak of, and what is found in them by name. */
class CatalogueTest {

    private static Metric declared(String id, Condition condition) {
        return Metric.named(id, id)
                .symbol("x")
                .meaning("Declared by the author of a library")
                .condition(new ConditionUse(condition, Role.DECIDES, Tolerance.EQUAL, Influence.UNKNOWN))
                .cites(Citation.commonPractice("x"))
                .build();
    }

    @Test
    void whatALibraryDeclaresStandsAfterWhatIsShipped() {
        var humidity = Condition.number("room-humidity", "humidity of the room", "humidity", "%");
        var more = Catalogue.shipped().with(List.of(declared("second-last", humidity), declared("last", humidity)));

        assertThat(more.ids()).startsWith("pressure-drop").endsWith("second-last", "last");
        assertThat(more.ids()).hasSize(Catalogue.shipped().ids().size() + 2);
        assertThat(more.condition("room-humidity")).contains(humidity);
        assertThat(more.conditions()).containsValue(humidity);
        assertThat(Catalogue.shipped().condition("room-humidity")).isEmpty();
        assertThat(Catalogue.shipped().find("last")).isEmpty();
        assertThat(more.find("last").map(Metric::id)).contains("last");
    }

    @Test
    void anIdStandsForOneMetric() {
        assertThatThrownBy(() -> Catalogue.shipped().with(List.of(declared("pressure-drop", Conditions.PUMP))))
                .hasMessage("two metrics are called pressure-drop");
    }

    /** What a data column may be mapped to. */
    @Test
    void everyQuantityOfAFormulaIsFoundByItsId() {
        var asked = Cards.built().stream()
                .flatMap(m -> m.derivations().stream())
                .flatMap(d -> d.inputs().stream())
                .toList();
        var known = Catalogue.shipped().inputs();

        assertThat(known.values()).containsExactlyInAnyOrderElementsOf(Set.copyOf(asked));
        assertThat(asked).allSatisfy(i -> {
            assertThat(Catalogue.shipped().input(i.id())).contains(i);
            assertThat(known).containsEntry(i.id(), i);
        });
        assertThat(Catalogue.shipped().input("mood-of-the-operator")).isEmpty();
    }

    @Test
    void everyConditionOfTheVocabularyIsKnownBeforeAnyMetricNamesIt() {
        assertThat(Catalogue.shipped().conditions()).containsAllEntriesOf(Conditions.all());
        assertThat(Catalogue.shipped().conditions().keySet())
                .startsWith(Conditions.ids().toArray(String[]::new));
        assertThat(Catalogue.shipped().condition("blood-flow")).contains(Conditions.BLOOD_FLOW);
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
}
