package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.result.ComparandResult;
import comparand.document.result.DeviceResult;
import comparand.document.result.QuestionResult;
import comparand.document.result.ResultSet;
import comparand.document.result.SourceResult;
import comparand.model.Comparand;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One of the two runs, with what is looked up in it by name. */
final class Side {

    private final ResultSet results;
    private final Words words;
    private final Map<String, ComparandResult> values;
    private final Map<String, SourceResult> sources;
    private final Map<String, QuestionResult> questions;
    private final Map<String, String> devices;
    private final Map<String, Said> answers;

    Side(ResultSet results, Words words) {
        this.results = results;
        this.words = words;
        this.values = by(results.comparands(), ComparandResult::id);
        this.sources = by(results.sources(), SourceResult::id);
        this.questions = by(results.questions(), QuestionResult::metric);
        this.devices = new LinkedHashMap<>();
        results.devices().forEach((DeviceResult d) -> devices.put(d.id(), d.name()));
        this.answers = by(new Sentences(this).all(), Said::id);
    }

    private static <T> Map<String, T> by(List<T> list, Function<T, String> id) {
        var map = new LinkedHashMap<String, T>();
        list.forEach(t -> map.putIfAbsent(id.apply(t), t));
        return map;
    }

    ResultSet results() {
        return results;
    }

    Words words() {
        return words;
    }

    Map<String, ComparandResult> values() {
        return values;
    }

    Optional<ComparandResult> value(String id) {
        return Optional.ofNullable(values.get(id));
    }

    Map<String, SourceResult> sources() {
        return sources;
    }

    Map<String, QuestionResult> questions() {
        return questions;
    }

    /** By the name of the pair, or of what stands together; in the order of the run. */
    Map<String, Said> answers() {
        return answers;
    }

    String device(String id) {
        return id.equals(Comparand.ALL_DEVICES) ? words.say("all-devices") : devices.getOrDefault(id, id);
    }

    String metric(String id) {
        var question = questions.get(id);
        return question == null ? id : question.name();
    }

    /** What makes a value the number it is: not its place, nor the words about it. */
    static List<Object> facts(ComparandResult c) {
        return List.of(c.unit(), c.definition(), c.summary(), c.sizes(), c.conditions());
    }

    static boolean isFrom(Optional<ComparandResult> value, String source) {
        return value.flatMap(ComparandResult::from).filter(source::equals).isPresent();
    }

    /** {@code 59.1 (3.1) mmHg, 5 units}. */
    String shown(ComparandResult c) {
        var unit = c.unit().equals("1") || c.summary().form().equals("words") ? "" : "\u00a0" + c.unit();
        var sizes = c.sizes().entrySet().stream()
                .filter(e -> !c.summary().form().equals("events"))
                .map(e -> ", "
                        + words.say(
                                "size", "n", String.valueOf(e.getValue()), "units", level(e.getKey(), e.getValue())))
                .collect(Collectors.joining());
        return c.summary().shown() + unit + sizes;
    }

    /** What is counted, in the number that it is counted in. */
    String level(String plural, int n) {
        return n == 1 && plural.endsWith("s")
                ? words.term("level", plural.substring(0, plural.length() - 1))
                : words.term("level", plural);
    }

    /** {@code Mirrowen 12, pressure drop (B22, ardley-2023)}. */
    String named(ComparandResult c) {
        return words.say(
                "ledger.value",
                "device",
                device(c.device()),
                "metric",
                metric(c.metric()),
                "value",
                c.id(),
                "from",
                c.from().orElse(c.locator()));
    }
}
