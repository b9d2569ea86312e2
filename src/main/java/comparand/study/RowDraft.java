package comparand.study;

import comparand.metric.Definition;
import comparand.model.library.SampleUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A row that is being put together, cell by cell. */
final class RowDraft {

    private final int line;
    private final CellFaults faults;
    private int cell;
    private boolean whole = true;
    private Optional<String> device = Optional.empty();
    private final Map<SampleUnit, String> members = new HashMap<>();
    private final Map<String, Measured> numbers = new HashMap<>();
    private final Map<String, String> words = new HashMap<>();
    private final Map<String, Boolean> events = new HashMap<>();
    private Definition definition = Definition.NONE;

    RowDraft(int line, CellFaults faults) {
        this.line = line;
        this.faults = faults;
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

    void member(SampleUnit level, String name) {
        members.put(level, name);
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

    void aspect(String id, List<String> variants) {
        definition = definition.with(id, variants);
    }

    /** The row's facts; empty if one of its cells could not be read, or no cell names a device. */
    Optional<RowFacts> facts() {
        if (device.isEmpty() && whole) {
            at(0);
            fault(
                    "device-missing",
                    "(device)",
                    "this row names no device",
                    "name the device, or list the row under `dropped:` with a reason");
        }
        return device.filter(d -> whole).map(d -> new RowFacts(line, d, members, numbers, words, events, definition));
    }
}
