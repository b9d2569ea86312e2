package comparand.study;

import comparand.metric.Definition;
import comparand.metric.Input;
import comparand.model.library.SampleUnit;
import comparand.study.quality.QualityRow;
import comparand.study.quality.Written;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A row as quality rules see it. It remembers whether a rule looked at anything that stands in the row itself: a finding
 * about nothing but the description of a case belongs to the row that describes it.
 */
final class LookedAt implements QualityRow {

    private final FileFormulas formulas;
    private final RowFacts own;
    private final RowFacts joined;
    private final Plan.Given given;
    private boolean touchedOwn;
    private boolean askedOfRow;

    /**
     * A row of a file.
     *
     * @param own what stands in the row itself
     * @param joined with what other files say of its case, unit and device
     */
    LookedAt(FileFormulas formulas, RowFacts own, RowFacts joined) {
        this.formulas = formulas;
        this.own = own;
        this.joined = joined;
        this.given = touching(formulas.given(joined));
    }

    private Plan.Given touching(Plan.Given all) {
        return new Plan.Given() {
            @Override
            public Optional<Double> number(Input input) {
                touchedOwn |= own.numbers().containsKey(input.id());
                askedOfRow = true;
                return all.number(input);
            }

            @Override
            public Optional<String> word(String condition) {
                touchedOwn |= own.words().containsKey(condition);
                askedOfRow |= formulas.isInRows(condition);
                return all.word(condition);
            }
        };
    }

    /** Before the next rule looks. */
    void untouched() {
        touchedOwn = false;
        askedOfRow = false;
    }

    /**
     * Whether a rule asked for anything that may be another in the next row. What a rule says without that, it would say of
     * every row of the file.
     */
    boolean askedOfRow() {
        return askedOfRow;
    }

    boolean touchedOwn() {
        return touchedOwn;
    }

    @Override
    public int line() {
        askedOfRow = true;
        return own.line();
    }

    @Override
    public Optional<String> member() {
        askedOfRow = true;
        return Stream.of(SampleUnit.CASES, SampleUnit.RUNS, SampleUnit.UNITS)
                .flatMap(level -> Optional.ofNullable(own.members().get(level)).stream())
                .findFirst()
                .map(m -> joined.centre() + "/" + m);
    }

    @Override
    public Optional<String> sample() {
        askedOfRow = true;
        return own.sample();
    }

    @Override
    public Optional<Written> written(String id) {
        var measured = Optional.ofNullable(own.numbers().get(id));
        touchedOwn |= measured.isPresent();
        askedOfRow = askedOfRow || measured.isPresent() || formulas.isInRows(id);
        return measured.map(m -> new Written(m.value(), m.unit(), m.decimals()));
    }

    @Override
    public Optional<Double> given(String id) {
        // a label may state what nobody computes with, such as a pressure drop at some flow
        return formulas.isGiven(id) ? formulas.input(id).flatMap(given::number) : Optional.empty();
    }

    @Override
    public Optional<Double> number(String id) {
        return given(id).or(() -> formulas.plan(id).flatMap(p -> p.value(given)).filter(Double::isFinite));
    }

    @Override
    public Optional<Double> computed(String metric, String aspect, String variant) {
        return formulas.plan(metric, Definition.NONE.with(aspect, List.of(variant)))
                .flatMap(p -> p.value(given))
                .filter(Double::isFinite);
    }

    @Override
    public Optional<String> word(String condition) {
        return given.word(condition);
    }

    @Override
    public Optional<List<String>> variant(String aspect) {
        askedOfRow |= formulas.isDefinedByRow();
        return joined.definition().get(aspect).or(() -> formulas.definition().get(aspect));
    }

    @Override
    public boolean happened(String event) {
        touchedOwn |= own.events().containsKey(event);
        askedOfRow |= formulas.isInRows(event);
        return joined.events().getOrDefault(event, false);
    }

    @Override
    public Set<String> remarks() {
        touchedOwn |= !own.remarks().isEmpty();
        askedOfRow = true;
        return own.remarks();
    }
}
