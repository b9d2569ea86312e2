package comparand.check;

import comparand.diag.Located;
import comparand.diag.Span;
import comparand.metric.Catalogue;
import comparand.metric.Metric;
import comparand.model.Library;
import comparand.model.Library.PublishedValue;
import comparand.model.library.CharacteristicRecord;
import comparand.model.library.DataFileRecord;
import comparand.model.library.DossierRecord;
import comparand.model.library.LabelRecord;
import comparand.model.library.QuestionRecord;
import comparand.model.library.ValueRecord;
import comparand.unit.Printed;
import comparand.unit.PrintedRange;
import comparand.unit.Rounding;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/** What a rule may look at. Rules run at the same time, so nothing here changes. */
final class Context {

    private final Library library;
    private final List<DossierRecord> dossiers;
    private final LocalDate today;
    private final List<PublishedValue> values;

    /**
     * What the rules of one check look at.
     *
     * @param dossiers those to be checked: one for a build, all for a check of the whole library
     * @param today the day dates are judged by
     */
    Context(Library library, List<DossierRecord> dossiers, LocalDate today) {
        this.library = library;
        this.dossiers = List.copyOf(dossiers);
        this.today = today;
        // gathered once: most rules look at every value
        values = library.values().toList();
    }

    Library library() {
        return library;
    }

    List<DossierRecord> dossiers() {
        return dossiers;
    }

    LocalDate today() {
        return today;
    }

    Catalogue catalogue() {
        return library.catalogue();
    }

    Stream<PublishedValue> values() {
        return values.stream();
    }

    /** Every value whose metric is known, with it. */
    void eachValue(BiConsumer<PublishedValue, Metric> visitor) {
        values.forEach(v -> metric(v).ifPresent(m -> visitor.accept(v, m)));
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

    /** Every data file of a study with each metric it gives, where that is known. */
    void eachGiven(BiConsumer<DataFileRecord, Metric> visitor) {
        library.studies().values().stream()
                .flatMap(s -> s.files().stream())
                .forEach(f ->
                        f.gives().forEach(id -> catalogue().find(id.value()).ifPresent(m -> visitor.accept(f, m))));
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

    /** A number a value stands for: as written, and in the unit of its metric. */
    record Amount(Span span, String text, double inMetricUnit, Optional<Printed> printed) {}

    /** Every number a value stands for, in so far as it can be converted: its figure, both ends of its range, its reading. */
    static Stream<Amount> amounts(ValueRecord value, Metric metric) {
        var unit = metric.unit();
        var printed = Stream.concat(figure(value).stream(), range(value))
                .filter(q -> q.value().unit().convertsTo(unit))
                .map(q -> new Amount(q.span(), q.value().toString(), q.value().in(unit), Optional.of(q.value())));
        var read = value.readFromFigure().stream()
                .filter(r -> FigureCalibration.canBeRead(r, metric))
                .map(r -> new Amount(
                        r.points().get(0).span(),
                        "a reading of "
                                + Rounding.significant(r.reading(unit).value(), 3)
                                        .toPlainString() + " " + unit,
                        r.reading(unit).value(),
                        Optional.empty()));
        return Stream.concat(printed, read);
    }

    /** Both ends of a printed range. */
    static Stream<Located<Printed>> range(ValueRecord value) {
        return value.range().stream().flatMap(r -> Stream.of(r.map(PrintedRange::low), r.map(PrintedRange::high)));
    }

    /** Every printed quantity of a value: figures, ends of a range, spread, axis ticks. */
    static Stream<Located<Printed>> quantities(ValueRecord value) {
        return Stream.of(
                        figure(value).stream(),
                        range(value),
                        value.spread().stream().flatMap(s -> s.figures().stream()),
                        value.readFromFigure().stream()
                                .flatMap(f -> Stream.concat(f.axis().stream().map(a -> a.is()), f.barsFrom().stream())),
                        value.was().stream().map(w -> w.value()),
                        value.read().stream().flatMap(r -> r.found().stream()))
                .flatMap(s -> s);
    }

    /** Every verbatim quote of the library. */
    Stream<Located<String>> quotes() {
        var devices = library.devices().values().stream()
                .flatMap(d -> Stream.of(
                                d.label().stream().map(LabelRecord::from),
                                d.parts().stream().flatMap(p -> p.from().stream()),
                                d.characteristics().stream().map(CharacteristicRecord::from))
                        .flatMap(s -> s))
                .flatMap(from -> from.quote().stream());
        return Stream.concat(values().flatMap(v -> v.value().quote().stream()), devices);
    }
}
