package comparand.metric;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * The cards of the shipped metrics as they are written, found in the sources of the package: every static method that gives
 * a metric, of nothing or of the side it stands on.
 */
final class Cards {

    private static final Path SOURCES = Path.of("src/main/java/comparand/metric");

    private Cards() {}

    /** One card, built anew each time it is asked for. */
    record Card(Method written, List<Boolean> side) {

        Metric built() {
            try {
                return (Metric) written.invoke(null, side.toArray());
            } catch (InvocationTargetException e) {
                throw new AssertionError(this + " cannot be built", e.getCause());
            } catch (IllegalAccessException e) {
                throw new AssertionError(e);
            }
        }

        @Override
        public String toString() {
            return "%s.%s%s"
                    .formatted(
                            written.getDeclaringClass().getSimpleName(), written.getName(), side.isEmpty() ? "" : side);
        }
    }

    /** In the order of files and methods by name. */
    static List<Card> written() {
        try (var files = Files.list(SOURCES)) {
            return files.map(f -> f.getFileName().toString().replace(".java", ""))
                    .filter(name -> !name.equals("package-info"))
                    .sorted()
                    .flatMap(Cards::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Card> of(String simpleName) {
        try {
            // without running what is static in it
            var type = Class.forName("comparand.metric." + simpleName, false, Cards.class.getClassLoader());
            return Arrays.stream(type.getDeclaredMethods())
                    .filter(m -> m.getReturnType() == Metric.class)
                    .filter(m -> Modifier.isStatic(m.getModifiers()) && !Modifier.isPrivate(m.getModifiers()))
                    .sorted((a, b) -> a.getName().compareTo(b.getName()))
                    .flatMap(Cards::sides);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    private static Stream<Card> sides(Method m) {
        var takes = m.getParameterTypes();
        if (takes.length == 0) {
            return Stream.of(new Card(m, List.of()));
        }
        return takes.length == 1 && takes[0] == boolean.class
                ? Stream.of(true, false).map(side -> new Card(m, List.of(side)))
                : Stream.empty();
    }

    /** All of them, built anew. */
    static List<Metric> built() {
        return written().stream().map(Card::built).toList();
    }
}
