package comparand.check;

import comparand.diag.Located;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** All texts that stand anywhere in a record of the library: names of other records are among them. */
final class RecordTexts {

    private final Set<String> texts = new HashSet<>();

    private RecordTexts() {}

    static Set<String> of(Record record) {
        var found = new RecordTexts();
        found.add(record);
        return found.texts;
    }

    private void add(Object part) {
        if (part instanceof String text) {
            texts.add(text);
        } else if (part instanceof Located<?> located) {
            add(located.value());
        } else if (part instanceof Optional<?> maybe) {
            maybe.ifPresent(this::add);
        } else if (part instanceof Collection<?> all) {
            all.forEach(this::add);
        } else if (part instanceof Record record) {
            for (var component : record.getClass().getRecordComponents()) {
                add(value(record, component));
            }
        }
    }

    private static Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record shows what it holds: " + component, e);
        }
    }
}
