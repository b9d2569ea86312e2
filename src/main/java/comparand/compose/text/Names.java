package comparand.compose.text;

import comparand.model.Comparand;
import comparand.model.Compared;
import comparand.model.Library;
import comparand.model.Origin;
import comparand.model.SetAside;
import comparand.model.library.DeviceRecord;
import comparand.model.library.PlaceRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import comparand.model.library.SourcedRecord;
import comparand.model.library.ValueRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Numbers of sources, locators and names, the same in every document of a run. */
public final class Names {

    private final Library library;
    private final Words words;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    public Names(Compared compared, Words words) {
        this.library = compared.matched().evidence().checked().library();
        this.words = words;
        order(compared).forEach(id -> numbers.put(id, numbers.size() + 1));
    }

    /** Sources in the order in which the comparisons mention them, then those unpaired, then those set aside. */
    private static Set<String> order(Compared compared) {
        var ids = new LinkedHashSet<String>();
        compared.comparisons().forEach(c -> {
            sourceOf(c.pairing().ours(), ids);
            sourceOf(c.pairing().theirs(), ids);
        });
        compared.matched().unpaired().forEach(c -> sourceOf(c, ids));
        compared.matched().evidence().published().forEach(c -> sourceOf(c, ids));
        compared.matched().evidence().setAside().stream()
                .map(SetAside::comparand)
                .forEach(c -> sourceOf(c, ids));
        ids.addAll(compared.matched().evidence().checked().library().sources().keySet());
        return ids;
    }

    private static void sourceOf(Comparand comparand, Set<String> ids) {
        comparand.origin().fold(p -> ids.add(p.source().id()), l -> false);
    }

    /** Sources by their numbers. */
    public List<SourceRecord> sources() {
        var sources = new ArrayList<SourceRecord>();
        numbers.keySet().forEach(id -> library.source(id).ifPresent(sources::add));
        return sources;
    }

    public int number(String source) {
        var number = numbers.get(source);
        if (number == null) {
            throw new IllegalArgumentException("there is no source " + source);
        }
        return number;
    }

    /** {@code 4:T2r3}, or {@code L:bench-norrisgate, 1.5 L/min} for a local result. */
    public String locator(Comparand comparand) {
        return comparand.origin().fold(this::locator, local -> local(local));
    }

    private String locator(Origin.Published published) {
        return String.join(
                "~",
                published.values().stream()
                        .map(v -> locator(published.source(), v))
                        .toList());
    }

    private String local(Origin.Local local) {
        return "L:" + local.study().id()
                + (local.group().isEmpty() ? "" : ", " + new Terms(words).group(local.group()));
    }

    public String locator(SourceRecord source, ValueRecord value) {
        return number(source.id()) + ":"
                + value.place().map(PlaceRecord::pointer).orElse("?")
                + concern(Optional.of(source));
    }

    /** A concern is said wherever a value of the source is shown. */
    private String concern(Optional<SourceRecord> source) {
        return source.filter(s -> s.status().state().value() == SourceState.CONCERN)
                        .isPresent()
                ? ", " + words.say("locator.concern")
                : "";
    }

    /** The locator, and behind it who paid for the source, where that was a maker: {@code 3:T2r2, maker}. */
    public String locatorAndPayer(Comparand comparand) {
        var payer = comparand
                .origin()
                .fold(
                        p -> switch (p.source().funding().value()) {
                            case MAKER, MIXED ->
                                ", "
                                        + words.term(
                                                "funding",
                                                p.source().funding().value().spelling());
                            case INDEPENDENT, NOT_REPORTED -> "";
                        },
                        l -> "");
        return locator(comparand) + payer;
    }

    public String locator(SourcedRecord from) {
        var source = from.source().value();
        return number(source) + ":" + from.place().pointer() + concern(library.source(source));
    }

    public String device(String id) {
        return id.equals(Comparand.ALL_DEVICES)
                ? words.say("all-devices")
                : library.device(id).map(DeviceRecord::displayName).orElse(id);
    }

    public String brief(String id) {
        return id.equals(Comparand.ALL_DEVICES)
                ? words.say("all-devices")
                : library.device(id).map(DeviceRecord::briefName).orElse(id);
    }
}
