package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.unit.Printed;
import comparand.unit.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The card of a metric says what was written on it, and is refused where something is missing. */
class MetricTest {

    private static final Input DROP = Input.of("drop", "d", "drop", "mmHg");
    private static final Derivation WAY =
            new Derivation("d · 2", List.of(DROP), Definition.NONE, Citation.derived("twice"), in -> 2 * in.of(DROP));
    private static final Citation STANDARD = Citation.fromMemory("A standard", "clause 1");

    private static Metric.Builder smallest(String id) {
        return Metric.named(id, "twice the drop")
                .symbol("2d")
                .meaning("Twice the drop")
                .cites(STANDARD);
    }

    @Test
    void everythingWrittenOnACardIsReadFromIt() {
        var parts = new Aspect.Parts("parts", Role.DECIDES, List.of("pump", "filter"), false);
        var rule = new Aspect.Choice(
                "rule",
                "rule",
                "rule",
                Role.QUALIFIES,
                "new",
                List.of(new Variant("old", "as it was"), new Variant("new", "as it is")),
                List.of());
        var worked = WorkedValue.of("10 mmHg", Citation.derived("2 × 5"), "drop=5 mmHg");
        var standard = new InletStandard(
                Conditions.INLET_SATURATION,
                Printed.of("65 %"),
                Conditions.OUTLET_SATURATION,
                Printed.of("98 %"),
                List.of(),
                "x",
                Citation.derived("nothing moves"),
                in -> 0);
        var reason = Influence.more(Effect.RAISES, "more is more");

        var metric = smallest("twice")
                .unit("kPa")
                .nature(Nature.STATED)
                .better(Better.LESS)
                .mostDecimals(2)
                .derived(WAY)
                .aspect(parts)
                .aspect(rule)
                .decides(Conditions.BLOOD_FLOW, Tolerance.percent("5 %"), reason)
                .qualifies(Conditions.PUMP, Tolerance.EQUAL, Influence.UNKNOWN)
                .interpolatesOver(Conditions.BLOOD_FLOW)
                .limits(Conditions.LARGEST_BLOOD_FLOW)
                .inletStandard(standard)
                .plausible(1, 2)
                .possible(0, 3)
                .worked(worked)
                .confusedWith("drop", "thrice")
                .build();

        assertThat(metric.id()).isEqualTo("twice").isEqualTo(metric.toString());
        assertThat(metric.name()).isEqualTo("twice the drop");
        assertThat(metric.symbol()).isEqualTo("2d");
        assertThat(metric.meaning()).isEqualTo("Twice the drop");
        assertThat(metric.unit()).isEqualTo(Unit.of("kPa"));
        assertThat(metric.nature()).isEqualTo(Nature.STATED);
        assertThat(metric.better()).isEqualTo(Better.LESS);
        assertThat(metric.mostDecimals()).hasValue(2);
        assertThat(metric.derivations()).containsExactly(WAY);
        assertThat(metric.definition()).containsExactly(parts, rule);
        assertThat(metric.aspect("rule")).contains(rule);
        assertThat(metric.aspect("parts")).contains(parts);
        assertThat(metric.aspect("colour")).isEmpty();
        assertThat(metric.standardDefinition()).hasToString("rule: new");
        var flow = new ConditionUse(Conditions.BLOOD_FLOW, Role.DECIDES, Tolerance.percent("5 %"), reason);
        var pump = new ConditionUse(Conditions.PUMP, Role.QUALIFIES, Tolerance.EQUAL, Influence.UNKNOWN);
        assertThat(metric.conditions()).containsExactly(flow, pump);
        assertThat(metric.condition("pump")).contains(pump);
        assertThat(metric.condition("temperature")).isEmpty();
        assertThat(metric.interpolatesOver()).contains("blood-flow");
        assertThat(metric.limits()).contains("largest-blood-flow");
        assertThat(metric.inletStandard()).contains(standard);
        assertThat(metric.plausible()).isEqualTo(new Bounds(1, 2));
        assertThat(metric.possible()).isEqualTo(new Bounds(0, 3));
        assertThat(metric.citations()).containsExactly(STANDARD);
        assertThat(metric.worked()).containsExactly(worked);
        assertThat(metric.confusedWith()).containsExactly("drop", "thrice");
    }

    /** A measured number, without unit or direction, that is only stated: nothing is made up for what was not written. */
    @Test
    void whatIsNotWrittenOnACardIsLeftOpen() {
        var metric = smallest("twice").build();

        assertThat(metric.unit()).isEqualTo(Unit.ONE);
        assertThat(metric.nature()).isEqualTo(Nature.MEASURED);
        assertThat(metric.better()).isEqualTo(Better.NEITHER);
        assertThat(metric.mostDecimals()).isEqualTo(OptionalInt.empty());
        assertThat(metric.interpolatesOver()).isEqualTo(Optional.empty());
        assertThat(metric.limits()).isEqualTo(Optional.empty());
        assertThat(metric.inletStandard()).isEqualTo(Optional.empty());
        assertThat(metric.plausible()).isEqualTo(Bounds.ANY);
        assertThat(metric.possible()).isEqualTo(Bounds.ANY);
        assertThat(metric.standardDefinition()).isEqualTo(Definition.NONE);
        assertThat(metric.confusedWith()).isEmpty();
    }

    @ParameterizedTest(name = "a difference of values in {0} is in {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"%, percentage points", "mmHg, mmHg", "mL/min, mL/min", "°C, °C"})
    void aDifferenceOfPerCentIsInPercentagePoints(String unit, String words) {
        assertThat(smallest("twice").unit(unit).build().differenceUnit()).isEqualTo(words);
    }

    @Test
    void oneIdIsOneMetric() {
        var metric = smallest("twice").build();

        assertThat(metric)
                .isEqualTo(smallest("twice").unit("kPa").build())
                .isNotEqualTo(smallest("thrice").build());
        assertThat(metric.equals((Object) "twice")).isFalse();
        assertThat(metric).hasSameHashCodeAs(smallest("twice").build());
        assertThat(metric.hashCode()).isNotEqualTo(smallest("thrice").build().hashCode());
    }

    /** Its builder may be used further; the metric stays as it was. */
    @Test
    void aFinishedCardDoesNotChange() {
        var metric = smallest("twice").build();

        assertThatThrownBy(() -> metric.conditions().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> metric.citations().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> metric.derivations().clear()).isInstanceOf(UnsupportedOperationException.class);
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

    @Test
    void aCardReadsOffAlongAConditionItNames() {
        assertThat(smallest("twice")
                        .decides(Conditions.BLOOD_FLOW, Tolerance.EQUAL, Influence.UNKNOWN)
                        .interpolatesOver(Conditions.BLOOD_FLOW)
                        .build()
                        .interpolatesOver())
                .contains("blood-flow");
    }
}
