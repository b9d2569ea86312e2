package comparand.write.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.publication.Publication;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Two trees have one key if they are equal, and only then. */
class ContentKeyTest {

    private static final Set<Class<?>> PLAIN = Set.of(
            String.class,
            boolean.class,
            Boolean.class,
            char.class,
            Character.class,
            int.class,
            Integer.class,
            long.class,
            Long.class,
            double.class,
            Double.class,
            OptionalInt.class,
            OptionalDouble.class,
            BigDecimal.class,
            BigInteger.class,
            LocalDate.class,
            byte[].class,
            Look.Content.class);
    private static final Set<Class<?>> HOLDING = Set.of(List.class, Optional.class, SortedMap.class, SortedSet.class);

    private record Pair(String first, Optional<String> second) {}

    private record Twin(String first, Optional<String> second) {}

    @Test
    @DisplayName("every type that a publication can be made of has a content that can be told")
    void everyTypeIsKnown() {
        var unknown = new TreeSet<String>();
        var seen = new LinkedHashSet<Type>();
        for (var root : List.of(Publication.class, Edition.class, Look.Fonts.class)) {
            walk(root, root.getSimpleName(), seen, unknown);
        }
        assertThat(seen).hasSizeGreaterThan(100);
        assertThat(unknown).isEmpty();
    }

    private static void walk(Type type, String path, Set<Type> seen, Set<String> unknown) {
        if (!seen.add(type)) {
            return;
        }
        if (type instanceof ParameterizedType generic) {
            var holder = (Class<?>) generic.getRawType();
            if (!HOLDING.contains(holder) && !holder.isRecord()) {
                unknown.add(path + ": " + type);
            }
            Arrays.stream(generic.getActualTypeArguments()).forEach(t -> walk(t, path, seen, unknown));
            if (holder.isRecord()) {
                walk(holder, path, seen, unknown);
            }
        } else if (type instanceof Class<?> plain && !PLAIN.contains(plain) && !plain.isEnum()) {
            if (plain.isRecord()) {
                for (var part : plain.getRecordComponents()) {
                    walk(part.getGenericType(), plain.getSimpleName() + "." + part.getName(), seen, unknown);
                }
            } else if (plain.isSealed()) {
                for (var kind : plain.getPermittedSubclasses()) {
                    walk(kind, path, seen, unknown);
                }
            } else {
                unknown.add(path + ": " + type);
            }
        } else if (type instanceof GenericArrayType) {
            unknown.add(path + ": " + type);
        }
    }

    @Test
    @DisplayName(
            "whatever differs, the key differs: contents, types, order, and where one thing ends and the next begins")
    void differences() {
        var maps = new LinkedHashMap<String, Integer>();
        maps.put("b", 1);
        maps.put("a", 2);
        var things = List.of(
                ContentKey.of("ab", "c"),
                ContentKey.of("a", "bc"),
                ContentKey.of("abc"),
                ContentKey.of(List.of("ab", "c")),
                ContentKey.of(List.of(List.of("ab"), "c")),
                ContentKey.of(List.of(), List.of("ab", "c")),
                ContentKey.of(Optional.empty()),
                ContentKey.of(List.of()),
                ContentKey.of(1),
                ContentKey.of(1L),
                ContentKey.of(1.0),
                ContentKey.of("1"),
                ContentKey.of('1'),
                ContentKey.of(true),
                ContentKey.of(0.0),
                ContentKey.of(-0.0),
                ContentKey.of(new BigDecimal("1")),
                ContentKey.of(new BigDecimal("1.0")),
                ContentKey.of(BigInteger.ONE),
                ContentKey.of(new Pair("a", Optional.of("b"))),
                ContentKey.of(new Pair("a", Optional.empty())),
                ContentKey.of(new Twin("a", Optional.of("b"))),
                ContentKey.of(new byte[] {1, 2}),
                ContentKey.of(new byte[] {1}, new byte[] {2}),
                ContentKey.of(new Look.Content("a", new byte[] {1, 2})),
                ContentKey.of(new Look.Content("b", new byte[] {1, 2})),
                ContentKey.of(new TreeMap<>(maps)),
                ContentKey.of(maps),
                ContentKey.of("x".repeat(20_000)),
                ContentKey.of("x".repeat(20_001)));

        assertThat(things).doesNotHaveDuplicates().allMatch(k -> k.matches("[0-9a-f]{64}"));
    }

    @Test
    @DisplayName("equal trees have one key")
    void equal() {
        assertThat(ContentKey.of(new Pair(new String("a"), Optional.of("b")), new TreeMap<>(Map.of("a", 1, "b", 2))))
                .isEqualTo(ContentKey.of(new Pair("a", Optional.of("b")), new TreeMap<>(Map.of("b", 2, "a", 1))));
    }

    @Test
    @DisplayName("what cannot be told, or has no order, is refused and not left out")
    void refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> ContentKey.of(new Object()));
        assertThatIllegalArgumentException().isThrownBy(() -> ContentKey.of(List.of(Map.of("a", 1))));
        assertThatIllegalArgumentException().isThrownBy(() -> ContentKey.of(Set.of("a")));
    }
}
