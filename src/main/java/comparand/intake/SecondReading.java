package comparand.intake;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import comparand.stat.CohenKappa;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A second reading of sources, field by field beside the first. */
public final class SecondReading {

    /** Not held against each other: what names a value, who read it, and what is said about it. */
    private static final Set<String> NOT_COMPARED = Set.of(
            "id",
            "read by",
            "quote",
            "translation",
            "remark",
            "settled by",
            "settled on",
            "settled because",
            "earlier value",
            "earlier value, unit",
            "changed because",
            "used until");

    private static final String CONDITIONS = "conditions";

    /** One value as both read it; empty lists where only one of them found it. */
    record Value(
            String source, String id, String firstQuote, String secondQuote, String found, List<FieldPair> fields) {
        Value {
            fields = List.copyOf(fields);
        }

        List<FieldPair> differences() {
            return fields.stream().filter(f -> !f.verdict().isAgreement()).toList();
        }
    }

    /** How often both readers gave the same to one field, and beyond chance for categories. */
    public record Agreement(String field, int same, int of, Optional<CohenKappa> kappa) {}

    private final Map<String, Entry.Fields> first;
    private final ValuePieces pieces;
    private final List<Value> values = new ArrayList<>();
    private final List<String> onlyFirst = new ArrayList<>();
    private final List<String> onlySecond = new ArrayList<>();

    private SecondReading(Scope scope, Map<String, Entry.Fields> first) {
        this.first = first;
        this.pieces = ValuePieces.ofForm(scope, Reader.NOBODY);
    }

    /** The records as they stand, without what a second reader is not to see: values, and conditions of all values. */
    public static Map<String, Entry.Fields> hidden(Map<String, Entry.Fields> first) {
        var all = new TreeMap<String, Entry.Fields>();
        first.forEach((id, record) -> all.put(
                id,
                new Entry.Fields(record.list().stream()
                        .filter(f ->
                                !f.key().equals(SourcePieces.VALUES) && !f.key().equals(CONDITIONS))
                        .toList())));
        return all;
    }

    /**
     * Both readings.
     *
     * @param first the records of the library, by source
     * @param second the records of the second reader's form, by source
     */
    public static SecondReading of(
            Scope scope, Map<String, Entry.Fields> first, SortedMap<String, Entry.Fields> second) {
        var reading = new SecondReading(scope, first);
        second.forEach(reading::source);
        return reading;
    }

    private void source(String id, Entry.Fields second) {
        var known = first.getOrDefault(id, Entry.Fields.NONE);
        var unmatched = new ArrayList<>(Records.values(known));
        for (var value : Records.values(second)) {
            var partner = unmatched.stream().filter(v -> isSame(v, value)).findFirst();
            if (partner.isEmpty()) {
                onlySecond.add("%s: %s".formatted(id, value.text("printed").orElse("a value")));
            } else {
                unmatched.remove(partner.get());
                values.add(compared(id, merged(known, partner.get()), merged(second, value)));
            }
        }
        unmatched.forEach(v ->
                onlyFirst.add("%s: %s".formatted(id, v.text(Entry.Fields.ID).orElse("a value"))));
    }

    /** By name; without one, by device and metric and what is printed or its place. */
    private static boolean isSame(Entry.Fields a, Entry.Fields b) {
        if (a.text(Entry.Fields.ID).equals(b.text(Entry.Fields.ID))) {
            return true;
        }
        boolean sameThing =
                Stream.of("device", "metric").allMatch(k -> a.text(k).equals(b.text(k)));
        return sameThing
                && Stream.of("printed", "place")
                        .anyMatch(k -> a.get(k).isPresent() && a.get(k).equals(b.get(k)));
    }

    /** A value with the conditions of its source, which count for it. */
    private static Entry.Fields merged(Entry.Fields source, Entry.Fields value) {
        var own = value.get(CONDITIONS).map(e -> (Entry.Fields) e).orElse(Entry.Fields.NONE);
        var all = new ArrayList<>(own.list());
        source.get(CONDITIONS).map(e -> (Entry.Fields) e).orElse(Entry.Fields.NONE).list().stream()
                .filter(f -> own.get(f.key()).isEmpty())
                .forEach(all::add);
        return value.with(CONDITIONS, new Entry.Fields(all));
    }

