package comparand.read;

import comparand.diag.Diagnostic;
import comparand.metric.Catalogue;
import comparand.model.library.MetricRecord;
import java.util.List;

/** The reading of declared metrics, for tests of other packages. */
public final class DeclaredMetricsUse {

    private DeclaredMetricsUse() {}

    public static Catalogue catalogue(List<MetricRecord> records, List<Diagnostic> findings) {
        return DeclaredMetrics.catalogue(records, findings);
    }
}
