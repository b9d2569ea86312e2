package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * What a published or local number means: its unit, its definition in all the variants met in print, the conditions
 * under which two values of it may be compared, and how it is computed.
 *
 * <p>Immutable. Shipped metrics are built in one file each; declared metrics are built from a record.
 */
public final class Metric {

    private final Builder b;

    private Metric(Builder builder) {
        this.b = builder;
    }

    public static Builder named(String id, String name) {
        return new Builder(id, name);
    }

    /** As written in records, such as {@code pressure-drop}. */
    public String id() {
        return b.id;
    }

    /** As written in sentences, such as "pressure drop". */
    public String name() {
        return b.name;
    }

    public String symbol() {
        return b.symbol;
    }

    /** One sentence: what is measured between what and what. */
    public String meaning() {
        return b.meaning;
    }

    /** The unit all values of it are brought to, and printed in. */
    public Unit unit() {
        return b.unit;
    }

    /** The unit of a difference of two values, in words: percentage points for a metric in per cent. */
    public String differenceUnit() {
        return b.unit.spelling().equals("%") ? "percentage points" : b.unit.spelling();
    }

    public Nature nature() {
        return b.nature;
    }

    public Better better() {
        return b.better;
    }

    /** The most decimals a result of it is ever printed with: the resolution of the instruments, plus one digit. */
    public OptionalInt mostDecimals() {
        return b.mostDecimals;
    }

    /** Ways to compute it, the preferred one first; empty for what is only stated or counted. */
    public List<Derivation> derivations() {
        return b.derivations;
    }

    public List<Aspect> definition() {
        return b.aspects;
    }

    public Optional<Aspect> aspect(String id) {
        return b.aspects.stream().filter(a -> a.id().equals(id)).findFirst();
    }

    /** The standard variant of every aspect that has one. */
    public Definition standardDefinition() {
        var standard = new TreeMap<String, List<String>>();
        b.aspects.forEach(a -> a.standard().ifPresent(word -> standard.put(a.id(), List.of(word))));
        return new Definition(standard);
    }

    /** In the order in which they are printed. */
    public List<ConditionUse> conditions() {
        return b.conditions;
    }

    public Optional<ConditionUse> condition(String id) {
        return b.conditions.stream().filter(c -> c.condition().id().equals(id)).findFirst();
    }

    /** The condition along which values may be read off between two neighbours, if there is one. */
    public Optional<String> interpolatesOver() {
        return b.interpolatesOver;
    }

    /** The condition whose labelled limits it states, if it states limits of use. */
    public Optional<String> limits() {
        return b.limits;
    }

    /** How a value is brought to standard blood at the inlet, if that can be done. */
    public Optional<InletStandard> inletStandard() {
        return b.inletStandard;
    }

    /** Outside of these a value is worth a second look. */
    public Bounds plausible() {
        return b.plausible;
    }

    /** Outside of these a value cannot be right. */
    public Bounds possible() {
        return b.possible;
    }

    public List<Citation> citations() {
        return b.citations;
    }

    public List<WorkedValue> worked() {
        return b.worked;
    }

    /** Metrics that go by a similar name and are another quantity. */
    public List<String> confusedWith() {
        return b.confusedWith;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Metric that && b.id.equals(that.b.id);
    }

    @Override
    public int hashCode() {
        return b.id.hashCode();
    }

    @Override
    public String toString() {
        return b.id;
    }

    /** Collects the card of one metric; {@link #build} checks that it is whole. */
    public static final class Builder {
        private final String id;
        private final String name;
        private String symbol = "";
        private String meaning = "";
        private Unit unit = Unit.ONE;
        private Nature nature = Nature.MEASURED;
        private Better better = Better.NEITHER;
        private OptionalInt mostDecimals = OptionalInt.empty();
        private List<Derivation> derivations = new ArrayList<>();
        private List<Aspect> aspects = new ArrayList<>();
        private List<ConditionUse> conditions = new ArrayList<>();
        private Optional<String> interpolatesOver = Optional.empty();
        private Optional<String> limits = Optional.empty();
        private Optional<InletStandard> inletStandard = Optional.empty();
        private Bounds plausible = Bounds.ANY;
        private Bounds possible = Bounds.ANY;
        private List<Citation> citations = new ArrayList<>();
        private List<WorkedValue> worked = new ArrayList<>();
        private List<String> confusedWith = List.of();

        private Builder(String id, String name) {
            this.id = requireNonNull(id, "id");
            this.name = requireNonNull(name, "name");
        }

        public Builder symbol(String text) {
            symbol = text;
            return this;
        }

        public Builder meaning(String sentence) {
            meaning = sentence;
            return this;
        }

        public Builder unit(Unit u) {
            unit = u;
            return this;
        }

        public Builder unit(String spelling) {
            return unit(Unit.of(spelling));
        }

        public Builder nature(Nature n) {
            nature = n;
            return this;
        }

        public Builder better(Better which) {
            better = which;
            return this;
        }

        public Builder mostDecimals(int decimals) {
            mostDecimals = OptionalInt.of(decimals);
            return this;
        }

        public Builder derived(Derivation way) {
            derivations.add(way);
            return this;
        }

        public Builder aspect(Aspect aspect) {
            aspects.add(aspect);
            return this;
        }

        public Builder condition(ConditionUse use) {
            conditions.add(use);
            return this;
        }

        public Builder decides(Condition condition, Tolerance tolerance, Influence influence) {
            return condition(new ConditionUse(condition, Role.DECIDES, tolerance, influence));
        }

        /** Decides between two that report it, and is only named where one is silent. */
        public Builder decidesIfKnown(Condition condition, Tolerance tolerance, Influence influence) {
            return condition(new ConditionUse(condition, Role.DECIDES_IF_KNOWN, tolerance, influence));
        }

        public Builder qualifies(Condition condition, Tolerance tolerance, Influence influence) {
            return condition(new ConditionUse(condition, Role.QUALIFIES, tolerance, influence));
        }

        public Builder interpolatesOver(Condition condition) {
            interpolatesOver = Optional.of(condition.id());
            return this;
        }

        public Builder limits(Condition condition) {
            limits = Optional.of(condition.id());
            return this;
        }

        public Builder inletStandard(InletStandard standard) {
            inletStandard = Optional.of(standard);
            return this;
        }

        public Builder plausible(double low, double high) {
            plausible = new Bounds(low, high);
            return this;
        }

        public Builder possible(double low, double high) {
            possible = new Bounds(low, high);
            return this;
        }

        public Builder cites(Citation citation) {
            citations.add(citation);
            return this;
        }

        public Builder worked(WorkedValue value) {
            worked.add(value);
            return this;
        }

        public Builder confusedWith(String... ids) {
            confusedWith = List.of(ids);
            return this;
        }

        /**
         * The finished metric.
         *
         * @throws IllegalArgumentException if the card is incomplete: no citation, a formula without a worked value, or
         *     interpolation over a condition it does not name
         */
        public Metric build() {
            derivations = List.copyOf(derivations);
            aspects = List.copyOf(aspects);
            conditions = List.copyOf(conditions);
            citations = List.copyOf(citations);
            worked = List.copyOf(worked);
            return WholeCard.checked(new Metric(this));
        }
    }
}
