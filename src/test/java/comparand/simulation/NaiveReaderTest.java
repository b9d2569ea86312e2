package comparand.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.simulation.NaiveInterval.Group;
import comparand.simulation.Reading.Difference;
import comparand.simulation.Reading.Reach;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The naive reader, against a library worked by hand; t quantiles from SciPy 1.17, a general-purpose reference library.
 *
 * <p>Two units with two runs each at 4 L/min count as four results: 60, 62, 64, 66 mmHg, mean 63, SD 2.5820, SE² 5/3.
 */
class NaiveReaderTest {

    private static final double[] ROWS = {60, 62, 64, 66};

    @TempDir
    Path library;

    /** 8.00 ± 0.40 kPa of 6: 60.005 ± 3.0002 mmHg, SE² 1.5002; df 7.288, t 2.3458, so 2.995 ± 4.175. */
    @Test
    void twoSpreadsAreTestedAfterWelch() {
        var interval = NaiveInterval.welch(Group.of(ROWS), new Group(60.005, 3.0002, 6));

        assertThat(interval.low()).isCloseTo(-1.180, within(0.0006));
        assertThat(interval.high()).isCloseTo(7.170, within(0.0006));
    }

    /** t(3) = 3.1824; 63 - 55 = 8 ± 3.1824 · 1.2910 = 8 ± 4.1085. */
    @Test
    void aFigureIsTakenAsExact() {
        var interval = NaiveInterval.againstFigure(Group.of(ROWS), 55);

        assertThat(interval.low()).isCloseTo(3.8915, within(0.0001));
        assertThat(interval.high()).isCloseTo(12.1085, within(0.0001));
    }

    @Test
    void theFilesAreReadAsTheyStand() throws IOException {
        put("dossiers/question.yaml", """
                questions:
                  - metric: pressure-drop
                    margin: 8 mmHg
                    at: {condition: blood-flow, steps: [6.0 L/min]}
                """);
        put("studies/local/study.yaml", "kind: bench\n");
        put("studies/local/rows.csv", """
                member,reading,device,flow_lpm,p_in_mmhg,p_out_mmhg,hb_gdl,t_c
                E-1,1,E,4.00,260,200,12,37
                E-1,2,E,4.00,262,200,12,37
                E-2,1,E,4.00,264,200,12,37
                E-2,2,E,4.00,266,200,12,37
                E-1,1,E,6.00,300,200,12,37
                E-1,2,E,6.00,302,200,12,37
                E-2,1,E,6.00,304,200,12,37
                E-2,2,E,6.00,306,200,12,37
                P-1,1,P,6.00,290,200,12,37
                P-1,2,P,6.00,292,200,12,37
                P-2,1,P,6.00,294,200,12,37
                P-2,2,P,6.00,296,200,12,37
                """);
        put("sources/s.yaml", """
                values:
                  - {id: A, metric: pressure-drop, mean: 8.00 kPa, spread: {kind: se, of: 0.40 kPa}, n: 6 units,
                     conditions: {blood-flow: 4.4 L/min}}
                  - {id: B, metric: pressure-drop, value: 55 mmHg, n: not reported, conditions: {blood-flow: 4.4 L/min}}
                  - {id: C, metric: pressure-drop, mean: 60 mmHg, spread: {kind: ci95, of: [56 mmHg, 64 mmHg]}, n: 6 units,
                     conditions: {blood-flow: 3 L/min}}
                  - {id: D, metric: pressure-drop, at-most: 80 mmHg, n: not reported, conditions: {blood-flow: not reported}}
                  - {id: E, metric: priming-volume, value: 210 mL}
                """);

        var says = NaiveReader.read(library);

        assertThat(says.published()).containsOnlyKeys("A", "B", "C", "D");
        assertThat(says.of("A")).isEqualTo(new Difference(0, Reach.WITHIN));
        assertThat(says.of("B")).isEqualTo(new Difference(1, Reach.OPEN));
        // half of 56 to 64 is 4: SE² 2.667; df 8.0, t 2.306; 3 ± 4.80
        assertThat(says.of("C")).isEqualTo(new Difference(0, Reach.WITHIN));
        // silent on flow: the middle step, 103 mmHg; 23 ± 4.1
        assertThat(says.of("D")).isEqualTo(new Difference(1, Reach.BEYOND));
        // 103 - 93 = 10, SE² 10/3, df 6, t 2.4469; 10 ± 4.47
        assertThat(says.present()).contains(new Difference(1, Reach.OPEN));
    }

    private void put(String file, String text) throws IOException {
        var path = library.resolve(file);
        Files.createDirectories(path.resolveSibling("."));
        Files.writeString(path, text);
    }
}
