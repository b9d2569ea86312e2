package comparand.read.proposal;

import comparand.diag.Suggest;
import comparand.metric.Catalogue;
import comparand.metric.Condition;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.library.ColumnRole;
import comparand.model.library.DateOrder;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Proposes what the columns of one table hold, by their headings and by what stands below them. */
final class ColumnProposals {

    private static final String CHECK = "CHECK: ";

    private final Catalogue catalogue;

    /** The unit of every quantity that is a number, by id. */
    private final Map<String, Unit> units = new TreeMap<>();

    private final Set<String> taken = new HashSet<>();

    ColumnProposals(Catalogue catalogue) {
        this.catalogue = catalogue;
        catalogue.conditions().values().forEach(c -> c.unit().ifPresent(u -> units.put(c.id(), u)));
        catalogue.inputs().values().forEach(i -> units.put(i.id(), i.unit()));
        catalogue.all().stream().filter(ColumnProposals::isMeasured).forEach(m -> units.put(m.id(), m.unit()));
    }

    ColumnProposal of(String heading, ColumnFacts facts) {
        if (facts.filled() == 0) {
            return ColumnProposal.ignored(heading, "no cell of it is filled");
        }
        var words = HeadingWords.of(heading);
        var role = TradeWords.role(words.name());
        if (facts.isDates()) {
            return date(heading, facts);
        }
        if (role.isPresent() && role.get() != ColumnRole.DATE) {
            return role(heading, role.get(), facts);
        }
        return TradeWords.quantity(words.name())
                .or(() -> Optional.of(String.join("-", words.words())))
                .filter(this::isKnown)
                .map(id -> quantity(heading, id, words, facts))
                .orElseGet(() -> unknown(heading, words, facts));
    }

    private static boolean isMeasured(Metric metric) {
        return metric.nature() != Nature.EVENT && metric.nature() != Nature.STATED;
    }

    /** What formulas give is seldom a column. */
    private boolean isComputed(String id) {
        return catalogue.find(id).filter(m -> !m.derivations().isEmpty()).isPresent();
    }

    private boolean isKnown(String id) {
        return units.containsKey(id) || catalogue.condition(id).isPresent();
    }

    private ColumnProposal role(String heading, ColumnRole role, ColumnFacts facts) {
        var seen = "by its heading; it holds " + examples(facts);
        if (role == ColumnRole.REMARK) {
            return ColumnProposal.holding(heading, role, "", seen, List.of());
        }
        if (!taken.add(role.name())) {
            return ColumnProposal.ignored(heading, "another column seems to hold the " + word(role) + " already");
        }
        if (role != ColumnRole.DEVICE) {
            return ColumnProposal.holding(heading, role, "", CHECK + seen, List.of());
        }
        var codes = facts.codes().stream()
                .map(c -> YamlWords.quoted(c) + ": " + slug(c))
                .collect(Collectors.joining(", "));
        return ColumnProposal.holding(
                heading,
                role,
                codes.isEmpty() ? "" : ", codes: {" + codes + "}",
                CHECK + seen + "; behind each code stands the name of a file in devices/, guessed from the code",
                List.of("which device each code of `%s` stands for".formatted(heading)));
    }

    private ColumnProposal date(String heading, ColumnFacts facts) {
        if (!facts.hasTextDates()) {
            return ColumnProposal.holding(heading, ColumnRole.DATE, "", "its cells are stored as dates", List.of());
        }
        var orders = facts.orders().stream().map(ColumnProposals::word).toList();
        if (orders.size() == 1) {
            return ColumnProposal.holding(
                    heading,
                    ColumnRole.DATE,
                    ", date-order: " + orders.get(0),
                    "the only order in which all its dates exist; it holds " + examples(facts),
                    List.of());
        }
        return ColumnProposal.holding(
                heading,
                ColumnRole.DATE,
                "",
                CHECK + "its dates may be read in several orders; it holds " + examples(facts),
                List.of("in which order `%s` writes its dates: add `date-order: %s`"
                        .formatted(
                                heading,
                                orders.isEmpty()
                                        ? word(DateOrder.DAY_MONTH_YEAR) + "`, after correcting those that differ, `"
                                        : String.join("` or `", orders))));
    }

