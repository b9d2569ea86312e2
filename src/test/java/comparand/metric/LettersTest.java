package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The formulas of the catalogue speak one language, and what one is made of another accounts for. */
class LettersTest {

    private static Stream<Derivation> ways() {
        return Catalogue.shipped().all().stream().flatMap(m -> m.derivations().stream());
    }

    @Test
    void oneLetterHasOneUnitOneSymbolAndOneMeaning() {
        var seen = new HashMap<String, Input>();
        ways().flatMap(d -> d.inputs().stream()).forEach(input -> {
            var first = seen.putIfAbsent(input.id(), input);
            if (first != null) {
                assertThat(input).as(input.id()).isEqualTo(first);
                assertThat(input.unit().code())
                        .as(input.id())
                        .isEqualTo(first.unit().code());
            }
        });
        assertThat(seen).hasSizeGreaterThan(80);
    }

    @Test
    void oneSymbolStandsForOneQuantityWithinAFormula() {
        assertThat(ways())
                .allSatisfy(
                        d -> assertThat(d.inputs().stream().map(Input::symbol)).doesNotHaveDuplicates());
    }

    @Test
    void anInputThatIsAMetricHasItsUnitAndName() {
        ways().flatMap(d -> d.inputs().stream())
                .distinct()
                .forEach(input -> Catalogue.shipped()
                        .find(input.id())
                        .ifPresent(m -> assertThat(m.unit().convertsTo(input.unit()))
                                .as(input.id())
                                .isTrue()));
    }

    /** Otherwise an inner formula would follow whichever variant comes first, or miss a constant. */
    @TestFactory
    Stream<DynamicTest> aMetricCarriesTheChoicesOfAllItIsMadeOf() {
        return Catalogue.shipped().all().stream()
                .filter(m -> !m.derivations().isEmpty())
                .map(m -> dynamicTest(
                        m.id(),
                        () -> assertThat(m.definition().stream().map(Aspect::id))
                                .containsAll(inherited(m, new HashSet<>()))));
    }

    private static Set<String> inherited(Metric metric, Set<String> visited) {
        var ids = new TreeSet<String>();
        if (visited.add(metric.id())) {
            metric.derivations().stream()
                    .flatMap(d -> d.inputs().stream())
                    .flatMap(i -> Catalogue.shipped().find(i.id()).stream())
                    .filter(m -> !m.derivations().isEmpty())
                    .forEach(m -> {
                        m.definition().forEach(a -> ids.add(a.id()));
                        ids.addAll(inherited(m, visited));
                    });
        }
        return ids;
    }

    @Test
    void anAspectHasOneListOfWordsAndOneStandardWhereverItStands() {
        var aspects = Catalogue.shipped().all().stream()
                .flatMap(m -> m.definition().stream())
                .filter(a -> a instanceof Aspect.Choice)
                .collect(Collectors.groupingBy(Aspect::id));

        assertThat(aspects).hasSizeGreaterThan(20);
        aspects.forEach((id, all) -> {
            assertThat(all.stream().map(Aspect::words).distinct()).as(id).hasSize(1);
            assertThat(all.stream().map(Aspect::standard).distinct()).as(id).hasSize(1);
            assertThat(all.stream().map(Aspect::name).distinct()).as(id).hasSize(1);
        });
    }

    @Test
    void aWayGivesVariantsItsMetricHas() {
        Catalogue.shipped()
                .all()
                .forEach(m -> m.derivations()
                        .forEach(d -> d.gives()
                                .aspects()
                                .forEach((aspect, words) -> assertThat(
                                                m.aspect(aspect).orElseThrow().words())
                                        .as(m.id() + " " + aspect)
                                        .containsAll(words))));
    }

    @Test
    void constantsAreNumbers() {
        for (var aspect : List.of(OxygenContent.HUFNER, OxygenContent.SOLUBILITY, CarbonDioxideContent.MOLAR_VOLUME)) {
            assertThat(aspect.words())
                    .allSatisfy(w -> assertThat(Double.parseDouble(w)).isNotNegative());
        }
    }

    /** Lines and crossings are of a whole curve; a formula that is computed row by row cannot be fed by one. */
    @Test
    void noFormulaIsFedByALineOrACrossing() {
        var found = Catalogue.shipped().all().stream()
                .filter(m ->
                        !m.derivations().isEmpty() && m.derivations().stream().allMatch(Derivation::isFound))
                .map(Metric::id)
                .toList();

        assertThat(found).contains("reference-blood-flow", "rated-blood-flow", "uptake-per-oxygen-fraction");
        assertThat(ways().flatMap(d -> d.inputs().stream()).map(Input::id)).doesNotContainAnyElementsOf(found);
    }

