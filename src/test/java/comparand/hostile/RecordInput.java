package comparand.hostile;

import comparand.diag.Diagnostic;
import comparand.model.library.MetricRecord;
import comparand.read.DeclaredMetricsUse;
import comparand.read.yaml.Binder;
import comparand.read.yaml.RecordPlaces;
import java.util.ArrayList;
import java.util.List;

/** A record or template in YAML; of a metric, what it declares is read too. */
record RecordInput(String name, Class<? extends Record> type, List<byte[]> seeds, List<String> words)
        implements FuzzedReader {

    static RecordInput of(String kind, Class<? extends Record> type, List<byte[]> seeds) {
        return new RecordInput("record-" + kind, type, seeds, Seeds.words(seeds));
    }

    @Override
    public Read read(byte[] input) {
        var findings = new ArrayList<Diagnostic>();
        var record = Binder.read(FILE, input, type, findings);
        if (record.isPresent()
                && RecordPlaces.of(FILE, input).findings().stream().anyMatch(Diagnostic::stops)) {
            throw new AssertionError("a record that has no places");
        }
        record.filter(MetricRecord.class::isInstance)
                .map(MetricRecord.class::cast)
                .ifPresent(m -> DeclaredMetricsUse.catalogue(List.of(m), findings));
        return new Read(record.isPresent() && findings.stream().noneMatch(Diagnostic::stops), findings);
    }
}
