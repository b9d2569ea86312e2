package comparand.write.rebuild;

import comparand.digest.Sha;
import comparand.document.Look;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.SortedSet;

/**
 * SHA-256 over a tree of records, component by component, with the name of every type: trees with one key are equal. A type
 * that is not known here is refused rather than left out, and so is a set or map whose order is a matter of chance.
 */
public final class ContentKey {

    private static final int BUFFER = 1 << 13;

    private static final ClassValue<List<Method>> ACCESSORS = new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .peek(m -> m.setAccessible(true))
                    .toList();
        }
    };

    private final MessageDigest sha = Sha.digest();
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFER);

    private ContentKey() {}

    /**
     * The key of some things in their order, in hexadecimal digits.
     *
     * @throws IllegalArgumentException if there is something in them whose content cannot be told
     */
    public static String of(Object... things) {
        var key = new ContentKey();
        key.list('A', Arrays.asList(things));
        key.flush();
        return Sha.of(key.sha);
    }

    /** Every thing begins with a letter of its own and says its length, so that none can look like two others. */
    private void put(Object thing) {
        if (thing instanceof String text) {
            letter('s');
            text(text);
        } else if (thing instanceof Record record) {
            record(record);
        } else if (thing instanceof List<?> list) {
            list('l', list);
        } else if (thing instanceof Optional<?> optional) {
            list('o', optional.<List<?>>map(List::of).orElse(List.of()));
        } else if (thing instanceof Enum<?> constant) {
            letter('e');
            text(constant.getDeclaringClass().getName());
            text(constant.name());
        } else if (thing instanceof byte[] bytes) {
            bytes(bytes);
        } else if (thing instanceof Look.Content file) {
            letter('f');
            text(file.name());
            bytes(file.bytes());
        } else if (thing instanceof SortedMap<?, ?> || thing instanceof LinkedHashMap<?, ?>) {
            map((Map<?, ?>) thing);
        } else if (thing instanceof SortedSet<?> set) {
            list('t', List.copyOf(set));
        } else {
            plain(thing);
        }
    }

    private void plain(Object thing) {
        if (thing instanceof Boolean b) {
            letter('b');
            number(b ? 1 : 0);
        } else if (thing instanceof Integer i) {
            letter('i');
            number(i);
        } else if (thing instanceof Character c) {
            letter('c');
            letter(c);
        } else if (thing instanceof Long i) {
            letter('g');
            number(i);
        } else if (thing instanceof Double d) {
            letter('d');
            number(Double.doubleToLongBits(d));
        } else if (thing instanceof OptionalInt i) {
            list('I', i.isPresent() ? List.of(i.getAsInt()) : List.of());
        } else if (thing instanceof OptionalDouble d) {
            list('D', d.isPresent() ? List.of(d.getAsDouble()) : List.of());
        } else if (thing instanceof BigDecimal || thing instanceof BigInteger || thing instanceof LocalDate) {
            // each has one text for one value, with all its digits
            letter('p');
            text(thing.getClass().getName());
            text(thing.toString());
        } else {
            throw new IllegalArgumentException(
                    "the content of a " + thing.getClass().getName() + " cannot be told");
        }
    }

    private void record(Record record) {
        var accessors = ACCESSORS.get(record.getClass());
        letter('r');
        text(record.getClass().getName());
        number(accessors.size());
        for (var accessor : accessors) {
            try {
                put(accessor.invoke(record));
            } catch (ReflectiveOperationException e) {
                throw new IllegalArgumentException(accessor + " cannot be read", e);
            }
        }
    }

    private void list(char kind, List<?> list) {
        letter(kind);
        number(list.size());
        list.forEach(this::put);
    }

    private void map(Map<?, ?> map) {
        letter('m');
        number(map.size());
        map.forEach((key, value) -> {
            put(key);
            put(value);
        });
    }

    private void bytes(byte[] bytes) {
        letter('y');
        number(bytes.length);
        flush();
        sha.update(bytes);
    }

    private void text(String text) {
        number(text.length());
        for (int i = 0; i < text.length(); i++) {
            room(Character.BYTES);
            buffer.putChar(text.charAt(i));
        }
    }

    private void letter(char letter) {
        room(Character.BYTES);
        buffer.putChar(letter);
    }

    private void number(long number) {
        room(Long.BYTES);
        buffer.putLong(number);
    }

    private void room(int bytes) {
        if (buffer.remaining() < bytes) {
            flush();
        }
    }

    private void flush() {
        sha.update(buffer.flip());
        buffer.clear();
    }
}
