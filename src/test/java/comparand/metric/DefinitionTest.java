package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import comparand.unit.Printed;
import comparand.unit.Unit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a number means: variants, parts, where it is from, and what a formula is given. */
class DefinitionTest {

    private static final Citation SOURCE = Citation.derived("x");
    private static final VariantConversion DOUBLED =
            new VariantConversion("old", "new", "2 x", List.of(), SOURCE, in -> 2 * in.get(VariantConversion.VALUE));
    private static final Aspect.Choice RULE = choice("new");
    private static final Aspect.Parts PARTS =
            new Aspect.Parts("parts filled", Role.DECIDES, List.of("oxygenator", "exchanger", "filter"), true);

    private static Aspect.Choice choice(String usual) {
        return new Aspect.Choice(
                "rule",
                "rule of the house",
                "house",
                Role.QUALIFIES,
                usual,
                List.of(new Variant("old", "as it was"), new Variant("new", "as it is")),
                List.of(DOUBLED));
    }

    @Test
    void theOrderOfPartsMeansNothingAndNoPartCountsTwice() {
        var one = Definition.of(Map.of("parts", List.of("filter", "exchanger", "filter")));
        var other = Definition.NONE.with("parts", List.of("exchanger", "filter"));

        assertThat(one).isEqualTo(other);
        assertThat(one.get("parts")).contains(List.of("exchanger", "filter"));
        assertThat(one.word("parts")).contains("exchanger + filter");
        assertThat(one.get("rule")).isEmpty();
        assertThat(one.word("rule")).isEmpty();
    }

    @Test
    void aDefinitionIsWrittenAspectByAspect() {
        assertThat(Definition.NONE).hasToString("none");
        assertThat(Definition.NONE.with("rule", List.of("new"))).hasToString("rule: new");
        assertThat(Definition.of(Map.of("rule", List.of("new"), "parts", List.of("filter", "exchanger"))))
                .hasToString("parts: exchanger + filter; rule: new");
    }

