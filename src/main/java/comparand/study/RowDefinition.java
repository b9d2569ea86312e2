package comparand.study;

import comparand.diag.Located;
import comparand.metric.Aspect;
import comparand.metric.Definition;
import comparand.metric.Metric;
import comparand.model.library.Arrangement;
import comparand.model.library.PartRecord;
import java.util.List;

/** Which variant of its metric the result of a row follows: what the row states goes over what its file and device do. */
final class RowDefinition {

    private RowDefinition() {}

    /**
     * The definition of one row's result.
     *
     * @param followed what the way to compute it follows
     */
    static Definition of(Metric metric, Definition followed, DataFile file, RowFacts row) {
        var definition = followed;
        for (var aspect : metric.definition()) {
            var ofRow = row.definition().get(aspect.id());
            if (ofRow.isPresent()) {
                definition = definition.with(aspect.id(), ofRow.get());
            } else if (aspect instanceof Aspect.Parts
                    && definition.get(aspect.id()).isEmpty()) {
                definition = definition.with(aspect.id(), integralParts(file, row.deviceId(), aspect));
            }
        }
        return definition;
    }

    /** What is built into a device was in the circuit, whoever ran the test. */
    private static List<String> integralParts(DataFile file, String device, Aspect aspect) {
        return file.library().device(device).stream()
                .flatMap(d -> d.parts().stream())
                .filter(p -> p.arrangement().value() == Arrangement.INTEGRAL)
                .map(PartRecord::part)
                .map(Located::value)
                .filter(aspect.words()::contains)
                .toList();
    }
}
