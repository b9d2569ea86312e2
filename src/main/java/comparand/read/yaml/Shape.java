package comparand.read.yaml;

import comparand.diag.Located;
import comparand.model.library.AtLeast;
import comparand.model.library.Entries;
import comparand.model.library.ExactlyOne;
import comparand.model.library.Key;
import comparand.model.library.Meaning;
import comparand.model.library.OneOrMore;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a record type says about the file it is written in. One reading of the types serves the binder and the JSON
 * Schemas, so the two cannot drift apart.
 */
sealed interface Shape {

    /** A single value. */
    record Single(ScalarType<?> type) implements Shape {}

    /** A list; with {@code atLeast} 0 it may be left out. */
    record Many(Shape item, int atLeast) implements Shape {}

    /** A value alone, or a list of such values. */
    record AloneOrMany(Shape item) implements Shape {}

    /** Keys of the author's choosing; may be left out. */
    record Open(Shape value) implements Shape {}

    /** A value that may be left out. */
    record Maybe(Shape value) implements Shape {}

    /**
     * Fixed keys.
     *
     * @param keys those of the fields, in their order
     * @param constructor that of the type, looked up once: a large library builds some hundred thousand records
     */
    record Fields(
            Class<? extends Record> type,
            String meaning,
            List<Field> fields,
            List<String> exactlyOne,
            Set<String> keys,
            Constructor<? extends Record> constructor)
            implements Shape {

        /** A key to give as an example. */
        String firstKey() {
            return fields.get(0).key();
        }
    }

    /** One fixed key. */
    record Field(String key, String meaning, Shape shape) {

        boolean required() {
            return !(shape instanceof Maybe)
                    && !(shape instanceof Open)
                    && !(shape instanceof Many many && many.atLeast() == 0);
        }
    }

    Map<Class<?>, Fields> READ = new ConcurrentHashMap<>();

    static Fields of(Class<? extends Record> type) {
        var known = READ.get(type);
        if (known != null) {
            return known;
        }
        var fields = new ArrayList<Field>();
        for (var component : type.getRecordComponents()) {
            var meaning = component.getAnnotation(Meaning.class);
            if (meaning == null) {
                throw new IllegalArgumentException(
                        type.getSimpleName() + "." + component.getName() + " says nothing of its meaning");
            }
            fields.add(
                    new Field(key(component), meaning.value(), shape(component.getGenericType(), atLeast(component))));
        }
        var one = type.getAnnotation(ExactlyOne.class);
        var says = type.getAnnotation(Meaning.class);
        var shape = new Fields(
                type,
                says == null ? "" : says.value(),
                List.copyOf(fields),
                one == null ? List.of() : List.of(one.value()),
                fields.stream().map(Field::key).collect(Collectors.toCollection(LinkedHashSet::new)),
                constructor(type));
        READ.put(type, shape);
        return shape;
    }

    private static Constructor<? extends Record> constructor(Class<? extends Record> type) {
        try {
            return type.getConstructor(Stream.of(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException(type.getSimpleName() + " cannot be built from outside", e);
        }
    }

    private static int atLeast(RecordComponent component) {
        var least = component.getAnnotation(AtLeast.class);
        return least == null ? 0 : least.value();
    }

    private static String key(RecordComponent component) {
        var key = component.getAnnotation(Key.class);
        return key == null ? component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT) : key.value();
    }

    private static Shape shape(Type type, int atLeast) {
        if (type instanceof Class<?> plain) {
            if (plain.isRecord() && ScalarType.of(plain).isEmpty()) {
                return of(plain.asSubclass(Record.class));
            }
            return new Single(ScalarType.of(plain)
                    .orElseThrow(() -> new IllegalArgumentException("no record value is a " + plain.getName())));
        }
        var generic = (ParameterizedType) type;
        var argument = generic.getActualTypeArguments()[0];
        var raw = (Class<?>) generic.getRawType();
        if (raw == Optional.class) {
            return new Maybe(shape(argument, 0));
        }
        if (raw == Located.class) {
            return shape(argument, 0);
        }
        if (raw == List.class) {
            return new Many(shape(argument, 0), atLeast);
        }
        if (raw == OneOrMore.class) {
            return new AloneOrMany(shape(argument, 0));
        }
        if (raw == Entries.class) {
            return new Open(shape(argument, 0));
        }
        throw new IllegalArgumentException("no record value is a " + type);
    }
}
