package comparand.study;

import comparand.diag.Located;
import comparand.metric.Condition;
import comparand.metric.Definition;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.unit.Unit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What can be had from a row of one file, by the ids of the catalogue; each way is looked for once. */
final class FileFormulas {

    private final DataFile file;
    private final Definition definition;
    private final boolean isDefinedByRow;
    private final Map<String, Optional<Input>> inputs = new HashMap<>();
    private final Map<String, Optional<Plan>> plans = new HashMap<>();

    FileFormulas(DataFile file) {
        this.file = file;
        this.definition = definition(file);
        this.isDefinedByRow = file.study().files().stream()
                .flatMap(f -> f.columns().list().stream())
                .anyMatch(column -> column.value().definition().isPresent());
    }

    private static Definition definition(DataFile file) {
        var stated = Definition.NONE;
        for (var entry : file.mapping().definition().list()) {
            stated = stated.with(
                    entry.key().value(),
                    entry.value().list().stream().map(Located::value).toList());
        }
        return stated;
    }

    /** The variants that the file states for all its rows. */
    Definition definition() {
        return definition;
    }

    /** Whether a quantity is given by rows, for the whole file or, where it is stated by label alone, by the label. */
    boolean isGiven(String id) {
        return file.given().has(id);
    }

    /** Whether rows give a quantity, a word or an event, themselves or through what describes their case, unit or device. */
    boolean isInRows(String id) {
        return file.given().isInRows(id);
    }

    /** Whether some column of the study says by which definition a row was measured. */
    boolean isDefinedByRow() {
        return isDefinedByRow;
    }

    Plan.Given given(RowFacts row) {
        return file.given().of(row);
    }

    /** A quantity with the unit the catalogue has for it; empty if nothing in it goes by that id. */
    Optional<Input> input(String id) {
        return inputs.computeIfAbsent(id, this::unitOf);
    }

    private Optional<Input> unitOf(String id) {
        var catalogue = file.library().catalogue();
        return catalogue
                .input(id)
                .map(Input::unit)
                .or(() -> catalogue.condition(id).flatMap(Condition::unit))
                .or(() -> catalogue.find(id).map(Metric::unit))
                .map(unit -> input(id, unit));
    }

    private static Input input(String id, Unit unit) {
        return new Input(id, id, id, unit);
    }

    /** The way to compute a metric by the file's definition. */
    Optional<Plan> plan(String metric) {
        return plans.computeIfAbsent(metric, m -> file.given().plan(m, definition));
    }

    /** The way to compute a metric by one variant. */
    Optional<Plan> plan(String metric, Definition wanted) {
        return plans.computeIfAbsent(metric + "|" + wanted, k -> file.given().plan(metric, wanted));
    }
}