    private Value compared(String source, Entry.Fields a, Entry.Fields b) {
        var firstCells = Records.cells(pieces.all(), a);
        var secondCells = Records.cells(pieces.all(), b);
        var fields = pieces.all().stream()
                .flatMap(p -> p.slots().stream())
                .filter(s -> !NOT_COMPARED.contains(s.heading()))
                .map(s -> new FieldPair(s, firstCells.getOrDefault(s, ""), secondCells.getOrDefault(s, "")))
                .filter(p -> !p.first().isEmpty() || !p.second().isEmpty())
                .toList();
        return new Value(
                source,
                a.text(Entry.Fields.ID).orElse(""),
                a.text("quote").orElse(""),
                b.text("quote").orElse(""),
                found(b),
                fields);
    }

    /** The figure the second reader found, where it is one that a record can hold as such. */
    private static String found(Entry.Fields value) {
        return Stream.of("mean", "median", "value", "at-least", "at-most", "about")
                .flatMap(k -> value.text(k).stream())
                .findFirst()
                .orElse("");
    }

    List<Value> values() {
        return List.copyOf(values);
    }

    /** Values only one of the readers found, in words. */
    public List<String> foundByOne() {
        return Stream.concat(
                        onlyFirst.stream().map(v -> "only the first reader has " + v),
                        onlySecond.stream().map(v -> "only the second reader has " + v))
                .toList();
    }

    public boolean agrees() {
        return values.stream().allMatch(v -> v.differences().isEmpty());
    }

    /** Field by field, in the order of the form. */
    public List<Agreement> agreement() {
        var byField = new LinkedHashMap<Slot, List<FieldPair>>();
        pieces.all().stream().flatMap(p -> p.slots().stream()).forEach(s -> byField.put(s, new ArrayList<>()));
        values.stream()
                .flatMap(v -> v.fields().stream())
                .forEach(p -> byField.computeIfAbsent(p.slot(), s -> new ArrayList<>())
                        .add(p));
        var found = new ArrayList<Agreement>();
        byField.forEach((slot, pairs) -> {
            if (!pairs.isEmpty()) {
                int same = (int)
                        pairs.stream().filter(p -> p.verdict().isAgreement()).count();
                boolean isCategory = slot.kind() == Slot.Kind.WORD;
                found.add(new Agreement(
                        slot.heading(),
                        same,
                        pairs.size(),
                        isCategory
                                ? Optional.of(CohenKappa.of(pairs.stream()
                                        .map(p -> new CohenKappa.Pair(p.first(), p.second()))
                                        .toList()))
                                : Optional.empty()));
            }
        });
        return found;
    }

    /** The library's records with what the second reader says of each value: agrees, or found something else. */
    public Taken noted(String by, String on) {
        var wanted = new TreeMap<String, Entry.Fields>();
        for (var value : values) {
            var record = Optional.ofNullable(wanted.get(value.source()))
                    .orElseGet(() -> first.getOrDefault(value.source(), Entry.Fields.NONE));
            var items = Records.values(record).stream()
                    .<Entry>map(v ->
                            v.text(Entry.Fields.ID).filter(value.id()::equals).isPresent()
                                    ? v.with(ReadersPiece.PATH, ReadersPiece.with(v, reading(value, by, on)))
                                    : v)
                    .toList();
            wanted.put(value.source(), record.with(SourcePieces.VALUES, new Entry.Items(items)));
        }
        return new Taken(wanted, Map.of(), List.of(), List.of(), List.of());
    }

    private static Entry.Fields reading(Value value, String by, String on) {
        boolean agrees = value.differences().isEmpty();
        var fields = new ArrayList<>(
                List.of(Field.of("by", by), Field.of("on", on), Field.of("agrees", agrees ? "yes" : "no")));
        boolean otherFigure = value.differences().stream()
                .anyMatch(d -> Set.of("number", "unit").contains(d.slot().heading()));
        if (otherFigure && !value.found().isEmpty()) {
            fields.add(Field.of("found", value.found()));
        }
        return new Entry.Fields(fields);
    }
}
