package comparand.metric;

import static comparand.metric.FormulaLawsTest.q;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What physics and arithmetic demand of pressure, haemolysis, lines and body size, whatever the numbers. */
class DeviceLawsTest {

    private static final double TINY = 1e-9;

    @Property(tries = 200)
    @Label("resistance is the same in kPa and mL/min; levelled transducers need no correction")
    void resistance(
            @ForAll @DoubleRange(min = 40, max = 400) double in,
            @ForAll @DoubleRange(min = 1, max = 39) double out,
            @ForAll @DoubleRange(min = 0.1, max = 7) double flow) {
        var plain = Computed.from(
                q("inlet-pressure", in, "mmHg"), q("outlet-pressure", out, "mmHg"), q("blood-flow", flow, "L/min"));
        double resistance = plain.value("resistance");
        var other = Computed.from(
                q("inlet-pressure", in * 0.133322, "kPa"),
                q("outlet-pressure", out * 0.133322, "kPa"),
                q("blood-flow", flow * 1000, "mL/min"));

        assertThat(other.value("resistance")).isCloseTo(resistance, within(1e-6));
        assertThat(plain.with("transducer-height-difference=0 cm").value("resistance"))
                .isCloseTo(resistance, within(TINY));
        assertThat(plain.with("transducer-height-difference=5 cm").value("pressure-drop"))
                .isLessThan(in - out);
    }

    @Property(tries = 200)
    @Label("the ratio of means is the mean of the ratios weighted by flow")
    void ratioOfMeans(
            @ForAll @Size(4) List<@IntRange(min = 5, max = 300) Integer> drops,
            @ForAll @Size(4) List<@IntRange(min = 1, max = 8) Integer> flows) {
        var runs = Computed.from(
                        "pressure-drop=" + drops.stream().map(d -> d + " mmHg").collect(Collectors.joining("; ")),
                        "blood-flow=" + flows.stream().map(f -> f + " L/min").collect(Collectors.joining("; ")))
                .under("reduction", "ratio-of-means");
        double weighted = IntStream.range(0, 4)
                        .mapToDouble(i -> flows.get(i) * ((double) drops.get(i) / flows.get(i)))
                        .sum()
                / flows.stream().mapToInt(f -> f).sum();

        assertThat(runs.value("resistance")).isCloseTo(weighted, within(TINY));
    }

    @Property(tries = 200)
    @Label("blood thickens with haematocrit and thins with warmth, by either model")
    void viscosity(
            @ForAll @DoubleRange(min = 10, max = 55) double cells, @ForAll @DoubleRange(min = 15, max = 38) double t) {
        for (var model : new String[] {"exponential", "large-tube"}) {
            double base = viscosity(cells, t, model);
            assertThat(viscosity(cells + 2, t, model)).isGreaterThan(base);
            assertThat(viscosity(cells, t + 1, model)).isLessThan(base);
        }
        assertThat(viscosity(cells, t, "nominal")).isEqualTo(3.5);
    }

    private static double viscosity(double cells, double t, String model) {
        return Computed.from(q("haematocrit", cells, "%"), q("temperature", t, "°C"))
                .under("viscosity-model", model)
                .value("blood-viscosity");
    }

    @Property(tries = 200)
    @Label("shear stress grows with the root of power per volume, in whatever units")
    void shear(
            @ForAll @DoubleRange(min = 1, max = 5) double mu,
            @ForAll @DoubleRange(min = 5, max = 200) double drop,
            @ForAll @DoubleRange(min = 0.2, max = 7) double flow,
            @ForAll @DoubleRange(min = 20, max = 300) double volume) {
        double stress = shear(
                q("blood-viscosity", mu, "mPa·s"),
                q("pressure-drop", drop, "mmHg"),
                q("blood-flow", flow, "L/min"),
                q("priming-volume", volume, "mL"));

        assertThat(shear(
                        q("blood-viscosity", mu / 1000, "Pa.s"),
                        q("pressure-drop", drop * 133.322, "Pa"),
                        q("blood-flow", flow * 1000, "mL/min"),
                        q("priming-volume", volume / 1000, "L")))
                .isCloseTo(stress, within(1e-5));
        assertThat(shear(
                        q("blood-viscosity", mu, "mPa·s"),
                        q("pressure-drop", drop, "mmHg"),
                        q("blood-flow", flow, "L/min"),
                        q("priming-volume", 4 * volume, "mL")))
                .isCloseTo(stress / 2, within(1e-8));
        assertThat(shear(
                        q("blood-viscosity", 4 * mu, "mPa·s"),
                        q("pressure-drop", drop, "mmHg"),
                        q("blood-flow", flow, "L/min"),
                        q("priming-volume", volume, "mL")))
                .isCloseTo(2 * stress, within(1e-8));
    }

    private static double shear(String... quantities) {
        return Computed.from(quantities).value("average-shear-stress");
    }

    @Property(tries = 200)
    @Label("the index of haemolysis: twice the time, half the index; hours as minutes; its two forms convert")
    void haemolysis(
            @ForAll @DoubleRange(min = 10, max = 60) double cells,
            @ForAll @DoubleRange(min = 0.01, max = 1) double freed,
            @ForAll @IntRange(min = 1, max = 12) int hours) {
        double index = index(cells, freed, "%d h".formatted(hours)).value("normalised-index-of-haemolysis");
        double ratio = index(cells, freed, "%d h".formatted(hours))
                .under("formula", "plasma-to-cell-ratio")
                .value("normalised-index-of-haemolysis");

        assertThat(index(cells, freed, "%d min".formatted(60 * hours)).value("normalised-index-of-haemolysis"))
                .isCloseTo(index, within(TINY));
        assertThat(index(cells, freed, "%d h".formatted(2 * hours)).value("normalised-index-of-haemolysis"))
                .isCloseTo(index / 2, within(TINY));
        assertThat(ratio * cells / 100).isCloseTo(index, within(1e-8));
    }