    @Test
    void whatALineOrCrossingIsOfStandsAmongTheInputs() {
        ways().filter(Derivation::isFound).forEach(d -> {
            var ids = d.inputs().stream().map(Input::id).toList();
            var used = d.gathering().fold(new Gathering.Cases<List<String>>() {
                @Override
                public List<String> eachRow(Gathering.EachRow way) {
                    return List.of();
                }

                @Override
                public List<String> total(Gathering.Total way) {
                    return List.of();
                }

                @Override
                public List<String> sums(Gathering.Sums way) {
                    return List.of();
                }

                @Override
                public List<String> median(Gathering.Median way) {
                    return List.of();
                }

                @Override
                public List<String> fit(Gathering.Fit way) {
                    return List.of(way.xInput(), way.yInput());
                }

                @Override
                public List<String> crossing(Gathering.Crossing way) {
                    return List.of(way.xInput(), way.yInput());
                }

                @Override
                public List<String> lowest(Gathering.Lowest way) {
                    return way.crossings().stream()
                            .flatMap(c -> crossing(c).stream())
                            .distinct()
                            .toList();
                }
            });
            assertThat(ids).containsExactlyInAnyOrderElementsOf(used);
        });
    }

    @Test
    void curvesOfHumanBloodAreUsedForNoOther() {
        var curves = Map.of(
                "inlet-saturation",
                2,
                "outlet-saturation",
                2,
                "oxygen-pressure-at-saturation",
                2,
                "ideal-oxygen-content",
                1);
        Catalogue.shipped().all().forEach(m -> {
            long human = m.derivations().stream()
                    .filter(d -> d.applies().contains(new Applies(Conditions.SPECIES, List.of("human"))))
                    .count();
            assertThat(human).as(m.id()).isEqualTo((long) curves.getOrDefault(m.id(), 0));
        });
    }

    @Test
    void membraneAndBodySurfaceAreTwoQuantities() {
        var membrane = Computed.metric("oxygen-transfer-per-membrane-area");
        var body = Computed.metric("oxygen-transfer-per-body-surface");

        assertThat(membrane.unit()).isEqualTo(body.unit());
        assertThat(membrane.confusedWith()).contains(body.id());
        assertThat(body.confusedWith()).contains(membrane.id());
        assertThat(membrane.better()).isEqualTo(Better.MORE);
        assertThat(body.better()).isEqualTo(Better.NEITHER);
    }

    @Test
    void theTradesMetricsAreAllThere() {
        assertThat(Catalogue.shipped().ids())
                .contains(
                        "performance-factor",
                        "inlet-oxygen-content",
                        "outlet-oxygen-content",
                        "oxygen-transfer",
                        "oxygen-transfer-per-litre",
                        "oxygen-transfer-per-membrane-area",
                        "oxygen-transfer-per-body-surface",
                        "inlet-carbon-dioxide-content",
                        "outlet-carbon-dioxide-content",
                        "carbon-dioxide-transfer",
                        "carbon-dioxide-transfer-per-membrane-area",
                        "respiratory-exchange-ratio",
                        "pressure-drop",
                        "resistance",
                        "average-shear-stress",
                        "blood-viscosity",
                        "shunt-fraction",
                        "uptake-per-oxygen-fraction",
                        "oxygen-fraction-at-uptake",
                        "bubble-count-upstream",
                        "bubble-count-downstream",
                        "bubble-volume-upstream",
                        "bubble-volume-downstream",
                        "bubble-count-reduction",
                        "bubble-volume-reduction",
                        "gas-inlet-pressure",
                        "priming-volume",
                        "membrane-area",
                        "flow-index",
                        "flow-utilisation",
                        "oxygen-delivery-index",
                        "outlet-saturation",
                        "outlet-ph-at-blood-temperature",
                        "outlet-pco2-at-blood-temperature",
                        "outlet-po2-at-blood-temperature",
                        "corrected-platelet-change",
                        "corrected-fibrinogen-change",
                        "normalised-index-of-haemolysis",
                        "modified-index-of-haemolysis",
                        "reference-blood-flow",
                        "rated-blood-flow",
                        "labelled-blood-flow",
                        "body-surface-area",
                        "gas-blood-ratio",
                        "haemoglobin-flow",
                        "oxygen-gradient",
                        "priming-volume-per-membrane-area",
                        "priming-volume-per-labelled-flow",
                        "free-haemoglobin-rate",
                        "carbon-dioxide-reduction");
    }
}
