package comparand.metric;

import java.util.Map;

/**
 * The conditions that most bench metrics share, with the tolerances used unless a dossier overrides them.
 *
 * <p>Tolerances on temperature, haemoglobin and inlet gases follow the order of the inlet bands of ISO 7199 (cited from
 * memory, not opened), tightened where the band itself would move the metric by more than a usual margin. All are
 * judgements, printed in each report.
 */
final class Flowing {

    static final Tolerance FLOW = Tolerance.percent("5 %");
    static final Tolerance HAEMOGLOBIN = Tolerance.within("1 g/dL");
    static final Tolerance TEMPERATURE = Tolerance.within("1 °C");

    private Flowing() {}

    /** Blood flow within 5 %, and the same test model. */
    static Metric.Builder on(Metric.Builder metric, Influence flow, Map<String, Effect> liquids, String because) {
        return metric.decides(Conditions.BLOOD_FLOW, FLOW, flow)
                .decides(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.instead(liquids, because));
    }
}
