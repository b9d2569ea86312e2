package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Readings from figures by hand, and by drawing: the closed forms are linear propagation (JCGM 100:2008, 5.1.2), so the drawn
 * distribution of the same formula (JCGM 101:2008, 5.9) has their standard deviation to within the slope's change over it.
 */
final class FigureReadingTest {

    private static final int DRAWS = 400_000;

    /** A standard deviation of that many draws is known to {@code 1/√(2 DRAWS)}, 0.11 %; four times that. */
    private static final double DRAWN = 4 / Math.sqrt(2.0 * DRAWS);

    /** 0 mmHg at 612, 100 at 148, read at 357 to within 1.5. */
    private static final AxisCalibration PRESSURE = new AxisCalibration(612, 0, 148, 100, false);

    /** Of a formula of places, each placed to within 1.5 picture points. */
    private static double drawn(ToDoubleFunction<double[]> formula, double... places) {
        var inputs = Inputs.independent(
                Arrays.stream(places).mapToObj(p -> Input.normal(p, 1.5)).toList());
        return MonteCarloPropagation.of(inputs, formula, DRAWS, 20260914, 0.95).uncertainty();
    }

    @Test
    void theUncertaintyOfAReadingIsThatOfDrawnPlaces() {
        double drawn = drawn(v -> 100 * (v[0] - v[1]) / (v[2] - v[1]), 357, 612, 148);

        // t = 255/464: 100/464 · 1.5 · √(1 + 0.549569² + 0.450431²) = 0.396 58, printed as 0.40
        assertThat(PRESSURE.read(1.5, 357).value()).isCloseTo(54.957, within(0.0005));
        assertThat(PRESSURE.read(1.5, 357).uncertainty()).isCloseTo(0.39658, within(0.000005));
        assertThat(drawn).isCloseTo(PRESSURE.read(1.5, 357).uncertainty(), within(drawn * DRAWN));
    }

    @Test
    void aReadingOnALogarithmicAxisIsAFactor() {
        // 1 at 100 and 100 at 500, read at 460: 0.005 decades a point, so lg y = 1.8 and y = 63.095 73
        // u = 63.095 73 · ln 10 · 0.005 · 1.5 · √(1 + 0.9² + 0.1²) = 1.469 98
        var axis = new AxisCalibration(100, 1, 500, 100, true);
        var reading = axis.read(1.5, 460);

        assertThat(reading.value()).isCloseTo(63.09573, within(0.000005));
        assertThat(reading.uncertainty()).isCloseTo(1.46998, within(0.000005));
        double drawn = drawn(v -> Math.pow(10, 2 * (v[0] - v[1]) / (v[2] - v[1])), 460, 100, 500);
        // the exponential adds half the square of its relative uncertainty, 0.03 %, to a normal's standard deviation
        assertThat(drawn).isCloseTo(reading.uncertainty(), within(drawn * (DRAWN + 0.001)));
    }

    @Test
    void bothEndsOfAnErrorBarShareTheirTicks() {
        // from 330 to 384 on the pressure axis: 27 points to either side, 100/464 · 27 = 5.819
        var bar = PRESSURE.bar(1.5, 330, 384);

        assertThat(bar.halfLength()).isCloseTo(5.819, within(0.0005));
        assertThat(bar.low()).isCloseTo(49.138, within(0.0005));
        assertThat(bar.high()).isCloseTo(60.776, within(0.0005));
        double drawn = drawn(v -> 50 * Math.abs((v[0] - v[1]) / (v[3] - v[2])), 330, 384, 612, 148);
        assertThat(drawn).isCloseTo(bar.uncertainty(), within(drawn * DRAWN));

        var decades = new AxisCalibration(100, 1, 500, 100, true);
        var skewed = decades.bar(1.5, 470, 440);
        double skewedDrawn = drawn(
                v -> (Math.pow(10, 2 * (v[0] - v[2]) / (v[3] - v[2])) - Math.pow(10, 2 * (v[1] - v[2]) / (v[3] - v[2])))
                        / 2,
                470,
                440,
                100,
                500);
        assertThat(skewedDrawn).isCloseTo(skewed.uncertainty(), within(skewedDrawn * (DRAWN + 0.001)));
    }

    @Test
    void repeatsReadersAndTheSizeOfTheMarkAreAddedInQuadrature() {
        // 356 and 358 by one person, 361 by another: means 357 and 361, so 359; SD of the repeats √2, of the readers
        // 4/√2
        var placings = new Placings(1.5, 4, List.of(List.of(356.0, 358.0), List.of(361.0)));

        assertThat(placings.mean()).isEqualTo(359);
        assertThat(placings.repeats()).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(placings.readers()).isCloseTo(4 / Math.sqrt(2), within(1e-12));
        var reading = PRESSURE.read(placings);
        double perPoint = 100.0 / 464;
        assertThat(reading.centre()).isCloseTo(perPoint * 4, within(1e-12));
        assertThat(reading.repeats()).isCloseTo(perPoint * Math.sqrt(2), within(1e-12));
        assertThat(reading.readers()).isCloseTo(perPoint * Math.sqrt(8), within(1e-12));
        double squares = reading.placing() * reading.placing() + perPoint * perPoint * (16 + 2 + 8);
        assertThat(reading.uncertainty()).isCloseTo(Math.sqrt(squares), within(1e-12));
    }

    @Test
    void oneReadingHasNoScatter() {
        var placings = new Placings(1.5, 0, List.of(List.of(357.0)));

        assertThat(placings.repeats()).isZero();
        assertThat(placings.readers()).isZero();
        assertThatThrownBy(() -> new Placings(1.5, 0, List.of())).hasMessageContaining("placed by somebody");
        assertThatThrownBy(() -> new Placings(1.5, 0, List.of(List.of()))).hasMessageContaining("at least once");
    }

    @Test
    void aThirdTickIsOffByAnAmount() {
        // 50 printed where the line has 100 · (612 - 370)/464 = 52.155: 2.155 too high by the line, 2.2 % of the span
        assertThat(PRESSURE.offAt(370, 50)).isCloseTo(-2.155, within(0.0005));
        assertThat(PRESSURE.residualOf(370, 50)).isCloseTo(0.02155, within(0.000005));
    }
}