    @Test
    void aDefinitionDoesNotChange() {
        var written = new TreeMap<>(Map.of("rule", List.of("new")));
        var definition = new Definition(written);
        written.put("rule", List.of("old"));

        assertThat(definition.word("rule")).contains("new");
        assertThat(definition.with("rule", List.of("old")).word("rule")).contains("old");
        assertThat(definition.word("rule")).contains("new");
        assertThatThrownBy(() -> definition.aspects().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    @DisplayName("parts are printed in the order of the device, whatever the order they were written in")
    void partsAreOfTheirDevice() {
        assertThat(PARTS.text(List.of("filter", "oxygenator"))).isEqualTo("oxygenator + filter");
        assertThat(PARTS.text(List.of())).isEmpty();
        assertThat(PARTS.id()).isEqualTo("parts").isEqualTo(PARTS.shortName());
        assertThat(PARTS.standard()).isEmpty();
        assertThat(PARTS.<String>fold(c -> "choice", p -> p.name())).isEqualTo("parts filled");
    }

    @Test
    void aChoiceHasAUsualVariantAndNamedStepsBetweenVariants() {
        assertThat(RULE.words()).containsExactly("old", "new");
        assertThat(RULE.standard()).contains("new");
        assertThat(choice("old").standard()).contains("old");
        assertThat(RULE.text(List.of("new"))).isEqualTo("new");
        assertThat(RULE.conversion("old", "new")).contains(DOUBLED);
        assertThat(RULE.conversion("new", "old")).isEmpty();
        assertThat(RULE.conversion("old", "older")).isEmpty();
        assertThat(RULE.conversion("older", "new")).isEmpty();
        assertThat(RULE.<String>fold(c -> c.shortName(), p -> "parts")).isEqualTo("house");
        assertThatThrownBy(() -> choice("newest")).hasMessage("rule: `newest` is not one of its variants");
        assertThatThrownBy(() -> new VariantConversion("old", "old", "x", List.of(), SOURCE, in -> 1))
                .hasMessageContaining("leads somewhere else");
        assertThatThrownBy(() -> new Variant("old", " ")).hasMessageContaining("a meaning");
        assertThatThrownBy(() -> new Variant("", "as it was")).hasMessageContaining("an id");
    }

    @Test
    void aCitationSaysHowFarItWasChecked() {
        assertThat(Citation.read("A paper 2020", "table 2")).hasToString("A paper 2020, table 2 (read)");
        assertThat(Citation.fromMemory("A book", "chapter 3"))
                .hasToString("A book, chapter 3 (cited from memory, not opened)");
        assertThat(Citation.commonPractice("levelled transducers"))
                .hasToString("Trade usage, levelled transducers (common practice, no source)");
        assertThat(Citation.derived("6 / 10")).hasToString("Definition above, 6 / 10 (follows from the definition)");
        assertThat(new Citation("Library", "metrics/x", Citation.Trust.DECLARED)
                        .trust()
                        .words())
                .isEqualTo("as declared in the library");
        assertThatThrownBy(() -> Citation.read("A paper 2020", " ")).hasMessageContaining("a place in it");
        assertThatThrownBy(() -> Citation.read("", "table 2")).hasMessageContaining("a work");
    }

    @Test
    void aWorkedValueHasItsInputsRowByRowAndItsVariants() {
        var worked =
                WorkedValue.of("2.5 L", SOURCE, "a=1 L; 500 mL", "formula=x=y").under("rule", "old");

        assertThat(worked.rows("a")).containsExactly(Printed.of("1 L"), Printed.of("500 mL"));
        assertThat(worked.rows("b")).isEmpty();
        assertThat(worked.inputs()).containsEntry("formula", "x=y").hasSize(2);
        assertThat(worked.result()).isEqualTo(Printed.of("2.5 L"));
        assertThat(worked.citation()).isEqualTo(SOURCE);
        assertThat(worked.definition().word("rule")).contains("old");
        assertThat(WorkedValue.of("2", SOURCE).definition()).isEqualTo(Definition.NONE);
    }

    @Test
    void aFormulaIsGivenItsNumbersAndItsConstantsOrSaysWhichIsMissing() {
        var flow = Input.of("blood-flow", "Q", "blood flow", "L/min");
        var in = new Inputs(Map.of("blood-flow", 1.5), Definition.NONE.with("hufner-constant", List.of("1.34")));

        assertThat(flow.unit()).isEqualTo(Unit.of("L/min"));
        assertThat(in.of(flow)).isEqualTo(1.5);
        assertThat(in.get("blood-flow")).isEqualTo(1.5);
        assertThat(in.constant("hufner-constant")).isCloseTo(1.34, within(0.0));
        assertThatThrownBy(() -> in.get("haemoglobin")).hasMessage("the formula needs haemoglobin");
        assertThatThrownBy(() -> in.constant("oxygen-solubility"))
                .hasMessage("the formula needs the variant of oxygen-solubility");
        assertThatThrownBy(() -> Input.of("", "Q", "blood flow", "L/min")).hasMessageContaining("an id");
        assertThatThrownBy(() -> Input.of("q", " ", "blood flow", "L/min")).hasMessageContaining("a symbol");
        assertThatThrownBy(() -> Input.of("q", "Q", "", "L/min")).hasMessageContaining("a meaning");
    }

    @Test
    void aWayToComputeKeepsAllButWhatIsChanged() {
        var flow = Input.of("blood-flow", "Q", "blood flow", "L/min");
        var way = Derivation.of("2 Q", SOURCE, in -> 2 * in.of(flow), flow);
        var sums = new Gathering.Sums(Gathering.Over.GROUP);
        var changed = way.giving("rule", "old")
                .giving("side", "left")
                .gathered(sums)
                .onlyWhen(Conditions.SPECIES, "human")
                .onlyWhen(Conditions.TRANSFUSION, "none");

        assertThat(way.gathering()).isEqualTo(Gathering.EACH_ROW);
        assertThat(way.applies()).isEmpty();
        assertThat(changed)
                .isEqualTo(new Derivation(
                        "2 Q",
                        List.of(flow),
                        Definition.of(Map.of("rule", List.of("old"), "side", List.of("left"))),
                        SOURCE,
                        way.computation(),
                        sums,
                        List.of(
                                new Applies(Conditions.SPECIES, List.of("human")),
                                new Applies(Conditions.TRANSFUSION, List.of("none")))));
        assertThatThrownBy(() -> Derivation.of(" ", SOURCE, in -> 1)).hasMessage("a derivation has a formula");
    }

    @Test
    void whatALineOrACrossingFindsIsTheResult() {
        var crossing = new Gathering.Crossing("q", "y", 45);
        var found = Derivation.found("q at y = 45", SOURCE, crossing);

        assertThat(found.computation().of(new Inputs(Map.of(Gathering.FOUND, 2.26), Definition.NONE)))
                .isEqualTo(2.26);
        assertThat(found.isFound()).isTrue();
        assertThat(found.gathered(new Gathering.Lowest(List.of(crossing, new Gathering.Crossing("q", "z", 38))))
                        .isFound())
                .isTrue();
        assertThat(found.gathered(new Gathering.Total()).isFound()).isFalse();
        assertThat(found.gathered(Gathering.EACH_ROW).isFound()).isFalse();
    }

    @Test
    void aStandardInletIsANumberAndSoIsItsOutlet() {
        assertThatThrownBy(() -> standard(Conditions.SPECIES, Conditions.OUTLET_SATURATION))
                .hasMessage("inlet and outlet are conditions in numbers");
        assertThatThrownBy(() -> standard(Conditions.INLET_SATURATION, Conditions.SPECIES))
                .hasMessageContaining("numbers");
        assertThat(standard(Conditions.INLET_SATURATION, Conditions.OUTLET_SATURATION)
                        .needs())
                .isEmpty();
    }

    private static InletStandard standard(Condition inlet, Condition outlet) {
        return new InletStandard(
                inlet, Printed.of("65 %"), outlet, Printed.of("98 %"), List.of(), "x", SOURCE, in -> 0);
    }
}
