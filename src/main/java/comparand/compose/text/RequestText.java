package comparand.compose.text;

import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.Missing;
import comparand.model.Unknown;
import comparand.model.library.CharacteristicRecord;
import comparand.model.library.ConditionText;
import comparand.model.library.DeviceRecord;
import comparand.model.library.PlaceRecord;
import comparand.model.library.QuestionRecord;
import comparand.model.library.SourceKind;
import comparand.model.library.SourceRecord;
import comparand.model.library.ValueRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was not reported, in words, gathered by who could supply it: a maker, or the authors of a paper. */
public final class RequestText {

    private final Run run;

    public RequestText(Run run) {
        this.run = run;
    }

    /** A fact that is missing, and in what form it is wanted. */
    public record Wanted(String what, String form) {}

    /**
     * A value, or a property of a device, of which something is to be known.
     *
     * @param about id of the value, or name of the property
     * @param metric empty for a property
     */
    public record Item(
            String about,
            String device,
            Optional<Metric> metric,
            String subject,
            String printed,
            String place,
            String quote,
            List<Wanted> wanted,
            String why) {}

    /**
     * All that one recipient is asked.
     *
     * @param sources their numbers, ascending
     */
    public record Letter(String id, String to, boolean maker, List<Integer> sources, List<Item> items) {}

    /** A letter that is being gathered; values keep the order in which comparisons met them. */
    private static final class Draft {
        private final String id;
        private final String to;
        private final boolean maker;
        private final LinkedHashSet<SourceRecord> sources = new LinkedHashSet<>();
        private final Map<String, Draft.Gaps> values = new LinkedHashMap<>();
        private final List<Item> properties = new ArrayList<>();

        private record Gaps(SourceRecord source, ValueRecord value, List<Missing> missing) {}

        private Draft(String id, String to, boolean maker) {
            this.id = id;
            this.to = to;
            this.maker = maker;
        }
    }

    /** In the order in which the comparisons meet their sources. */
    public List<Letter> letters() {
        var drafts = new LinkedHashMap<String, Draft>();
        for (var unknown : run.compared().unknowns()) {
            if (unknown instanceof Unknown.Asked asked) {
                gather(asked, drafts);
            }
        }
        var devices = run.dossier().devices().stream()
                .flatMap(d -> run.library().device(d.value()).stream())
                .toList();
        devices.forEach(d -> properties(d, devices, drafts));
        return drafts.values().stream().map(this::letter).toList();
    }

    private void gather(Unknown.Asked asked, Map<String, Draft> drafts) {
        var draft = isOfMaker(asked.source())
                ? ofMaker(run.library().device(asked.device()).orElseThrow(), drafts)
                : ofAuthors(asked.source(), drafts);
        draft.sources.add(asked.source());
        for (var missing : asked.missing()) {
            for (var id : missing.values()) {
                asked.source().values().stream()
                        .filter(v -> v.id().value().equals(id))
                        .findFirst()
                        .ifPresent(v -> draft.values
                                .computeIfAbsent(id, k -> new Draft.Gaps(asked.source(), v, new ArrayList<>()))
                                .missing
                                .add(missing));
            }
        }
    }

    private static boolean isOfMaker(SourceRecord source) {
        return source.kind().value() == SourceKind.INSTRUCTIONS_FOR_USE
                || source.kind().value() == SourceKind.FLYER;
    }

    private Draft ofMaker(DeviceRecord device, Map<String, Draft> drafts) {
        var maker = device.maker().value();
        return drafts.computeIfAbsent("maker " + maker, k -> new Draft(fileName(maker, device.id()), maker, true));
    }

    private Draft ofAuthors(SourceRecord source, Map<String, Draft> drafts) {
        var authors = source.reference().author();
        var first = authors.stream()
                .findFirst()
                .map(a -> a.text())
                .orElseGet(() -> source.reference().title().value());
        var to = authors.size() < 2 ? first : say("request.authors", "first", first);
        return drafts.computeIfAbsent("source " + source.id(), k -> new Draft(source.id(), to, false));
    }

    /** Letters and digits that every file system takes. */
    private static String fileName(String maker, String otherwise) {
        var name = maker.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return name.isEmpty() ? otherwise : name;
    }

