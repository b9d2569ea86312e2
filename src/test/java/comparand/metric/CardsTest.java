package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A metric enters the catalogue with a source and, if it has a formula, with worked values that come out. */
class CardsTest {

    /** A card is built anew inside of each test. */
    private static Stream<DynamicTest> everyCard(Consumer<Metric> check) {
        return Cards.written().stream().map(card -> dynamicTest(card.toString(), () -> check.accept(card.built())));
    }

    @TestFactory
    Stream<DynamicTest> everyWorkedValueIsReproducedToItsPrintedDigits() {
        return everyCard(m -> m.worked().forEach(worked -> {
            double printed = worked.result().in(m.unit());
            assertThat(WorkedAgain.of(m, worked))
                    .as("%s is %s (%s)", m.id(), worked.result(), worked.citation())
                    .isCloseTo(printed, within(worked.result().halfUnitIn(m.unit()) * (1 + 1e-9)));
            assertThat(m.possible().contain(printed))
                    .as("%s may be %s", m.id(), worked.result())
                    .isTrue();
        }));
    }

    @TestFactory
    Stream<DynamicTest> everyMetricIsWhole() {
        return everyCard(m -> {
            assertThat(m.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(m.name()).isNotBlank();
            assertThat(m.citations()).isNotEmpty().doesNotContainNull();
            assertThat(m.derivations().isEmpty()).isEqualTo(m.worked().isEmpty());
            assertThat(m.possible().low()).isLessThanOrEqualTo(m.plausible().low());
            assertThat(m.possible().high()).isGreaterThanOrEqualTo(m.plausible().high());
            m.derivations().stream()
                    .filter(d -> !d.inputs().isEmpty())
                    .forEach(d -> assertThat(d.inputs().stream().map(Input::symbol))
                            .allSatisfy(s -> assertThat(d.formula()).contains(s)));
            if (m.nature() == Nature.MEASURED && m.better() != Better.NEITHER) {
                assertThat(m.conditions())
                        .as("a device metric that is measured depends on something")
                        .anyMatch(u -> u.role() == Role.DECIDES);
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> everyConditionStandsOnceAndItsDirectionHasAReason() {
        return everyCard(m -> {
            assertThat(m.conditions().stream().map(u -> u.condition().id())).doesNotHaveDuplicates();
            m.conditions().forEach(u -> {
                boolean claims = u.influence().more() == Effect.RAISES
                        || u.influence().more() == Effect.LOWERS
                        || !u.influence().instead().isEmpty();
                assertThat(claims && u.influence().because().isBlank())
                        .as(u.condition().id() + ": a direction has a reason")
                        .isFalse();
                assertThat(u.condition().words())
                        .containsAll(u.influence().instead().keySet());
                assertThat(m.condition(u.condition().id())).contains(u);
                assertThat(u.tolerance().words()).isNotBlank();
            });
            assertThat(m.condition("phase-of-the-moon")).isEmpty();
        });
    }

    @TestFactory
    Stream<DynamicTest> everyAspectIsFoundByItsIdAndItsStandardIsOneOfItsWords() {
        return everyCard(m -> m.definition().forEach(a -> {
            assertThat(m.aspect(a.id())).contains(a);
            assertThat(a.standard().stream()).allMatch(a.words()::contains);
            assertThat(m.standardDefinition().word(a.id())).isEqualTo(a.standard());
        }));
    }

    /** Another metric, what a formula is given (gases of the sample at 37 °C), or a metric that a library declares. */
    @TestFactory
    Stream<DynamicTest> whatIsConfusedWithAMetricIsAnotherQuantity() {
        return everyCard(m -> {
            assertThat(m.confusedWith())
                    .allMatch(id -> Catalogue.shipped().find(id).isPresent()
                            || Catalogue.shipped().input(id).isPresent()
                            || Files.exists(Path.of("evidence/metrics", id + ".yaml")));
            assertThat(m.confusedWith()).doesNotContain(m.id()).doesNotHaveDuplicates();
        });
    }

    /** {@code N_up} in formulas is {@code N up} in tables. */
    @Test
    void aMetricHasTheSymbolOfItsLetterInOtherFormulas() {
        var letters = new HashMap<String, String>();
        var cards = Cards.built();
        cards.stream()
                .flatMap(m -> m.derivations().stream())
                .flatMap(d -> d.inputs().stream())
                .forEach(i -> letters.put(i.id(), i.symbol()));
        // formulas take the largest of the flows labelled, which has a letter of its own
        assertThat(letters.remove("labelled-blood-flow")).isEqualTo("Q_max");

        assertThat(cards.stream().filter(m -> letters.containsKey(m.id())))
                .hasSizeGreaterThan(30)
                .allSatisfy(m -> assertThat(letters.getOrDefault(m.id(), "")).matches(letter -> stands(letter, m)));
    }

    /** In formulas the state of a gas is added, and that a content of plasma is one of carbon dioxide left out. */
    private static boolean stands(String letter, Metric m) {
        var symbol = bare(m.symbol());
        return List.of(symbol, symbol + "STPD", symbol.replace("CplCO₂", "Cpl")).contains(bare(letter));
    }

    private static String bare(String symbol) {
        return symbol.replaceAll("[_, ]", "");
    }

    @TestFactory
    Stream<DynamicTest> aFormulaThatSaysWhatItGivesNamesItsMetric() {
        return everyCard(m -> m.derivations().stream()
                .map(d -> d.formula().split(" = ", 2))
                .filter(sides -> sides.length == 2 && !sides[0].contains(" "))
                .forEach(sides -> assertThat(sides[0]).matches(left -> stands(left, m))));
    }

    /** A slope of y on x is in y's unit per x's; of fraction on uptake it has to be turned over to be in mL/min. */
    @Test
    void aSlopeSaysOfWhatItIsAndWhetherItIsTurnedOver() {
        var ways = UptakeRelation.slope().derivations();

        assertThat(ways.stream().map(Derivation::formula))
                .containsExactlyInAnyOrder(
                        "m = slope of VO₂ on cF_O₂, with intercept",
                        "m = slope of VO₂ on cF_O₂, through the origin",
                        "m = 1 / slope of cF_O₂ on VO₂, with intercept",
                        "m = 1 / slope of cF_O₂ on VO₂, through the origin",
                        "m = slope of VO₂ on F_O₂, with intercept",
                        "m = slope of VO₂ on F_O₂, through the origin",
                        "m = 1 / slope of F_O₂ on VO₂, with intercept",
                        "m = 1 / slope of F_O₂ on VO₂, through the origin");
        assertThat(ways).allSatisfy(way -> {
            double ofFour = way.computation().of(new Inputs(Map.of(Gathering.FOUND, 4.0), Definition.NONE));
            assertThat(ofFour).isEqualTo(way.formula().contains("1 / slope") ? 0.25 : 4);
            assertThat(way.gives().word("regression-direction"))
                    .contains(way.formula().contains("1 / slope") ? "fraction-on-uptake" : "uptake-on-fraction");
            assertThat(way.gives().word("regression-line"))
                    .contains(way.formula().contains("origin") ? "through-origin" : "with-intercept");
            assertThat(way.gives().word("fraction-basis"))
                    .contains(way.formula().contains("cF_O₂") ? "corrected" : "as-set");
        });
    }

    @Test
    void bloodGasesAreCorrectedAtTheSideNamedEachByRulesOfItsOwn() {
        for (boolean inlet : new boolean[] {true, false}) {
            var side = inlet ? "inlet" : "outlet";
            var gases = Map.of(
                    "ph", BloodGasAtTemperature.ph(inlet),
                    "pco2", BloodGasAtTemperature.pco2(inlet),
                    "po2", BloodGasAtTemperature.po2(inlet));
            gases.forEach((gas, card) -> {
                assertThat(card.id()).isEqualTo(side + "-" + gas + "-at-blood-temperature");
                assertThat(card.definition().stream().map(Aspect::id)).containsExactly(gas + "-temperature-rule");
                assertThat(card.derivations())
                        .allSatisfy(way -> assertThat(way.inputs().stream().map(Input::id))
                                .containsExactly(side + "-" + gas, "temperature"));
            });
        }
    }

    @Test
    void theCatalogueHoldsEveryCardThatIsWrittenAndNoOther() {
        assertThat(Cards.built().stream().map(Metric::id)).doesNotHaveDuplicates();
        assertThat(Cards.built())
                .containsExactlyInAnyOrderElementsOf(Catalogue.shipped().all());
    }
}