    private ColumnProposal quantity(String heading, String id, HeadingWords words, ColumnFacts facts) {
        var wanted = Optional.ofNullable(units.get(id));
        if (wanted.isEmpty()) {
            return words(heading, id, facts);
        }
        if (!facts.isNumeric()) {
            return ColumnProposal.ignored(
                    heading, "it may hold %s, but few of its cells are numbers: %s".formatted(id, examples(facts)));
        }
        var unit = words.readUnit();
        if (unit.isPresent() && !unit.get().convertsTo(wanted.get())) {
            return ColumnProposal.ignored(
                    heading,
                    "it may hold %s, but `%s` is no unit of it, which is kept in %s"
                            .formatted(id, words.unit().orElse(""), wanted.get()));
        }
        if (!taken.add(id)) {
            return ColumnProposal.ignored(heading, "another column seems to give %s already".formatted(id));
        }
        var key = catalogue.inputs().containsKey(id)
                ? "input"
                : catalogue.condition(id).isPresent() ? "condition" : "metric";
        return unit.isPresent()
                ? new ColumnProposal(
                        heading,
                        "{%s: %s, unit: %s}"
                                .formatted(
                                        key, id, YamlWords.quoted(words.unit().orElse("1"))),
                        CHECK + "quantity and unit are read from the heading",
                        Optional.empty(),
                        Optional.of(id),
                        List.of())
                : new ColumnProposal(
                        heading,
                        "{%s: %s}".formatted(key, id),
                        CHECK + "the quantity is read from the heading, which names no unit",
                        Optional.empty(),
                        Optional.of(id),
                        List.of("the unit of `%s`: add `unit: %s`, or what it was measured in"
                                .formatted(heading, spelling(wanted.get()))));
    }

    private ColumnProposal words(String heading, String id, ColumnFacts facts) {
        var known = catalogue.condition(id).map(Condition::words).orElse(List.of());
        var strange = facts.codes().stream().filter(c -> !known.contains(c)).toList();
        boolean need = !known.isEmpty() && (!strange.isEmpty() || facts.codes().isEmpty());
        return new ColumnProposal(
                heading,
                "{condition: %s}".formatted(id),
                CHECK + "by its heading; it holds " + examples(facts),
                Optional.empty(),
                Optional.empty(),
                need
                        ? List.of("what the words of `%s` mean: add `codes:` to %s"
                                .formatted(heading, String.join(", ", known)))
                        : List.of());
    }

    private ColumnProposal unknown(String heading, HeadingWords words, ColumnFacts facts) {
        var near = Suggest.nearest(String.join("-", words.words()), units.keySet());
        var fitting = new TreeSet<String>();
        near.ifPresent(fitting::add);
        if (facts.isNumeric()) {
            words.readUnit()
                    .ifPresent(unit -> units.forEach((id, wanted) -> {
                        if (unit.convertsTo(wanted) && !unit.isNumber() && !isComputed(id)) {
                            fitting.add(id);
                        }
                    }));
        }
        var what = (facts.isNumeric() ? "numbers" : "words") + " of an unknown meaning: " + examples(facts);
        return ColumnProposal.ignored(
                heading, fitting.isEmpty() ? what : what + "; may be " + String.join(", ", firstOf(fitting)));
    }

    /** The metrics that could be computed from the quantities proposed, directly or by a formula. */
    List<String> computable() {
        return catalogue.all().stream()
                .filter(ColumnProposals::isMeasured)
                .filter(m -> taken.contains(m.id())
                        || m.derivations().stream()
                                .anyMatch(
                                        d -> d.inputs().stream().map(Input::id).allMatch(taken::contains)))
                .map(Metric::id)
                .toList();
    }

    private static List<String> firstOf(Set<String> many) {
        var list = new ArrayList<>(many);
        return list.subList(0, Math.min(5, list.size()));
    }

    private static String spelling(Unit unit) {
        return unit.toString().isEmpty() ? "1" : unit.toString();
    }

    private static String examples(ColumnFacts facts) {
        return facts.examples().stream().map(e -> "`" + e + "`").collect(Collectors.joining(", "));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A name such as files in devices/ have. */
    static String slug(String name) {
        var plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "unnamed" : plain;
    }
}
