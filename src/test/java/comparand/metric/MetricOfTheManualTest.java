package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.manual.CompiledBlock;
import java.lang.invoke.MethodHandles;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The metric and the condition that the manual writes step by step are whole. */
class MetricOfTheManualTest {

    @TempDir
    Path folder;

    @Test
    @DisplayName("the worked value of the metric comes out, and the catalogue takes it in")
    void metric() throws Exception {
        var made = of("add-a-metric.md", "PrimeWashRatio").getDeclaredMethod("metric");
        made.setAccessible(true);
        var metric = (Metric) made.invoke(null);
        var worked = metric.worked().get(0);
        var way = metric.derivations().get(0);
        var row = Map.of(
                "wash-volume",
                        worked.rows("wash-volume").get(0).in(way.inputs().get(0).unit()),
                "prime-volume",
                        worked.rows("prime-volume")
                                .get(0)
                                .in(way.inputs().get(1).unit()));

        assertThat(WorkedAgain.gathered(way, List.of(row), metric.standardDefinition()))
                .isCloseTo(worked.result().in(metric.unit()), within(1e-9));
        assertThat(Catalogue.shipped().with(List.of(metric)).find("prime-wash-ratio"))
                .contains(metric);
    }

    @Test
    @DisplayName("the condition has the words that the text names")
    void condition() throws Exception {
        var field = of("add-a-condition.md", "TiltCondition").getDeclaredField("TILT");
        field.setAccessible(true);

        assertThat(((Condition) field.get(null)).words()).containsExactly("upright", "tilted", "flat");
    }

    private Class<?> of(String chapter, String name) throws Exception {
        var block = CompiledBlock.inChapter(chapter, "comparand/metric/" + name + ".java", folder);
        return MethodHandles.lookup().defineClass(block.bytes());
    }
}
