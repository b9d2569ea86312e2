package comparand.document.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What stands behind a key: text, a list, or keys with entries of their own. */
public sealed interface Entry {

    /** One function for each form. */
    <R> R fold(Function<Words, R> words, Function<Items, R> items, Function<Fields, R> fields);

    /** Whether both say the same: keys in any order, and lists whose items have an {@code id} by that. */
    boolean saysTheSameAs(Entry other);

    /** Whether there is anything in it. */
    boolean isEmpty();

    static Words words(String text) {
        return new Words(text);
    }

    /** Text. */
    record Words(String text) implements Entry {
        @Override
        public <R> R fold(Function<Words, R> words, Function<Items, R> items, Function<Fields, R> fields) {
            return words.apply(this);
        }

        @Override
        public boolean saysTheSameAs(Entry other) {
            return equals(other);
        }

        @Override
        public boolean isEmpty() {
            return text.isEmpty();
        }
    }

    /** A list. */
    record Items(List<Entry> list) implements Entry {
        public Items {
            list = List.copyOf(list);
        }

        /** The names of its items, where every item is a record with an {@code id} of its own. */
        public Optional<List<String>> ids() {
            var ids = list.stream()
                    .map(e -> e instanceof Fields f ? f.text(Fields.ID) : Optional.<String>empty())
                    .flatMap(Optional::stream)
                    .toList();
            return ids.size() == list.size() && Set.copyOf(ids).size() == list.size() && !list.isEmpty()
                    ? Optional.of(ids)
                    : Optional.empty();
        }

        @Override
        public <R> R fold(Function<Words, R> words, Function<Items, R> items, Function<Fields, R> fields) {
            return items.apply(this);
        }

        @Override
        public boolean saysTheSameAs(Entry other) {
            if (!(other instanceof Items items) || items.list.size() != list.size()) {
                return false;
            }
            var mine = ids();
            var theirs = items.ids();
            if (mine.isEmpty() || theirs.isEmpty()) {
                return pairwise(list, items.list);
            }
            return new TreeSet<>(mine.get()).equals(new TreeSet<>(theirs.get()))
                    && pairwise(byId(list), byId(items.list));
        }

        private static boolean pairwise(List<Entry> a, List<Entry> b) {
            for (int i = 0; i < a.size(); i++) {
                if (!a.get(i).saysTheSameAs(b.get(i))) {
                    return false;
                }
            }
            return true;
        }

        private static List<Entry> byId(List<Entry> list) {
            return list.stream()
                    .sorted((a, b) -> ((Fields) a)
                            .text(Fields.ID)
                            .orElse("")
                            .compareTo(((Fields) b).text(Fields.ID).orElse("")))
                    .toList();
        }

        @Override
        public boolean isEmpty() {
            return list.isEmpty();
        }
    }

    /** Keys with entries, in the order in which they are written; each key once. */
    record Fields(List<Field> list) implements Entry {

        /** The key by which the items of a list are told apart. */
        public static final String ID = "id";

        public static final Fields NONE = new Fields(List.of());

        public Fields {
            list = List.copyOf(list);
            var keys = list.stream().map(Field::key).collect(Collectors.toCollection(TreeSet::new));
            if (keys.size() != list.size()) {
                throw new IllegalArgumentException("a key stands once in a record, got "
                        + list.stream().map(Field::key).toList());
            }
        }

        public Optional<Entry> get(String key) {
            return list.stream()
                    .filter(f -> f.key().equals(key))
                    .map(Field::value)
                    .findFirst();
        }

        /** The text behind a key; empty where there is none, or no text. */
        public Optional<String> text(String key) {
            return get(key).flatMap(e -> e instanceof Words w ? Optional.of(w.text()) : Optional.empty());
        }

        /** This with a key set anew, in its place; a key that was not there comes last. */
        public Fields with(String key, Entry value) {
            var fields = new ArrayList<>(list);
            var fresh = new Field(key, value);
            for (int i = 0; i < fields.size(); i++) {
                if (fields.get(i).key().equals(key)) {
                    fields.set(i, fresh);
                    return new Fields(fields);
                }
            }
            fields.add(fresh);
            return new Fields(fields);
        }

        @Override
        public <R> R fold(Function<Words, R> words, Function<Items, R> items, Function<Fields, R> fields) {
            return fields.apply(this);
        }

        @Override
        public boolean saysTheSameAs(Entry other) {
            return other instanceof Fields fields
                    && fields.list.size() == list.size()
                    && list.stream()
                            .allMatch(f -> fields.get(f.key())
                                    .filter(f.value()::saysTheSameAs)
                                    .isPresent());
        }

        @Override
        public boolean isEmpty() {
            return list.isEmpty();
        }
    }
}
