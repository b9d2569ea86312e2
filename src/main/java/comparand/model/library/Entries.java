package comparand.model.library;

import comparand.diag.Located;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Keys of the author's choosing with their values, in file order: conditions, codes, columns. */
public record Entries<V>(List<Entry<V>> list) {

    public Entries {
        list = List.copyOf(list);
    }

    public static <V> Entries<V> none() {
        return new Entries<>(List.of());
    }

    public Optional<V> get(String key) {
        // no stream: the rows of large files ask for what is fixed for all of them
        for (var entry : list) {
            if (entry.key().value().equals(key)) {
                return Optional.of(entry.value());
            }
        }
        return Optional.empty();
    }

    public boolean has(String key) {
        return get(key).isPresent();
    }

    public Stream<Entry<V>> stream() {
        return list.stream();
    }

    /** One key with its value. */
    public record Entry<V>(Located<String> key, V value) {}
}
