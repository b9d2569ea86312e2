package comparand.match;

import comparand.diag.Located;
import comparand.flow.Outcome;
import comparand.metric.Effect;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.metric.Role;
import comparand.model.Circumstance;
import comparand.model.Comparand;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.ConditionVerdict.Subject;
import comparand.model.Evidence;
import comparand.model.LocalPart;
import comparand.model.LocalScope;
import comparand.model.Matched;
import comparand.model.Origin;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.model.Tolerances;
import comparand.model.library.DossierRecord;
import comparand.model.library.QuestionRecord;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The stage that pairs comparands: local with published, each device with the one in use today. */
public final class Matcher {

    private final Evidence evidence;
    private final DossierRecord dossier;
    private final Tolerances tolerances;
    private final LabelledRange labels;
    private final List<Pairing> pairings = new ArrayList<>();
    private final LinkedHashSet<Comparand> unpaired = new LinkedHashSet<>();

    private Matcher(Evidence evidence) {
        this.evidence = evidence;
        this.dossier = evidence.checked().dossier();
        this.tolerances = evidence.checked().tolerances();
        this.labels = new LabelledRange(evidence.checked().library());
    }

    /** Every pair the dossier's questions ask for, in the order of questions and devices. */
    public static Outcome<Matched> match(Evidence evidence) {
        var matcher = new Matcher(evidence);
        evidence.checked().dossier().questions().forEach(matcher::question);
        return Outcome.of(new Matched(evidence, matcher.pairings, List.copyOf(matcher.unpaired)));
    }

    private void question(QuestionRecord question) {
        var metric = evidence.checked()
                .library()
                .catalogue()
                .find(question.metric().value())
                .orElseThrow();
        for (var device : dossier.devices()) {
            if (metric.nature() == Nature.STATED) {
                statedAgainstPresent(metric, device.value(), question);
            } else {
                localAgainstPublished(metric, device.value(), question);
                againstPresent(metric, device.value(), question);
            }
        }
    }

    private void localAgainstPublished(Metric metric, String device, QuestionRecord question) {
        var local = local(metric, device);
        for (var published : published(metric, device)) {
            if (published.summary() instanceof Summary.Words) {
                unpaired.add(published);
                continue;
            }
            local.stream()
                    .filter(l -> !l.isLocal(LocalPart.CENTRE))
                    .map(l -> pair(Purpose.LOCAL_AGAINST_PUBLISHED, l, published))
                    .min(closeness(question))
                    .ifPresentOrElse(pairings::add, () -> unpaired.add(published));
        }
        metric.confusedWith().stream()
                .filter(other -> dossier.questions().stream()
                        .noneMatch(q -> q.metric().value().equals(other)))
                .forEach(other -> otherQuantities(local, other, device));
    }

    /** What goes by a similar name is shown beside ours, so that nobody takes it for the same. */
    private void otherQuantities(List<Comparand> local, String other, String device) {
        evidence.published().stream()
                .filter(p -> p.metric().id().equals(other) && p.device().equals(device))
                .forEach(p -> local.stream().findFirst().ifPresent(l -> pairings.add(otherQuantity(l, p))));
    }

    private void againstPresent(Metric metric, String device, QuestionRecord question) {
        var present = dossier.presentDevice().value();
        if (device.equals(present)) {
            return;
        }
        var others = local(metric, present, LocalPart.WHOLE);
        local(metric, device, LocalPart.WHOLE).stream()
                .filter(l -> isAsked(l, question))
                .forEach(l -> others.stream()
                        .map(p -> pair(Purpose.AGAINST_PRESENT_DEVICE, l, p))
                        .min(closeness(question))
                        .ifPresent(pairings::add));
        withinCentres(metric, device, present, question);
    }

    /** Side by side in one hospital, the difference holds none between hospitals. */
    private void withinCentres(Metric metric, String device, String present, QuestionRecord question) {
        var others = local(metric, present, LocalPart.CENTRE);
        local(metric, device, LocalPart.CENTRE).stream()
                .filter(l -> isAsked(l, question))
                .forEach(l -> others.stream()
                        .filter(p -> scope(p).centre().equals(scope(l).centre()))
                        .map(p -> pair(Purpose.WITHIN_CENTRE, l, p))
                        .min(closeness(question))
                        .ifPresent(pairings::add));
    }

    private static LocalScope scope(Comparand local) {
        return local.origin().fold(p -> LocalScope.whole(Set.of()), Origin.Local::scope);
    }

    /** Steps that are asked for leave out the other steps of a stepped result; what was not stepped is asked for too. */
    private boolean isAsked(Comparand local, QuestionRecord question) {
        return question.at()
                .filter(at -> scope(local).steps().contains(at.condition().value()))
                .map(at -> {
                    var use = local.metric().condition(at.condition().value()).orElseThrow();
                    var unit = use.condition().unit().orElse(Unit.ONE);
                    var circumstance = local.condition(at.condition().value());
                    return at.steps().list().stream()
                            .map(Located::value)
                            .anyMatch(step -> circumstance instanceof Circumstance.Amount a
                                    && tolerances
                                            .of(local.metric(), use)
                                            .tolerance()
                                            .same(a.value(), step.in(unit), unit));
                })
                .orElse(true);
    }