    private static Computed index(double cells, double freed, String duration) {
        return Computed.from(
                "free-haemoglobin-start=0 g/L",
                q("free-haemoglobin-end", freed, "g/L"),
                "loop-volume=450 mL",
                q("haematocrit", cells, "%"),
                "blood-flow=1.5 L/min",
                "duration=" + duration);
    }

    @Property(tries = 200)
    @Label("what was only diluted has not changed: platelets with the red cells, fibrinogen with the plasma")
    void onlyDiluted(
            @ForAll @DoubleRange(min = 25, max = 45) double before,
            @ForAll @DoubleRange(min = 0.5, max = 1) double share) {
        double after = before * share;
        double plasma = share * (100 - before) / (100 - after);
        double platelets = Computed.from(
                        "platelet-count-before=200 10⁹/L",
                        q("platelet-count-after", 200 * share, "10⁹/L"),
                        q("haematocrit-before", before, "%"),
                        q("haematocrit-after", after, "%"))
                .where(Conditions.TRANSFUSION, "none")
                .value("corrected-platelet-change");
        double fibrinogen = Computed.from(
                        "fibrinogen-before=2 g/L",
                        q("fibrinogen-after", 2 * plasma, "g/L"),
                        q("haematocrit-before", before, "%"),
                        q("haematocrit-after", after, "%"))
                .where(Conditions.TRANSFUSION, "none")
                .under("dilution-correction", "plasma-share")
                .value("corrected-fibrinogen-change");

        assertThat(platelets).isCloseTo(0, within(1e-7));
        assertThat(fibrinogen).isCloseTo(0, within(1e-7));
    }

    @Property(tries = 200)
    @Label("body surface grows with height and weight, and is the same from inches and pounds")
    void bodySurface(
            @ForAll @DoubleRange(min = 45, max = 200) double height,
            @ForAll @DoubleRange(min = 2, max = 150) double weight) {
        for (var formula : new String[] {"du-bois", "mosteller", "haycock"}) {
            double base = surface(q("patient-height", height, "cm"), q("patient-weight", weight, "kg"), formula);
            assertThat(surface(q("patient-height", height + 1, "cm"), q("patient-weight", weight, "kg"), formula))
                    .isGreaterThan(base);
            assertThat(surface(q("patient-height", height, "cm"), q("patient-weight", weight + 1, "kg"), formula))
                    .isGreaterThan(base);
            assertThat(surface(
                            q("patient-height", height / 2.54, "in"),
                            q("patient-weight", weight / 0.45359237, "lb"),
                            formula))
                    .isCloseTo(base, within(1e-8));
        }
    }

    private static double surface(String height, String weight, String formula) {
        return Computed.from(height, weight)
                .under("body-surface-formula", formula)
                .value("body-surface-area");
    }

    @Property(tries = 200)
    @Label("a line through points of a line is that line; through the origin it bends to the origin")
    void lineOfALine(
            @ForAll @DoubleRange(min = -50, max = 50) double slope,
            @ForAll @DoubleRange(min = -50, max = 50) double intercept) {
        var x = new double[] {1, 2, 4, 7};
        var y = IntStream.range(0, 4).mapToDouble(i -> slope * x[i] + intercept).toArray();
        var free = new Gathering.Fit(
                "x", "y", Gathering.Fit.Form.WITH_INTERCEPT, Gathering.Fit.Result.SLOPE, Gathering.Over.MEMBER);

        var line = free.line(x, y).orElseThrow();
        assertThat(line.slope()).isCloseTo(slope, within(TINY));
        assertThat(line.intercept()).isCloseTo(intercept, within(TINY));
        assertThat(line.at(line.inverse(3)) - 3)
                .satisfies(d ->
                        assertThat(Math.abs(slope) < 1e-6 || Math.abs(d) < 1e-6).isTrue());
    }

    @Property(tries = 300)
    @Label("a crossing lies between the neighbours it was read off, and the lowest of two is below neither by itself")
    void crossings(
            @ForAll @Size(4) List<@IntRange(min = 20, max = 70) Integer> oxygen,
            @ForAll @Size(4) List<@IntRange(min = 20, max = 70) Integer> carbonDioxide) {
        var flows = new double[] {1, 2, 3, 4};
        var a = new Gathering.Crossing("q", "a", 45).of(flows, numbers(oxygen));
        var b = new Gathering.Crossing("q", "b", 38).of(flows, numbers(carbonDioxide));
        double lowest = Math.min(a.x(), b.x());

        assertThat(a.x()).isBetween(1.0, 4.0);
        int at = (int) Math.floor(a.x());
        if (a instanceof Crossed.At && a.x() > at) {
            assertThat(oxygen.get(at - 1)).isGreaterThan(45);
            assertThat(oxygen.get(at)).isLessThan(45);
        }
        assertThat(Crossed.ORDER.compare(a, b) <= 0 ? a.x() : b.x()).isEqualTo(lowest);
    }

    private static double[] numbers(List<Integer> list) {
        return list.stream().mapToDouble(n -> n).toArray();
    }

    @Property(tries = 100)
    @Label("the older, the less vapour it takes; under a year nothing is computed")
    void anaesthetic(@ForAll @IntRange(min = 1, max = 90) int age) {
        assertThat(mac(age + 1)).isLessThan(mac(age));
        assertThat(mac(0)).isNaN();
    }

    private static double mac(int age) {
        return Computed.from("patient-age=%d a".formatted(age)).value("minimum-alveolar-concentration");
    }
}
