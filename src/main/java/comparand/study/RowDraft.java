package comparand.study;

import comparand.metric.Definition;
import comparand.model.library.QuantityRecord;
import comparand.model.library.SampleUnit;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A row that is being put together, cell by cell; in a long layout, row by row. */
final class RowDraft {

    private int line;
    private final CellFaults faults;
    private final String centreOfFile;
    private int cell;
    private int rows = 1;
    private boolean whole = true;
    private Optional<String> device = Optional.empty();
    private Optional<String> centre = Optional.empty();
    private Optional<String> sample = Optional.empty();
    private Optional<String> timePoint = Optional.empty();
    private Optional<String> channel = Optional.empty();
    private Optional<QuantityRecord> quantity = Optional.empty();
    private Optional<String> unitOfValue = Optional.empty();
    private final Map<SampleUnit, String> members = new EnumMap<>(SampleUnit.class);
    private final Map<String, Measured> numbers = new HashMap<>();
    private final Map<String, String> words = new HashMap<>();
    private final Map<String, Boolean> events = new HashMap<>();
    private final Set<String> remarks = new TreeSet<>();
    private Definition definition = Definition.NONE;

    RowDraft(int line, CellFaults faults, String centreOfFile) {
        this.line = line;
        this.faults = faults;
        this.centreOfFile = centreOfFile;
    }

    /** Faults that follow belong to this cell, counted from 0. */
    void at(int index) {
        cell = index;
    }

    void fault(String code, String column, String message, String fix) {
        whole = false;
        faults.add(code, column, line, cell, message, fix);
    }

    void device(String id) {
        device = Optional.of(id);
    }

    void centre(String name) {
        centre = Optional.of(name);
    }

    void sample(String name) {
        sample = Optional.of(name);
    }

    void timePoint(String word) {
        timePoint = Optional.of(word);
    }

    Optional<String> timePoint() {
        return timePoint;
    }

    void channel(String word) {
        channel = Optional.of(word);
    }

    Optional<String> channel() {
        return channel;
    }

    void quantity(QuantityRecord measured) {
        quantity = Optional.of(measured);
    }

    Optional<QuantityRecord> quantity() {
        return quantity;
    }

    void unitOfValue(String text) {
        unitOfValue = Optional.of(text);
    }

    Optional<String> unitOfValue() {
        return unitOfValue;
    }

    void member(SampleUnit level, String name) {
        members.put(level, name);
    }

    Optional<String> member(SampleUnit level) {
        return Optional.ofNullable(members.get(level));
    }

    void number(String id, Measured number) {
        numbers.put(id, number);
    }

    void word(String id, String word) {
        words.put(id, word);
    }

    void event(String id, boolean happened) {
        events.put(id, happened);
    }

    void remark(String heading) {
        remarks.add(heading);
    }

    void aspect(String id, List<String> variants) {
        definition = definition.with(id, variants);
    }

    boolean isWhole() {
        return whole;
    }

    String centre() {
        return centre.orElse(centreOfFile);
    }

    /** What tells the result a row belongs to, while only the columns that say whose it is were read. */
    String key() {
        return String.join(
                "\u0000",
                device.orElse(""),
                centre(),
                members.toString(),
                sample.orElse(""),
                new TreeMap<>(numbers).toString(),
                new TreeMap<>(words).toString(),
                definition.toString());
    }

    /** Whether both say another number of one quantity. */
    Optional<String> contradiction(RowDraft other) {
        return other.numbers.entrySet().stream()
                .filter(e -> {
                    var own = numbers.get(e.getKey());
                    return own != null
                            && own.in(e.getValue().unit()) != e.getValue().value();
                })
                .map(Map.Entry::getKey)
                .sorted()
                .findFirst();
    }

    /** Takes over what another row of the same result says. */
    void merge(RowDraft other) {
        rows += other.rows;
        line = Math.min(line, other.line);
        numbers.putAll(other.numbers);
        words.putAll(other.words);
        events.putAll(other.events);
        remarks.addAll(other.remarks);
    }

    /** The row's facts; empty if one of its cells could not be read. */
    Optional<RowFacts> facts() {
        return whole
                ? Optional.of(new RowFacts(
                        line, rows, device, centre(), members, numbers, words, events, sample, remarks, definition))
                : Optional.empty();
    }
}
