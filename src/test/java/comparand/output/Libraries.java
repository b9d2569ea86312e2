package comparand.output;

import comparand.support.Built;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;

/** The libraries on which outputs are tested: the demo, and another kind of device with metrics of its own. */
final class Libraries {

    static final String DEMO = "evidence/dossiers/small-oxygenators.yaml";
    static final String FILTERS = "src/test/resources/library-haemofilter/dossiers/filters.yaml";
    static final String WORKBOOK = "evidence-workbook.xlsx";
    static final String TABLE = "evidence-table.pdf";

    private Libraries() {}

    static Stream<Named<Built>> both() {
        return Stream.of(Named.of("oxygenators", Built.of(DEMO)), Named.of("haemofilters", Built.of(FILTERS)));
    }
}