    /** Properties that another device of the dossier states and that this one does not, or that were looked for in vain. */
    private void properties(DeviceRecord device, List<DeviceRecord> devices, Map<String, Draft> drafts) {
        var names = new LinkedHashSet<String>();
        devices.forEach(d -> d.characteristics().forEach(c -> names.add(c.name().value())));
        for (var name : names) {
            var own = device.characteristics().stream()
                    .filter(c -> c.name().value().equals(name))
                    .findFirst();
            if (own.filter(c -> !c.is().value().equals(ConditionText.NOT_REPORTED))
                    .isEmpty()) {
                var draft = ofMaker(device, drafts);
                run.library().source(device.instructions().value()).ifPresent(draft.sources::add);
                draft.properties.add(property(device, name, own));
            }
        }
    }

    private Item property(DeviceRecord device, String name, Optional<CharacteristicRecord> own) {
        return new Item(
                name,
                device.id(),
                Optional.empty(),
                device.displayName() + ", " + name,
                "",
                own.map(c -> run.terms().place(c.from().place().text())).orElse(""),
                "",
                List.of(new Wanted(name, say("request.form.property"))),
                say("request.why.property"));
    }

    private Letter letter(Draft draft) {
        var items = new ArrayList<Item>();
        draft.values.values().forEach(g -> items.add(item(g)));
        items.addAll(draft.properties);
        return new Letter(
                draft.id,
                draft.to,
                draft.maker,
                draft.sources.stream()
                        .map(s -> run.names().number(s.id()))
                        .sorted()
                        .toList(),
                items);
    }

    private Item item(Draft.Gaps gaps) {
        var value = gaps.value;
        var metric = run.library().catalogue().find(value.metric().value()).orElseThrow();
        var wanted = new ArrayList<Wanted>();
        for (var missing : gaps.missing) {
            switch (missing.kind()) {
                case CONDITIONS ->
                    missing.what()
                            .forEach(name -> wanted.add(new Wanted(run.terms().named(name), form(name, metric))));
                case SPREAD ->
                    wanted.add(new Wanted(
                            say("request.spread"),
                            metric.unit().spelling().isEmpty()
                                    ? say("request.form.spread-bare")
                                    : say(
                                            "request.form.spread",
                                            "unit",
                                            metric.unit().spelling())));
                case KIND_OF_SPREAD -> wanted.add(new Wanted(say("request.kind"), say("request.form.kind")));
            }
        }
        boolean conditions = gaps.missing.stream().anyMatch(m -> m.kind() == Missing.What.CONDITIONS);
        boolean kind = gaps.missing.stream().anyMatch(m -> m.kind() == Missing.What.KIND_OF_SPREAD);
        return new Item(
                value.id().value(),
                value.device().value(),
                Optional.of(metric),
                run.names().device(value.device().value()) + ", " + run.terms().metric(metric),
                value.printed().value(),
                value.place().map(PlaceRecord::text).map(run.terms()::place).orElse(""),
                value.quote().map(Located::value).orElse(""),
                wanted,
                say(
                        conditions ? "request.why.conditions" : kind ? "request.why.kind" : "request.why.spread",
                        "asks",
                        asks(metric)));
    }

    /** A condition by its unit or its words, a part of the definition by its variants. */
    private String form(String name, Metric metric) {
        var condition = metric.conditions().stream()
                .map(use -> use.condition())
                .filter(c -> c.name().equals(name))
                .findFirst();
        var words = condition
                .map(c -> c.words())
                .orElseGet(() -> metric.definition().stream()
                        .filter(a -> a.name().equals(name))
                        .findFirst()
                        .map(a -> a.words())
                        .orElse(List.of()));
        return condition
                .flatMap(c -> c.unit())
                .map(u -> u.spelling().isEmpty()
                        ? say("request.form.number-bare")
                        : say("request.form.number", "unit", u.spelling()))
                .orElseGet(() -> words.isEmpty()
                        ? say("request.form.words")
                        : say(
                                "request.form.one-of",
                                "words",
                                words.stream()
                                        .map(run.terms()::variant)
                                        .collect(Collectors.joining(", "))
                                        .replace('-', ' ')));
    }

    private String asks(Metric metric) {
        return run.questions().entrySet().stream()
                .filter(e -> e.getValue().equals(metric))
                .findFirst()
                .map(Map.Entry::getKey)
                .map(QuestionRecord::asks)
                .map(Located::value)
                .orElseGet(() -> ConditionLine.upperFirst(run.terms().metric(metric)) + ".");
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