    /** Nominal figures of the instructions for use in force; the present device's figure is their footing. */
    private void statedAgainstPresent(Metric metric, String device, QuestionRecord question) {
        var present = dossier.presentDevice().value();
        var own = stated(metric, device);
        if (device.equals(present)) {
            return;
        }
        for (var figure : own) {
            stated(metric, present).stream()
                    .map(p -> pair(Purpose.STATED_AGAINST_PRESENT_DEVICE, figure, p))
                    .min(closeness(question))
                    .ifPresentOrElse(pairings::add, () -> unpaired.add(figure));
        }
    }

    private List<Comparand> stated(Metric metric, String device) {
        var instructions = evidence.checked()
                .library()
                .device(device)
                .map(d -> d.instructions().value());
        return published(metric, device).stream()
                .filter(c -> c.origin()
                        .fold(p -> Optional.of(p.source().id()), l -> Optional.<String>empty())
                        .equals(instructions))
                .toList();
    }

    private List<Comparand> local(Metric metric, String device) {
        return evidence.local().stream()
                .filter(c -> c.metric().equals(metric) && c.device().equals(device))
                .toList();
    }

    private List<Comparand> local(Metric metric, String device, LocalPart part) {
        return local(metric, device).stream().filter(c -> c.isLocal(part)).toList();
    }

    private List<Comparand> published(Metric metric, String device) {
        return evidence.published().stream()
                .filter(c -> c.metric().equals(metric) && c.device().equals(device))
                .toList();
    }

    /**
     * A pair that may be compared first, then the one with fewer differences, with fewer gaps, with the nearer step, with
     * a step the dossier asks for, and last by name.
     */
    private Comparator<Pairing> closeness(QuestionRecord question) {
        return Comparator.comparing((Pairing p) -> !p.standing().isCompared())
                .thenComparing(p -> against(p, Mark.DIFFERS))
                .thenComparing(p -> against(p, Mark.NOT_REPORTED))
                .thenComparing(p -> !p.ours().isLocal(LocalPart.WHOLE))
                .thenComparing(Matcher::distance)
                .thenComparing(p -> !isAsked(p.ours(), question))
                .thenComparing(p -> p.ours().id())
                .thenComparing(p -> p.theirs().id());
    }

    private static long against(Pairing pairing, Mark mark) {
        return pairing.verdicts().stream()
                .filter(v -> v.decidesAgainst() && v.mark() == mark)
                .count();
    }

    /** How far apart the two lie along the condition their metric is stepped by, relative to its size. */
    private static double distance(Pairing pairing) {
        return pairing.ours()
                .metric()
                .interpolatesOver()
                .map(over -> {
                    var a = pairing.ours().condition(over);
                    var b = pairing.theirs().condition(over);
                    return a instanceof Circumstance.Amount x && b instanceof Circumstance.Amount y
                            ? Math.abs(x.value() - y.value()) / Math.max(Math.abs(y.value()), 1e-12)
                            : Double.MAX_VALUE;
                })
                .orElse(0.0);
    }

    private Pairing pair(Purpose purpose, Comparand ours, Comparand theirs) {
        var verdicts = new SideBySide(ours, theirs, tolerances, labels).verdicts();
        return new Pairing(purpose, ours, theirs, standing(verdicts), verdicts);
    }

    static Standing standing(List<ConditionVerdict> verdicts) {
        var against = verdicts.stream().filter(ConditionVerdict::decidesAgainst).toList();
        if (against.stream().anyMatch(v -> v.mark() == Mark.DIFFERS && v.of() == Subject.DEFINITION)) {
            return Standing.DIFFERENT_QUANTITY;
        }
        if (against.stream().anyMatch(v -> v.mark() == Mark.DIFFERS)) {
            return Standing.CONDITIONS_DIFFER;
        }
        if (!against.isEmpty()) {
            return Standing.NOT_REPORTED;
        }
        return verdicts.stream().anyMatch(v -> v.mark() == Mark.MADE_SAME)
                ? Standing.SAME_AFTER_CONVERSION
                : Standing.SAME;
    }

    private static Pairing otherQuantity(Comparand ours, Comparand theirs) {
        return new Pairing(
                Purpose.LOCAL_AGAINST_PUBLISHED,
                ours,
                theirs,
                Standing.DIFFERENT_QUANTITY,
                List.of(new ConditionVerdict(
                        Subject.DEFINITION,
                        "quantity",
                        "quantity",
                        "quantity",
                        Role.DECIDES,
                        Mark.DIFFERS,
                        ours.metric().name(),
                        theirs.metric().name(),
                        "equal",
                        Effect.NOT_PREDICTABLE,
                        "")));
    }
}
