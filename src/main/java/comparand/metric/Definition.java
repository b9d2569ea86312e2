package comparand.metric;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which variant of its metric a value follows, aspect by aspect. An aspect that is not in here is not reported.
 *
 * @param aspects by aspect id; one word for a choice, the sorted names for a set of parts
 */
public record Definition(SortedMap<String, List<String>> aspects) {

    public static final Definition NONE = new Definition(new TreeMap<>());

    public Definition {
        var copy = new TreeMap<String, List<String>>();
        aspects.forEach((aspect, words) ->
                copy.put(aspect, words.stream().distinct().sorted().toList()));
        aspects = Collections.unmodifiableSortedMap(copy);
    }

    public static Definition of(Map<String, List<String>> aspects) {
        return new Definition(new TreeMap<>(aspects));
    }

    public Definition with(String aspect, Collection<String> words) {
        var copy = new TreeMap<>(aspects);
        copy.put(aspect, List.copyOf(words));
        return new Definition(copy);
    }

    public Optional<List<String>> get(String aspect) {
        return Optional.ofNullable(aspects.get(aspect));
    }

    /** The word of a choice. */
    public Optional<String> word(String aspect) {
        return get(aspect).map(words -> String.join(" + ", words));
    }

    @Override
    public String toString() {
        return aspects.entrySet().stream()
                .map(e -> e.getKey() + ": " + String.join(" + ", e.getValue()))
                .reduce((a, b) -> a + "; " + b)
                .orElse("none");
    }
}
