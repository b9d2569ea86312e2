package comparand.match;

import comparand.metric.Aspect;
import comparand.metric.ConditionUse;
import comparand.metric.Effect;
import comparand.metric.Influence;
import comparand.metric.Role;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Latitude;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.ConditionVerdict.Subject;
import comparand.model.Step;
import comparand.model.Tolerances;
import comparand.model.library.SpreadKind;
import comparand.stat.Interval;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Sets two comparands of one metric side by side: unit and form, definition, then conditions in the metric's order. */
final class SideBySide {

    private static final String NOT_REPORTED = "not reported";

    private final Comparand ours;
    private final Comparand theirs;
    private final Tolerances tolerances;
    private final LabelledRange labels;

    SideBySide(Comparand ours, Comparand theirs, Tolerances tolerances, LabelledRange labels) {
        this.ours = ours;
        this.theirs = theirs;
        this.tolerances = tolerances;
        this.labels = labels;
    }

    List<ConditionVerdict> verdicts() {
        var verdicts = new ArrayList<ConditionVerdict>();
        form().forEach(verdicts::add);
        ours.metric().definition().stream().map(this::aspect).forEach(verdicts::add);
        ours.metric().conditions().stream()
                .map(use -> condition(tolerances.of(ours.metric(), use)))
                .forEach(verdicts::add);
        labels.verdict(ours, theirs).ifPresent(verdicts::add);
        return verdicts;
    }

    /** Unit and summary form, only where a step was needed. */
    private Stream<ConditionVerdict> form() {
        return Stream.of(
                        madeSame(
                                Step.Kind.UNIT,
                                "unit",
                                "unit",
                                ours.metric().unit().spelling(),
                                s -> s.facts().getOrDefault("from", "")),
                        madeSame(
                                Step.Kind.SPREAD,
                                "spread",
                                "form of the spread",
                                SpreadKind.SD.spelling(),
                                s -> s.facts().getOrDefault("kind", "")),
                        madeSame(
                                Step.Kind.QUARTILES,
                                "spread",
                                "form of the summary",
                                "mean and " + SpreadKind.SD.spelling(),
                                s -> "median and " + s.facts().getOrDefault("kind", "")))
                .flatMap(Optional::stream);
    }

    private Optional<ConditionVerdict> madeSame(
            Step.Kind kind, String shortName, String name, String is, Function<Step, String> was) {
        return theirs.trail().stream()
                .filter(s -> s.kind() == kind)
                .findFirst()
                .map(step -> new ConditionVerdict(
                        Subject.UNIT,
                        shortName,
                        name,
                        shortName,
                        Role.QUALIFIES,
                        Mark.MADE_SAME,
                        is,
                        was.apply(step),
                        "",
                        Effect.NONE,
                        ""));
    }

    private ConditionVerdict aspect(Aspect aspect) {
        var mine = ours.definition().get(aspect.id()).map(aspect::text);
        var other = theirs.definition().get(aspect.id()).map(aspect::text);
        Mark mark;
        if (mine.isEmpty() || other.isEmpty()) {
            mark = Mark.NOT_REPORTED;
        } else if (!mine.equals(other)) {
            mark = Mark.DIFFERS;
        } else {
            mark = wasConverted(aspect, theirs) || wasConverted(aspect, ours) ? Mark.MADE_SAME : Mark.SAME;
        }
        return new ConditionVerdict(
                Subject.DEFINITION,
                aspect.id(),
                aspect.name(),
                aspect.shortName(),
                roleOf(aspect),
                mark,
                mine.orElse(NOT_REPORTED),
                other.orElse(NOT_REPORTED),
                "equal",
                Effect.NOT_PREDICTABLE,
                "");
    }

    private Role roleOf(Aspect aspect) {
        return aspect.role() != Role.DECIDES_WITHIN_DEVICE
                ? aspect.role()
                : ours.device().equals(theirs.device()) ? Role.DECIDES : Role.QUALIFIES;
    }

