package comparand.check;

import comparand.diag.Located;
import comparand.metric.Catalogue;
import comparand.metric.Metric;
import comparand.model.Library;
import comparand.model.Library.PublishedValue;
import comparand.model.library.DossierRecord;
import comparand.model.library.QuestionRecord;
import comparand.model.library.ValueRecord;
import comparand.unit.Printed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/**
 * What a rule may look at.
 *
 * @param dossiers those to be checked: one for a build, all for a check of the whole library
 * @param today the day dates are judged by
 */
record Context(Library library, List<DossierRecord> dossiers, LocalDate today) {

    Catalogue catalogue() {
        return library.catalogue();
    }

    Stream<PublishedValue> values() {
        return library.values();
    }

    /** Every value whose metric is known, with it. */
    void eachValue(BiConsumer<PublishedValue, Metric> visitor) {
        values().forEach(v -> metric(v).ifPresent(m -> visitor.accept(v, m)));
    }

    Optional<Metric> metric(PublishedValue value) {
        return catalogue().find(value.value().metric().value());
    }

    /** Every question whose metric is known, with it. */
    void eachQuestion(BiConsumer<QuestionRecord, Metric> visitor) {
        dossiers.stream()
                .flatMap(d -> d.questions().stream())
                .forEach(q -> catalogue().find(q.metric().value()).ifPresent(m -> visitor.accept(q, m)));
    }

    /** The single printed figure of a value, whatever it is called: value, mean, median, limit. */
    static Optional<Located<Printed>> figure(ValueRecord value) {
        return value.value()
                .or(value::mean)
                .or(value::median)
                .or(value::atLeast)
                .or(value::atMost)
                .or(value::about);
    }

    /** Every printed quantity of a value: figures, ends of a range, spread, axis ticks. */
    static Stream<Located<Printed>> quantities(ValueRecord value) {
        return Stream.of(
                        figure(value).stream(),
                        value.range().stream().flatMap(r -> Stream.of(r.map(x -> x.low()), r.map(x -> x.high()))),
                        value.spread().stream().flatMap(s -> s.figures().stream()),
                        value.readFromFigure().stream()
                                .flatMap(f -> f.axis().stream().map(a -> a.is())),
                        value.was().stream().map(w -> w.value()),
                        value.read().stream().flatMap(r -> r.found().stream()))
                .flatMap(s -> s);
    }
}