    private static boolean wasConverted(Aspect aspect, Comparand side) {
        return side.trail().stream()
                .anyMatch(s -> aspect instanceof Aspect.Parts
                        ? s.kind() == Step.Kind.PARTS
                        : s.kind() == Step.Kind.VARIANT
                                && aspect.name().equals(s.facts().get("aspect")));
    }

    private ConditionVerdict condition(ConditionUse use) {
        var id = use.condition().id();
        var mine = ours.condition(id);
        var other = theirs.condition(id);
        boolean madeSame = Stream.of(ours, theirs)
                .flatMap(side -> side.trail().stream())
                .anyMatch(s -> s.kind().converts()
                        && use.condition().name().equals(s.facts().get("over")));
        var within = madeSame ? Mark.MADE_SAME : Mark.SAME;
        var mark = !mine.isReported() || !other.isReported()
                ? Mark.NOT_REPORTED
                : same(use, mine, other) ? within : Mark.DIFFERS;
        var beyond = effect(use.influence(), mine, other);
        return new ConditionVerdict(
                Subject.CONDITION,
                id,
                use.condition().name(),
                use.condition().shortName(),
                role(use.role(), mark),
                mark,
                mine.text(),
                other.text(),
                use.tolerance().words(),
                mark == Mark.DIFFERS ? beyond : Effect.NOT_PREDICTABLE,
                use.influence().because(),
                ends(mine).flatMap(a -> ends(other).map(b -> new Latitude(a, b, within, beyond))));
    }

    private static Role role(Role of, Mark mark) {
        return switch (of) {
            case DECIDES, DECIDES_WITHIN_DEVICE -> Role.DECIDES;
            case DECIDES_IF_KNOWN -> mark == Mark.NOT_REPORTED ? Role.QUALIFIES : Role.DECIDES;
            case QUALIFIES -> Role.QUALIFIES;
        };
    }

    private static boolean same(ConditionUse use, Circumstance mine, Circumstance other) {
        var unit = use.condition().unit().orElse(Unit.ONE);
        return mine.fold(new Circumstance.Cases<>() {
            @Override
            public Boolean amount(Circumstance.Amount a) {
                return ends(other)
                        .map(e -> use.tolerance().same(a.value(), e.low(), unit)
                                && use.tolerance().same(a.value(), e.high(), unit))
                        .orElse(false);
            }

            @Override
            public Boolean between(Circumstance.Between b) {
                return ends(other)
                        .map(e -> use.tolerance().same(b.low(), e.low(), unit)
                                && use.tolerance().same(b.high(), e.high(), unit))
                        .orElse(false);
            }

            @Override
            public Boolean word(Circumstance.Word w) {
                return other instanceof Circumstance.Word o && o.text().equals(w.text());
            }

            @Override
            public Boolean notReported() {
                return false;
            }
        });
    }

    /** A number, or the two ends of a range; nothing for words. */
    private static Optional<Interval> ends(Circumstance c) {
        return c.fold(new Circumstance.Cases<>() {
            @Override
            public Optional<Interval> amount(Circumstance.Amount a) {
                return Optional.of(new Interval(a.value(), a.value()));
            }

            @Override
            public Optional<Interval> between(Circumstance.Between b) {
                return Optional.of(new Interval(b.low(), b.high()));
            }

            @Override
            public Optional<Interval> word(Circumstance.Word w) {
                return Optional.empty();
            }

            @Override
            public Optional<Interval> notReported() {
                return Optional.empty();
            }
        });
    }

    /** What their circumstance, compared with ours, does to the metric by itself. */
    private static Effect effect(Influence influence, Circumstance mine, Circumstance other) {
        var a = ends(mine);
        var b = ends(other);
        if (a.isPresent() && b.isPresent()) {
            double difference =
                    b.get().low() + b.get().high() - a.get().low() - a.get().high();
            return difference > 0
                    ? influence.more()
                    : difference < 0 ? influence.more().reversed() : Effect.NOT_PREDICTABLE;
        }
        var theirs = influence.instead().get(other.text());
        if (theirs != null) {
            return theirs;
        }
        var ours = influence.instead().get(mine.text());
        return ours == null ? Effect.NOT_PREDICTABLE : ours.reversed();
    }
}
